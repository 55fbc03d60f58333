package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.Fabric;
import io.github.kernlot.orientation.line.FabricReading;
import io.github.kernlot.orientation.line.HandLine;
import io.github.kernlot.orientation.line.HandMethod;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.LinePosterior;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.ReferenceLine;
import io.github.kernlot.orientation.line.runs.RunReview;
import io.github.kernlot.survey.BeyondLast;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.uncertainty.Covariance;
import io.github.kernlot.survey.uncertainty.TraceUncertainty;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** One hole with its trace, its reference line and its structures oriented in the ground. */
public final class OrientedHole {

    private final HoleLog log;
    private final OrientationSettings settings;
    private final double toOutput;
    private final CoreToGround toGround;
    private final TraceUncertainty uncertainty;
    private final Optional<RunReview> review;
    private final ReferenceLine line;
    private final Optional<ReferenceLine> lineWithoutFabric;
    private final HandLine handLine;
    private final List<OrientedStructure> structures;
    private final List<Finding> findings;

    private OrientedHole(HoleLog log, OrientationSettings settings, Map<String, Fabric> fabrics) {
        this.log = log;
        this.settings = settings;
        this.toOutput = log.trace().survey().north().toAdd(settings.output());
        this.toGround = new CoreToGround(log, settings, toOutput);
        this.uncertainty = TraceUncertainty.of(log.trace(), log.surveyErrors());
        LineModel model = model();
        HandMethod hand =
                new HandMethod(model.side(), model.noise(), settings.handTolerance(), settings.handNeighbours());
        List<OrientationMark> read =
                log.marks().stream().map(log.drawn()::lookingDownHole).toList();
        this.review = log.runs().map(runs -> runs.review(read, model.blunders(), settings.runFindingFactor()));
        List<OrientationMark> marks = review.map(RunReview::marks).orElse(read);
        ReferenceLine byMarks = log.joins()
                .map(joins -> model.reconcile(log.trace(), marks, joins, log.drawn()))
                .orElseGet(() -> model.reconcile(log.trace(), marks, log.drawn()));
        List<FabricReading> witnesses = witnesses(fabrics);
        this.line = witnesses.isEmpty() ? byMarks : byMarks.withWitnesses(witnesses);
        this.lineWithoutFabric = witnesses.isEmpty() ? Optional.empty() : Optional.of(byMarks);
        this.handLine = hand.reconcile(log.trace(), marks, log.joins().orElse(List.of()));
        this.structures = log.structures().stream().map(this::oriented).toList();
        this.findings = Stream.concat(fabricFindings(fabrics).stream(), new HoleFindings(this).all().stream())
                .toList();
    }

    /**
     * Orients a hole.
     *
     * @param log what was recorded of it
     * @param settings how it is to be oriented
     * @return the oriented hole
     * @throws IllegalArgumentException if the trace does not reach a mark or a structure, a mark stands for a side that does not
     *     exist there, or the results' north needs a declination or convergence that the survey does not have
     */
    public static OrientedHole orient(HoleLog log, OrientationSettings settings) {
        return orientAll(List.of(log), settings).get(0);
    }

    /**
     * Orients the holes of one job, of which the fabric of a set of structures is estimated together where it is asked for.
     *
     * @param logs what was recorded of them
     * @param settings how they are to be oriented
     * @return the oriented holes in the same order
     * @throws IllegalArgumentException as {@link #orient} has it, for any of the holes
     */
    public static List<OrientedHole> orientAll(List<HoleLog> logs, OrientationSettings settings) {
        List<OrientedHole> byMarks = logs.stream()
                .map(log -> new OrientedHole(log, settings, Map.of()))
                .toList();
        Map<String, Fabric> fabrics = settings.fabric().fabrics(byMarks);
        return fabrics.isEmpty()
                ? byMarks
                : logs.stream()
                        .map(log -> new OrientedHole(log, settings, fabrics))
                        .toList();
    }

    /** The structures that speak for the line; fabrics have azimuths from the results' north, the path from the grid's. */
    private List<FabricReading> witnesses(Map<String, Fabric> fabrics) {
        List<FabricReading> readings = new ArrayList<>();
        for (Structure structure : log.structures()) {
            Fabric fabric = fabrics.get(structure.kind());
            if (fabric != null && structure.hasPlaneByLine() && log.drawn().isDrawnAt(structure.depth())) {
                Fabric onGrid = new Fabric(fabric.mean().withAzimuthTurned(-toOutput), fabric.sigma(), fabric.stray());
                readings.add(new FabricReading(
                        structure.depth(),
                        toGround.corePlane(structure),
                        onGrid,
                        settings.fabric().alphaSigma(),
                        settings.fabric().betaSigma()));
            }
        }
        return readings;
    }

