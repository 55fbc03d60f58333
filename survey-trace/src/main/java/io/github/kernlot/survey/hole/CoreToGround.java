package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CoreLine;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.DirectedCoreLine;
import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.GammaConvention;
import io.github.kernlot.orientation.HoleSense;
import io.github.kernlot.orientation.LineInPlane;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.DrawnLine;
import io.github.kernlot.orientation.line.LinePosterior;
import io.github.kernlot.survey.HoleTrace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes the planes and lines of one hole from the core to the ground. */
final class CoreToGround {

    private final HoleLog log;
    private final OrientationSettings settings;
    private final double toOutput;

    CoreToGround(HoleLog log, OrientationSettings settings, double toOutput) {
        this.log = log;
        this.settings = settings;
        this.toOutput = toOutput;
    }

    /**
     * What is known in the ground of one structure.
     *
     * @param plane its plane, if it has one and that is oriented
     * @param lineation its line, if it has one and that is oriented
     * @param arrow where the line points or the plane faces, if that was told and is oriented
     * @param notes why a part is not oriented
     */
    record Ground(
            Optional<PlaneOrientation> plane,
            Optional<LineOrientation> lineation,
            Optional<DirectedLine> arrow,
            List<String> notes) {}

    /** A structure in the ground, by the reference line at its depth. */
    Ground ground(Structure structure, Optional<LinePosterior> angle) {
        List<String> notes = new ArrayList<>();
        Optional<String> doubt = doubt(structure.depth(), angle);
        Optional<CoreFrame> byLine = doubt.isPresent() ? Optional.empty() : angle.map(LinePosterior::frame);
        Optional<CoreFrame> ofPlane = planeFrame(structure, byLine);
        Optional<CoreFrame> ofCoreLine = coreLineFrame(structure, byLine);
        if (structure.alpha().isPresent() && ofPlane.isEmpty()) {
            notes.add(structure.beta().isPresent() ? doubt.orElseThrow() : "no beta was measured");
            ofCoreLine.ifPresent(known -> notes.add("the line through the core alone is oriented"));
        }
        if (structure.coreLine().isPresent() && ofCoreLine.isEmpty() && !notes.contains(doubt.orElseThrow())) {
            notes.add((structure.alpha().isPresent() ? "the line through the core is unoriented: " : "")
                    + doubt.orElseThrow());
        }
        Optional<CoreFrame> ofArrow = structure.coreLine().isPresent() ? ofCoreLine : ofPlane;
        if (ofArrow.isPresent() && structure.sense().isPresent() && isAcross(structure)) {
            notes.add("the line stands at right angles to the core axis and points neither down-hole nor up-hole");
        }
        return new Ground(
                ofPlane.map(frame -> frame.toGeographic(corePlane(structure)).withAzimuthTurned(toOutput)),
                ofArrow.flatMap(frame -> line(structure).map(frame::toGeographic))
                        .map(line -> line.withAzimuthTurned(toOutput)),
                ofArrow.flatMap(frame -> arrow(structure).map(frame::toGeographic))
                        .map(arrow -> arrow.withAzimuthTurned(toOutput)),
                notes);
    }

    /** Why the reference line orients nothing at a depth. */
    private Optional<String> doubt(double depth, Optional<LinePosterior> angle) {
        if (!log.drawn().isDrawnAt(depth)) {
            return Optional.of("no line was drawn here");
        }
        if (angle.isEmpty()) {
            return Optional.of("the line is unanchored: no mark in use on this piece of core");
        }
        double sigma = angle.get().sigma();
        return sigma > settings.lineSigmaLimit()
                ? Optional.of("the line's sigma of " + Degrees.text(sigma) + " degrees is above the limit of "
                        + Degrees.text(settings.lineSigmaLimit()))
                : Optional.empty();
    }

    private Optional<CoreFrame> planeFrame(Structure structure, Optional<CoreFrame> byLine) {
        if (structure.hasPlaneByLine()) {
            return byLine;
        }
        // at alpha 90 the pole is the core axis, and no line is needed
        return structure.alpha().orElse(0) == 90 ? Optional.of(carried(structure)) : Optional.empty();
    }

    private Optional<CoreFrame> coreLineFrame(Structure structure, Optional<CoreFrame> byLine) {
        if (structure.hasCoreLineByLine()) {
            return byLine;
        }
        return structure.coreLine().map(alongTheAxis -> carried(structure));
    }

    private CoreFrame carried(Structure structure) {
        HoleTrace trace = log.trace();
        return trace.carriedFrameAt(structure.depth());
    }

    /** The line on core, whichever way it was read. */
    private Optional<CoreLine> line(Structure structure) {
        return structure.gamma().isPresent()
                ? Optional.of(lineInPlane(structure).toCoreLine())
                : structure.coreLine().map(read -> coreLine(structure, read));
    }

    private boolean isAcross(Structure structure) {
        return line(structure).filter(line -> line.axisAngle() == 90).isPresent();
    }

    /** A sense names an end of the hole, whichever way the arrows of the reference line point. */
    private Optional<DirectedCoreLine> arrow(Structure structure) {
        if (structure.sense().isEmpty() || isAcross(structure)) {
            return Optional.empty();
        }
        HoleSense end = structure.sense().get();
        return Optional.of(line(structure)
                .map(line -> line.pointing(end))
                .orElseGet(() -> corePlane(structure).facing(end)));
    }

    /** The plane in the house convention. */
    CorePlane corePlane(Structure structure) {
        return CorePlane.of(
                structure.alpha().orElseThrow(),
                house(structure, settings.beta()).toHouse(structure.beta().orElse(0)));
    }

    /** Delta is counted as beta is, but to the line's own down-hole end whichever end of the ellipse beta goes to. */
    private CoreLine coreLine(Structure structure, CoreLineReading line) {
        BetaConvention counted =
                new BetaConvention(settings.beta().sense(), settings.beta().view(), BetaConvention.Apex.DOWN_HOLE);
        return CoreLine.ofAxisAngleAndDelta(
                line.axisAngle(), house(structure, counted).toHouse(line.delta().orElse(0)));
    }

    private BetaConvention house(Structure structure, BetaConvention reading) {
        return isReadUpHole(structure) ? reading.withArrowUpHole() : reading;
    }

    private LineInPlane lineInPlane(Structure structure) {
        GammaConvention reading = settings.gamma();
        GammaConvention house = isReadUpHole(structure) ? reading.withArrowUpHole() : reading;
        return corePlane(structure).line(house.toHouse(structure.gamma().orElseThrow()));
    }

    private boolean isReadUpHole(Structure structure) {
        return log.drawn()
                .at(structure.depth())
                .filter(drawn -> drawn.arrow() == DrawnLine.Arrow.UP_HOLE)
                .isPresent();
    }
}
