package io.github.kernlot.survey;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A circular arc. With the curvature k, the tangent t at its beginning, the unit vector e across it that it bends to and the run s,
 * {@code r = s S t + s^2 C k e} and {@code t(s) = (1 - (s k)^2 C) t + s S k e}, where {@code S = sin x / x} and
 * {@code C = (1 - cos x) / x^2} of x = s k: no division by the dogleg, so that the smallest one needs no care.
 */
final class ArcLeg extends Leg {

    private final double curvature;
    private final double tangentNorth;
    private final double tangentEast;
    private final double tangentDown;
    /** The components of k e. */
    private final double bendNorth;

    private final double bendEast;
    private final double bendDown;
    private final double azimuthTurn;

    /** The arc to a direction that is not the first one. */
    ArcLeg(Station station, HoleDirection to, double length) {
        this(station, Heading.vector(station.heading().direction()), Heading.vector(to), length, length, false);
    }

    /** The arc by which the hole came from a direction to that of its last station, for a length beyond. */
    static ArcLeg beyond(Station last, HoleDirection before, double lengthBefore, double length) {
        Vector tangent = Heading.vector(last.heading().direction());
        return new ArcLeg(last, tangent, Heading.vector(before), lengthBefore, length, true);
    }

    private ArcLeg(Station station, Vector tangent, Vector other, double length, double reach, boolean isBeyond) {
        super(station, station.heading(), isBeyond);
        this.curvature = tangent.angleTo(other) / length;
        this.tangentNorth = tangent.north();
        this.tangentEast = tangent.east();
        this.tangentDown = tangent.down();
        // it points to the other direction, from which an arc beyond the last station bends away
        Vector across = tangent.cross(other).cross(tangent).unit();
        Vector bend = across.times(isBeyond ? -curvature : curvature);
        this.bendNorth = bend.north();
        this.bendEast = bend.east();
        this.bendDown = bend.down();
        this.azimuthTurn =
                Degrees.wrap180(direction(reach).azimuth() - begin.direction().azimuth());
    }

    /** Whether two directions are apart enough for an arc. */
    static boolean joins(HoleDirection from, HoleDirection to) {
        Vector normal = Heading.vector(from).cross(Heading.vector(to));
        return normal.dot(normal) > 0;
    }

    @Override
    void way(double run, double[] out) {
        double angle = run * curvature;
        double square = angle * angle;
        double along = run * ArcSeries.along(square);
        double across = run * run * ArcSeries.across(square);
        out[0] = along * tangentNorth + across * bendNorth;
        out[1] = along * tangentEast + across * bendEast;
        out[2] = along * tangentDown + across * bendDown;
    }

    @Override
    void angles(double run, double[] out) {
        double angle = run * curvature;
        double square = angle * angle;
        double cosine = 1 - square * ArcSeries.across(square);
        double sine = run * ArcSeries.along(square);
        double north = cosine * tangentNorth + sine * bendNorth;
        double east = cosine * tangentEast + sine * bendEast;
        double down = cosine * tangentDown + sine * bendDown;
        out[0] = Bearing.of(Math.sqrt(north * north + east * east), down);
        out[1] = Bearing.azimuth(east, north);
    }

    @Override
    Heading heading(double run) {
        HoleDirection to = direction(run);
        double turn = Degrees.wrap180(to.azimuth() - begin.direction().azimuth());
        boolean isOtherWay = Math.abs(turn) > 90 && turn * azimuthTurn < 0;
        return begin.turnedTo(to, isOtherWay ? turn + Math.copySign(360, azimuthTurn) : turn);
    }

    @Override
    Curvature curvature(double run, HoleDirection there) {
        double angle = run * curvature;
        double square = angle * angle;
        double cosine = 1 - square * ArcSeries.across(square);
        double sine = curvature * angle * ArcSeries.along(square);
        // dt/ds = k (cos x e - sin x t)
        Vector towards = new Vector(
                cosine * bendNorth - sine * tangentNorth,
                cosine * bendEast - sine * tangentEast,
                cosine * bendDown - sine * tangentDown);
        return Curvature.ofRadians(there, towards, curvature);
    }
}