    /** Marks of north mean the north in which the survey was measured; the trace has azimuths from the grid's. */
    private LineModel model() {
        NorthReference grid = log.trace().survey().north();
        double toGrid = grid.with(log.trace().survey().measuredFrom()).toAdd(grid.north());
        return settings.model().withSide(settings.model().side().withAzimuthTurned(toGrid));
    }

    private OrientedStructure oriented(Structure structure) {
        HoleTrace trace = log.trace();
        Optional<LinePosterior> angle = line.at(structure.depth());
        CoreToGround.Ground ground = toGround.ground(structure, angle);
        List<String> notes = new ArrayList<>(ground.notes());
        if (trace.isExtrapolated(structure.depth())) {
            boolean goesOnBent = trace.settings().beyondLast() == BeyondLast.CONSTANT_CURVATURE
                    && structure.depth() > trace.survey().stations().get(0).depth();
            notes.add("beyond the survey's stations, the hole taken "
                    + (goesOnBent ? "on with the curvature of its end" : "as straight"));
        }
        return new OrientedStructure(
                structure,
                trace.positionAt(structure.depth()),
                covariance(structure.depth()),
                angle,
                ground.plane(),
                ground.lineation(),
                ground.arrow(),
                String.join("; ", notes));
    }

    private Covariance covariance(double depth) {
        Covariance ofDepth = Covariance.along(log.trace().directionAt(depth), settings.depthSigma());
        return uncertainty.at(depth).place().plus(ofDepth);
    }

    /** What the witnesses are and what they change. */
    private List<Finding> fabricFindings(Map<String, Fabric> fabrics) {
        if (lineWithoutFabric.isEmpty()) {
            return List.of();
        }
        double farthest = 0;
        for (OrientedStructure structure : structures) {
            Optional<LinePosterior> before =
                    lineWithoutFabric.get().at(structure.structure().depth());
            if (before.isPresent() && structure.line().isPresent()) {
                double moved = Degrees.wrap180(
                        structure.line().get().frame().turnFrom(before.get().frame()));
                farthest = Math.max(farthest, Math.abs(moved));
            }
        }
        List<Finding> found = new ArrayList<>();
        fabrics.forEach((kind, fabric) -> found.add(Finding.ofHole(
                Finding.Level.INFO, "structures of the kind " + kind + " are witnesses of the line: " + fabric)));
        found.add(Finding.ofHole(
                Finding.Level.INFO,
                "the witnesses move the line by " + Degrees.text(farthest)
                        + " degrees at most where the marks alone have one"));
        return found;
    }

    /**
     * What was recorded of the hole.
     *
     * @return the log
     */
    public HoleLog log() {
        return log;
    }

    /**
     * How the hole was oriented.
     *
     * @return the settings
     */
    public OrientationSettings settings() {
        return settings;
    }

    /**
     * The path of the hole.
     *
     * @return the trace
     */
    public HoleTrace trace() {
        return log.trace();
    }

    /**
     * How well the path of the hole is known.
     *
     * @return the uncertainty by the errors of the survey
     */
    public TraceUncertainty uncertainty() {
        return uncertainty;
    }

    /**
     * The reference line with its marks and joins.
     *
     * @return the line
     */
    public ReferenceLine line() {
        return line;
    }

    /**
     * The reference line by the marks alone, to compare, where structures of a fabric are witnesses too.
     *
     * @return the line without them; empty where there are none
     */
    public Optional<ReferenceLine> lineWithoutFabric() {
        return lineWithoutFabric;
    }

    /**
     * The reference line as the trade reconciles it by hand, to compare.
     *
     * @return the line by hand
     */
    public HandLine handLine() {
        return handLine;
    }

    /**
     * What the log of the runs says against runs and marks.
     *
     * @return the review; empty where there is no such log
     */
    public Optional<RunReview> runReview() {
        return review;
    }

    /**
     * The structures in the order of the log, oriented or not.
     *
     * @return one for each structure of the log
     */
    public List<OrientedStructure> structures() {
        return structures;
    }

    /**
     * What a user should know before the results are used.
     *
     * @return the findings: of the hole, of its marks, of its joins, of its structures, and where the hand method differs
     */
    public List<Finding> findings() {
        return findings;
    }

    /** The hole's name and how many of its structures are oriented. */
    @Override
    public String toString() {
        long oriented =
                structures.stream().filter(OrientedStructure::isOriented).count();
        return log.id() + ": " + oriented + " of " + structures.size() + " structures oriented";
    }
}
