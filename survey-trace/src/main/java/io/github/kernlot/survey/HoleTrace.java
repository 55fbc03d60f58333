package io.github.kernlot.survey;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Require;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * The trace of a hole: place, direction, curvature and what a straight scribe does, at any depth, by one of the
 * {@linkplain DesurveyMethod desurvey methods}. Above the first station the hole is taken as straight, below the last one as
 * {@link TraceSettings} says; both are told by {@link #isExtrapolated} and refused beyond a limit.
 *
 * <p>The position is continuous whatever the method. At a station the direction is the one that was measured. Where the path of a
 * method has a corner there, or half way between, what is carried along goes round it by the smallest rotation.
 */
public final class HoleTrace implements HolePath {

    private final Position collar;
    private final Survey survey;
    private final TraceSettings settings;
    private final Optional<Kick> kick;
    private final Leg[] legs;
    private final double[] starts;
    private final double firstMeasured;
    private final double reach;
    private final List<TraceNote> notes;

    private record Kick(HoleTrace parent, double depth) {}

    private HoleTrace(
            Position collar,
            Survey survey,
            TraceSettings settings,
            Optional<Kick> kick,
            double firstMeasured,
            LegChain chain) {
        this.collar = collar;
        this.survey = survey;
        this.settings = settings;
        this.kick = kick;
        this.legs = chain.legs().toArray(Leg[]::new);
        this.starts = chain.legs().stream().mapToDouble(leg -> leg.from).toArray();
        this.firstMeasured = firstMeasured;
        this.reach = chain.reach();
        this.notes = List.copyOf(chain.notes());
    }

    /**
     * The trace of a surveyed hole by minimum curvature, straight up to 30 m beyond its stations.
     *
     * @param collar where the hole begins (depth 0), on the grid
     * @param survey the survey with azimuths from grid north
     * @return the trace
     * @throws IllegalArgumentException if the survey's north is not the grid's ({@link Survey#toGrid}), or its first station lies
     *     deeper than 30 m
     */
    public static HoleTrace minimumCurvature(Position collar, Survey survey) {
        return of(collar, survey, TraceSettings.assumed());
    }

    /**
     * The trace of a surveyed hole.
     *
     * @param collar where the hole begins (depth 0), on the grid
     * @param survey the survey with azimuths from grid north
     * @param settings the method, and how the hole goes on beyond its stations
     * @return the trace
     * @throws IllegalArgumentException if the survey's north is not the grid's ({@link Survey#toGrid}), its first station lies
     *     deeper than the extrapolation limit, or a single station is to go on with constant curvature
     */
    public static HoleTrace of(Position collar, Survey survey, TraceSettings settings) {
        checkNorth(survey);
        double first = survey.stations().get(0).depth();
        if (first > settings.extrapolationLimit()) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the first station lies at %.2f m; expected at most %.2f m from the collar, the extrapolation limit",
                    first,
                    settings.extrapolationLimit()));
        }
        LegChain chain = LegChain.fromCollar(survey, settings);
        return new HoleTrace(collar, survey, settings, Optional.empty(), first, chain);
    }

    /**
     * The trace of a hole that leaves another one, with the settings of that one.
     *
     * @param parent the hole it leaves
     * @param kickOff where it leaves, metres along the parent
     * @param survey the stations of the branch, all deeper than the kick-off, with azimuths from grid north
     * @return the trace from the parent's collar
     * @throws IllegalArgumentException as {@link #branch(HoleTrace, double, Survey, TraceSettings)}
     */
    public static HoleTrace branch(HoleTrace parent, double kickOff, Survey survey) {
        return branch(parent, kickOff, survey, parent.settings);
    }

    /**
     * The trace of a hole that leaves another one. Its depths are counted along the hole from the parent's collar (common practice,
     * no source). Down to the kick-off it is the parent's trace to the last bit, whatever the two methods; there it takes over the
     * parent's place and direction as if they were a station, and goes on to its own first one.
     *
     * @param parent the hole it leaves, itself a branch if need be
     * @param kickOff where it leaves, metres along the parent
     * @param survey the stations of the branch, all deeper than the kick-off, with azimuths from grid north
     * @param settings the method of the branch, and how it goes on below its last station
     * @return the trace from the parent's collar
     * @throws IllegalArgumentException if the parent does not reach the kick-off, the survey's north is not the grid's, a station
     *     lies at the kick-off or above, where the parent's stations count, or the first one is opposite within 0.1 degrees to the
     *     parent's direction
     */
    public static HoleTrace branch(HoleTrace parent, double kickOff, Survey survey, TraceSettings settings) {
        checkNorth(survey);
        double depth = parent.checked(kickOff);
        SurveyStation first = survey.stations().get(0);
        if (first.depth() <= depth) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the branch has a station at %.2f m; expected all below its kick-off at %.2f m, above which the stations of the"
                            + " parent count",
                    first.depth(),
                    depth));
        }
        // it refuses a dogleg that has no plane
        Survey.of(List.of(new SurveyStation(depth, parent.directionAt(depth)), first), NorthReference.grid());
        LegChain chain = LegChain.fromParent(List.of(parent.legs), depth, survey, settings);
        return new HoleTrace(
                parent.collar,
                survey,
                settings,
                Optional.of(new Kick(parent, depth)),
                Math.min(parent.firstMeasured, depth),
                chain);
    }

    private static void checkNorth(Survey survey) {
        if (survey.north().north() != North.GRID) {
            throw new IllegalArgumentException(
                    "the survey counts azimuths from " + survey.north() + "; expected grid north (Survey.toGrid())");
        }
    }

    /**
     * The collar.
     *
     * @return the place at depth 0
     */
    public Position collar() {
        return collar;
    }

    /**
     * The survey that the trace was made of.
     *
     * @return the survey, from grid north; of a branch its own stations alone
     */
    public Survey survey() {
        return survey;
    }

    /**
     * How the trace was made.
     *
     * @return the settings; of a branch those that hold below its kick-off
     */
    public TraceSettings settings() {
        return settings;
    }

    /**
     * The hole that a branch leaves.
     *
     * @return the parent's trace; empty for a hole that is no branch
     */
    public Optional<HoleTrace> parent() {
        return kick.map(Kick::parent);
    }

    /**
     * Where a branch leaves its parent.
     *
     * @return metres along the hole; empty for a hole that is no branch
     */
    public OptionalDouble kickOffDepth() {
        return kick.isPresent() ? OptionalDouble.of(kick.get().depth()) : OptionalDouble.empty();
    }

    /**
     * What the method settled because the survey does not tell it: the azimuth of a vertical station, and which way an azimuth went
     * that turned by half.
     *
     * @return the notes by depth; none by a method that works on directions alone. Of a branch without those of its parent
     */
    public List<TraceNote> notes() {
        return notes;
    }

    /**
     * The greatest depth that the trace answers for.
     *
     * @return the last station's depth and the extrapolation limit, or the depth where an arc beyond has turned by 90 degrees,
     *     metres
     */
    public double reach() {
        return reach;
    }

    /**
     * The depths between which the path is smooth: stations, the middles of intervals by balanced tangential, a kick-off.
     *
     * @return the depths, increasing, metres
     */
    public double[] breakDepths() {
        return DoubleStream.of(starts)
                .filter(depth -> depth >= firstMeasured)
                .distinct()
                .toArray();
    }

    /**
     * Whether the answer at a depth rests on how the hole is taken to run beyond its stations.
     *
     * @param depth metres along the hole
     * @return true above the first and below the last station; for a branch also on the part of its parent that is
     * @throws IllegalArgumentException if the depth is negative or beyond {@link #reach}
     */
    public boolean isExtrapolated(double depth) {
        Leg leg = legAt(depth);
        return depth < firstMeasured || (leg.isBeyond && depth > leg.from);
    }

    @Override
    public HoleDirection directionAt(double depth) {
        Leg leg = legAt(depth);
        return leg.directionAt(depth - leg.from);
    }

    @Override
    public CoreFrame carriedFrameAt(double depth) {
        Leg leg = legAt(depth);
        return leg.headingAt(depth - leg.from).carried();
    }

    @Override
    public Displacement displacementAt(double depth) {
        Leg leg = legAt(depth);
        return leg.place(depth - leg.from);
    }

    /**
     * The place at a depth.
     *
     * @param depth metres along the hole
     * @return the place on the grid
     * @throws IllegalArgumentException if the depth is negative or beyond {@link #reach}
     */
    public Position positionAt(double depth) {
        return collar.plus(displacementAt(depth));
    }

    /**
     * How the path bends at a depth: at a station as above it, at the first one as below. It is the path's own curvature. By the
     * methods whose path is made of straight pieces it is therefore 0, since all their bending is in corners; what a survey says of
     * an interval whatever the method is {@link Curvature#between}.
     *
     * @param depth metres along the hole
     * @return the curvature
     * @throws IllegalArgumentException if the depth is negative or beyond {@link #reach}
     */
    public Curvature curvatureAt(double depth) {
        int index = indexAt(depth);
        boolean isAbove = depth == starts[index] && depth > firstMeasured && index > 0;
        Leg leg = legs[isAbove ? index - 1 : index];
        return leg.curvature(depth - leg.from, directionAt(depth));
    }

    @Override
    public double scribeTurn(double from, double to) {
        return turnTo(to) - turnTo(from);
    }

    private double turnTo(double depth) {
        Leg leg = legAt(depth);
        Heading heading = leg.headingAt(depth - leg.from);
        if (heading.direction().isVertical()) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "at %.2f m the hole is vertical and has no low side from which a scribe could turn",
                    depth));
        }
        return heading.turn();
    }

    TraceColumns columns() {
        return new TraceColumns(collar, legs, starts, firstMeasured, reach);
    }

    private double checked(double depth) {
        return Require.inRange("depth", depth, 0, reach, "m");
    }

    private Leg legAt(double depth) {
        return legs[indexAt(depth)];
    }

    /** The last leg that begins at or above a depth. */
    private int indexAt(double depth) {
        int found = Arrays.binarySearch(starts, checked(depth));
        return found >= 0 ? found : -found - 2;
    }

    /** The collar, the survey, the method where it is not the usual one, and how far the trace reaches. */
    @Override
    public String toString() {
        String branch = kick.isPresent()
                ? String.format(Locale.ROOT, ", branching at %.2f m", kick.get().depth())
                : "";
        String method = settings.method() == DesurveyMethod.MINIMUM_CURVATURE ? "" : ", by " + settings.method();
        return String.format(
                Locale.ROOT, "trace from %s%s, %s%s, reaching %.2f m", collar, branch, survey, method, reach);
    }
}
