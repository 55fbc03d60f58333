package io.github.kernlot.survey;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A circular arc. With the curvature k, the tangent t at its beginning, the unit vector e across it that it bends to and the run s,
 * {@code r = s S t + s^2 k C e} and {@code t(s) = (1 - (s k)^2 C) t + s k S e}, where {@code S = sin x / x} and
 * {@code C = (1 - cos x) / x^2} of x = s k: no division by the dogleg, so that the smallest one needs no care.
 */
final class ArcLeg extends Leg {

    private final Vector tangent;
    /** k e. */
    private final Vector bend;

    private final double curvature;
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
        this.tangent = tangent;
        Vector normal = tangent.cross(other);
        this.curvature = tangent.angleTo(other) / length;
        // it points to the other direction, from which an arc beyond the last station bends away
        Vector across = normal.cross(tangent).unit();
        this.bend = across.times(isBeyond ? -curvature : curvature);
        HoleDirection end = direction(reach);
        this.azimuthTurn =
                Degrees.wrap180(end.azimuth() - station.heading().direction().azimuth());
    }

    /** Whether two directions are apart enough for an arc. */
    static boolean joins(HoleDirection from, HoleDirection to) {
        Vector normal = Heading.vector(from).cross(Heading.vector(to));
        return normal.dot(normal) > 0;
    }

    @Override
    Vector way(double run) {
        double angle = run * curvature;
        double square = angle * angle;
        return tangent.times(run * ArcSeries.along(square)).plus(bend.times(run * run * ArcSeries.across(square)));
    }

    private Vector tangent(double run) {
        double angle = run * curvature;
        double square = angle * angle;
        return tangent.times(1 - square * ArcSeries.across(square)).plus(bend.times(run * ArcSeries.along(square)));
    }

    @Override
    HoleDirection direction(double run) {
        Vector vector = tangent(run);
        return HoleDirection.ofVector(vector.north(), vector.east(), vector.down());
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
        // dt/ds = k (cos x e - sin x t)
        Vector towards = bend.times(1 - square * ArcSeries.across(square))
                .minus(tangent.times(curvature * angle * ArcSeries.along(square)));
        return Curvature.ofRadians(there, towards, curvature);
    }
}
