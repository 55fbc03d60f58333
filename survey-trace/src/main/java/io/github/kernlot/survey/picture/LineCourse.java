package io.github.kernlot.survey.picture;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.LineAngle;
import io.github.kernlot.orientation.line.LinePosterior;
import io.github.kernlot.orientation.line.MarkPosterior;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.hole.OrientedHole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The line angle of one hole, sampled down the hole. */
final class LineCourse {

    /** Below this sharpness of the side no angle is shown, as {@link LineAngle#hasMean} has it. */
    private static final double SHARP_ENOUGH = 1e-6;

    /** Neighbouring samples further apart than this many degrees are not joined. */
    private static final double GREATEST_STEP = 60;

    private static final int SAMPLES = 400;

    private record Sample(double depth, boolean hasSide, Optional<LinePosterior> line) {}

    /** A stretch of the hole. */
    record Stretch(double from, double to) {}

    private final OrientedHole hole;
    private final double end;
    private final WallReference side;
    private final WallReference reference;
    private final List<Sample> samples;

    LineCourse(OrientedHole hole) {
        this.hole = hole;
        this.end = Holes.end(hole);
        this.side = hole.line().model().side();
        this.reference = side.countedFrom();
        this.samples = depths().map(this::sample).toList();
    }

    /** Even steps, and both faces of every broken join. */
    private Stream<Double> depths() {
        Stream<Double> steps = Stream.iterate(0, i -> i <= SAMPLES, i -> i + 1).map(i -> end * i / SAMPLES);
        Stream<Double> faces = joins(JoinFit.BROKEN).stream()
                .map(Join::depth)
                .filter(depth -> depth < end)
                .flatMap(depth -> Stream.of(depth, Math.min(end, depth + 1e-6)));
        return Stream.concat(steps, faces).sorted().distinct();
    }

    private Sample sample(double depth) {
        return new Sample(
                depth,
                hasSide(hole.trace().directionAt(depth)),
                hole.line().at(depth).filter(this::orients));
    }

    /** A line less sure than the limit orients nothing and is not drawn. */
    private boolean orients(LinePosterior line) {
        return line.sigma() <= hole.settings().lineSigmaLimit();
    }

    private boolean hasSide(HoleDirection direction) {
        return reference.sharpness(direction) >= SHARP_ENOUGH;
    }

    List<Join> joins(JoinFit fit) {
        return hole.log().joins().orElse(List.of()).stream()
                .filter(join -> join.fit() == fit)
                .toList();
    }

    double end() {
        return end;
    }

    /** The side that the angle is counted from. */
    WallReference reference() {
        return reference;
    }

    /** Where a mark puts the drawn line; empty where the side that angles are counted from is not sharp. */
    OptionalDouble angle(MarkPosterior judgement) {
        HoleDirection direction = hole.trace().directionAt(judgement.mark().depth());
        return hasSide(direction)
                ? OptionalDouble.of(
                        CoreFrame.at(direction, side, -judgement.mark().offset())
                                .lineAngle(reference))
                : OptionalDouble.empty();
    }

    /** The mean of the line's angles, or of the marks' where there is no line. */
    double middle() {
        List<Double> angles = samples.stream()
                .filter(sample -> sample.hasSide() && sample.line().isPresent())
                .map(sample -> sample.line().orElseThrow().mean())
                .toList();
        if (angles.isEmpty()) {
            angles = hole.line().marks().stream()
                    .flatMap(mark -> angle(mark).stream().boxed())
                    .toList();
        }
        double sine = angles.stream().mapToDouble(Degrees::sin).sum();
        double cosine = angles.stream().mapToDouble(Degrees::cos).sum();
        return Math.hypot(sine, cosine) < 1e-6 ? 0 : Degrees.azimuth(sine, cosine);
    }

    /** The line and its 95 % interval where there is one, in unbroken pieces; y is the depth. */
    List<AngleAxis.Band> bands() {
        List<AngleAxis.Band> bands = new ArrayList<>();
        AngleAxis.Band band = AngleAxis.Band.empty();
        double lastDepth = 0;
        for (Sample sample : samples) {
            Optional<LinePosterior> line = sample.hasSide() ? sample.line() : Optional.empty();
            double turned = line.isPresent() && !band.isEmpty()
                    ? Degrees.wrap180(line.get().mean() - band.last())
                    : 0;
            boolean cut = line.isEmpty() || Math.abs(turned) > GREATEST_STEP || isBroken(lastDepth, sample.depth());
            if (cut && !band.isEmpty()) {
                bands.add(band);
                band = AngleAxis.Band.empty();
            }
            if (line.isPresent()) {
                double angle = band.isEmpty() ? line.get().mean() : band.last() + turned;
                band.add(sample.depth(), angle, line.get().radius95());
            }
            lastDepth = sample.depth();
        }
        if (!band.isEmpty()) {
            bands.add(band);
        }
        return bands;
    }

    private boolean isBroken(double above, double below) {
        return joins(JoinFit.BROKEN).stream().anyMatch(join -> join.depth() >= above && join.depth() < below);
    }

    /** The stretches where a side does not exist. */
    List<Stretch> sideless(WallReference missing) {
        return stretches(samples.stream()
                .map(sample -> missing.sharpness(hole.trace().directionAt(sample.depth())) < SHARP_ENOUGH)
                .toList());
    }

    private List<Stretch> stretches(List<Boolean> inside) {
        List<Stretch> stretches = new ArrayList<>();
        int from = -1;
        for (int i = 0; i <= samples.size(); i++) {
            boolean in = i < samples.size() && inside.get(i);
            if (in && from < 0) {
                from = i;
            } else if (!in && from >= 0) {
                // a single sample is a place and no stretch
                if (i - from > 1) {
                    stretches.add(new Stretch(
                            samples.get(from).depth(), samples.get(i - 1).depth()));
                }
                from = -1;
            }
        }
        return stretches;
    }

    /** The turn of a straight scribe since the first depth that has a low side, with gaps where there is none; x the turn. */
    List<List<Point>> scribeTurns() {
        HoleTrace trace = hole.trace();
        List<List<Point>> pieces = new ArrayList<>();
        List<Point> piece = new ArrayList<>();
        double start = -1;
        for (Sample sample : samples) {
            double depth = sample.depth();
            if (WallReference.lowSide().sharpness(trace.directionAt(depth)) >= SHARP_ENOUGH) {
                start = start < 0 ? depth : start;
                piece.add(new Point(trace.scribeTurn(start, depth), depth));
            } else if (!piece.isEmpty()) {
                pieces.add(piece);
                piece = new ArrayList<>();
            }
        }
        pieces.add(piece);
        return pieces;
    }
}
