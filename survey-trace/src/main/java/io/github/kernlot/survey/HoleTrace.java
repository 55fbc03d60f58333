package io.github.kernlot.survey;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The trace of a hole by minimum curvature: a circular arc between neighbouring stations, answered exactly on the arc at any
 * depth. Above the first station and below the last one the hole goes on straight, which is told by {@link #isExtrapolated} and
 * refused beyond a limit.
 *
 * <p>With unit tangents t1 and t2, dogleg D and length L, at the fraction f of an arc the tangent is
 * {@code t(f) = (sin((1-f)D) t1 + sin(fD) t2) / sin D} and the way {@code (L/D) tan(fD/2) (t1 + t(f))}; a scribe turns along it
 * by {@code -2 atan2(sin(dA/2) cos((I1+I2)/2), cos(dA/2) cos((I2-I1)/2))}.
 */
public final class HoleTrace implements HolePath {

    /** How far beyond its stations a trace goes unless it is told otherwise, metres. */
    public static final double ASSUMED_EXTRAPOLATION_LIMIT = 30;

    private final Position collar;
    private final Survey survey;
    private final double extrapolationLimit;
    private final double[] depths;
    private final HoleDirection[] directions;
    private final Vector[] tangents;
    private final Displacement[] ways;
    private final CoreFrame[] carried;
    private final double[] turns;

    private HoleTrace(Position collar, Survey survey, double extrapolationLimit) {
        this.collar = collar;
        this.survey = survey;
        this.extrapolationLimit = extrapolationLimit;
        List<SurveyStation> stations = survey.stations();
        int count = stations.size();
        depths = stations.stream().mapToDouble(SurveyStation::depth).toArray();
        directions = stations.stream().map(SurveyStation::direction).toArray(HoleDirection[]::new);
        tangents = Arrays.stream(directions).map(HoleTrace::vector).toArray(Vector[]::new);
        ways = new Displacement[count];
        carried = new CoreFrame[count];
        turns = new double[count];
        ways[0] = displacement(tangents[0].times(depths[0]));
        carried[0] = CoreFrame.carriedTo(directions[0]);
        for (int i = 1; i < count; i++) {
            ways[i] = ways[i - 1].plus(alongArc(i - 1, 1, tangents[i]));
            carried[i] = carried[i - 1].carriedAlong(directions[i]);
            turns[i] = turns[i - 1] + arcTurn(i - 1, directions[i]);
        }
    }

    /**
     * The trace of a surveyed hole, reaching 30 m beyond its stations.
     *
     * @param collar where the hole begins (depth 0), on the grid
     * @param survey the survey with azimuths from grid north
     * @return the trace
     * @throws IllegalArgumentException if the survey's north is not the grid's ({@link Survey#toGrid}), or its first station lies
     *     deeper than 30 m
     */
    public static HoleTrace minimumCurvature(Position collar, Survey survey) {
        return minimumCurvature(collar, survey, ASSUMED_EXTRAPOLATION_LIMIT);
    }

    /**
     * The trace of a surveyed hole.
     *
     * @param collar where the hole begins (depth 0), on the grid
     * @param survey the survey with azimuths from grid north
     * @param extrapolationLimit how far above the first and below the last station the hole may be taken as straight, metres, 0 or
     *     more
     * @return the trace
     * @throws IllegalArgumentException if the survey's north is not the grid's ({@link Survey#toGrid}), its first station lies
     *     deeper than the limit, or the limit is negative or not finite
     */
    public static HoleTrace minimumCurvature(Position collar, Survey survey, double extrapolationLimit) {
        Require.notNegative("extrapolation limit", extrapolationLimit, "m");
        if (survey.north().north() != North.GRID) {
            throw new IllegalArgumentException(
                    "the survey counts azimuths from " + survey.north() + "; expected grid north (Survey.toGrid())");
        }
        double first = survey.stations().get(0).depth();
        if (first > extrapolationLimit) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the first station lies at %.2f m; expected at most %.2f m from the collar, the extrapolation limit",
                    first,
                    extrapolationLimit));
        }
        return new HoleTrace(collar, survey, extrapolationLimit);
    }

    private static Vector vector(HoleDirection direction) {
        return Vector.ofInclination(direction.inclination(), direction.azimuth());
    }

    private static Displacement displacement(Vector way) {
        return new Displacement(way.north(), way.east(), way.down());
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
     * @return the survey, from grid north
     */
    public Survey survey() {
        return survey;
    }

    /**
     * The greatest depth that the trace answers for.
     *
     * @return the last station's depth and the extrapolation limit, metres
     */
    public double reach() {
        return depths[depths.length - 1] + extrapolationLimit;
    }

    /**
     * Whether the answer at a depth rests on the hole being straight beyond its stations.
     *
     * @param depth metres along the hole
     * @return true above the first and below the last station
     * @throws IllegalArgumentException if the depth is negative or beyond {@link #reach}
     */
    public boolean isExtrapolated(double depth) {
        checked(depth);
        return depth < depths[0] || depth > depths[depths.length - 1];
    }

    @Override
    public HoleDirection directionAt(double depth) {
        int arc = arcAt(depth);
        if (arc < 0) {
            return directions[0];
        }
        if (arc == depths.length - 1 || depth == depths[arc] || dogleg(arc) == 0) {
            return directions[arc];
        }
        Vector tangent = tangentAt(arc, fraction(arc, depth));
        return HoleDirection.ofVector(tangent.north(), tangent.east(), tangent.down());
    }

    @Override
    public CoreFrame carriedFrameAt(double depth) {
        int arc = Math.max(0, arcAt(depth));
        return carried[arc].carriedAlong(directionAt(depth));
    }

    @Override
    public Displacement displacementAt(double depth) {
        int arc = arcAt(depth);
        if (arc < 0) {
            return displacement(tangents[0].times(depth));
        }
        if (arc == depths.length - 1) {
            return ways[arc].plus(displacement(tangents[arc].times(depth - depths[arc])));
        }
        double fraction = fraction(arc, depth);
        return ways[arc].plus(alongArc(arc, fraction, tangentAt(arc, fraction)));
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

    @Override
    public double scribeTurn(double from, double to) {
        return turnTo(to) - turnTo(from);
    }

    /** The turn of a scribe from the first station. */
    private double turnTo(double depth) {
        int arc = Math.max(0, arcAt(depth));
        HoleDirection direction = directionAt(depth);
        if (direction.isVertical()) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "at %.2f m the hole is vertical and has no low side from which a scribe could turn",
                    depth));
        }
        return turns[arc] + arcTurn(arc, direction);
    }

    /** The turn of a scribe from the upper station of an arc to a direction on it. */
    private double arcTurn(int arc, HoleDirection to) {
        HoleDirection from = directions[arc];
        double halfTurn = azimuthTurn(arc, to) / 2;
        double mean = (from.inclination() + to.inclination()) / 2;
        double halfBuild = (to.inclination() - from.inclination()) / 2;
        return -2
                * Degrees.atan2(
                        Degrees.sin(halfTurn) * Degrees.cos(mean), Degrees.cos(halfTurn) * Degrees.cos(halfBuild));
    }

    /**
     * How far the azimuth turns from the upper station of an arc to a direction on it. It turns one way all along the arc: where
     * that passes through vertical and turns it by half, rounding must not choose another way at each depth.
     */
    private double azimuthTurn(int arc, HoleDirection to) {
        double start = directions[arc].azimuth();
        double turn = Degrees.wrap180(to.azimuth() - start);
        double whole = arc + 1 < directions.length ? Degrees.wrap180(directions[arc + 1].azimuth() - start) : turn;
        return Math.abs(turn) > 90 && turn * whole < 0 ? turn + Math.copySign(360, whole) : turn;
    }

    private double checked(double depth) {
        return Require.inRange("depth", depth, 0, reach(), "m");
    }

    /** The last station at or above a depth; -1 above the first. */
    private int arcAt(double depth) {
        int found = Arrays.binarySearch(depths, checked(depth));
        return found >= 0 ? found : -found - 2;
    }

    private double fraction(int arc, double depth) {
        return (depth - depths[arc]) / (depths[arc + 1] - depths[arc]);
    }

    private double dogleg(int arc) {
        return tangents[arc].angleTo(tangents[arc + 1]);
    }

    private Vector tangentAt(int arc, double fraction) {
        double dogleg = dogleg(arc);
        if (dogleg == 0) {
            return tangents[arc];
        }
        double whole = Math.sin(dogleg);
        return tangents[arc]
                .times(Math.sin((1 - fraction) * dogleg) / whole)
                .plus(tangents[arc + 1].times(Math.sin(fraction * dogleg) / whole));
    }

    /** The way from the upper station of an arc to the fraction of it where the tangent is the one given. */
    private Displacement alongArc(int arc, double fraction, Vector tangent) {
        double length = depths[arc + 1] - depths[arc];
        double dogleg = dogleg(arc);
        // well conditioned for every dogleg but 0, where tan(f D / 2) / D is f / 2
        double half = dogleg == 0 ? fraction / 2 : Math.tan(fraction * dogleg / 2) / dogleg;
        return displacement(tangents[arc].plus(tangent).times(length * half));
    }

    /** The collar, the survey and how far the trace reaches. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "trace from %s, %s, reaching %.2f m", collar, survey, reach());
    }
}
