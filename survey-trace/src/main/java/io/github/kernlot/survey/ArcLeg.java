package io.github.kernlot.survey;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A circular arc. With the curvature k, the tangent t at its beginning, the unit vector e across it that it bends to and the run s,
 * {@code r = s S t + s^2 C k e} and {@code t(s) = (1 - (s k)^2 C) t + s S k e}, where {@code S = sin x / x} and
 * {@code C = (1 - cos x) / x^2} of x = s k: no division by the dogleg, so that the smallest one needs no care.
 */
final class ArcLeg extends Leg {

    /** Rows below which a loop of vector instructions takes longer to begin than it saves. */
    private static final int WORTH_A_LOOP = 8;

    /** Rows that stay in the nearest cache from one loop to the next. */
    private static final int BLOCK = 512;

    private final double curvature;
    private final double tangentNorth;
    private final double tangentEast;
    private final double tangentDown;
    /** The components of k e. */
    private final double bendNorth;

    private final double bendEast;
    private final double bendDown;
    private final double azimuthTurn;
    private final boolean isGentle;

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
        this.isGentle = ArcSeries.isGentle(reach * curvature * (reach * curvature));
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
    void places(
            double[] depths,
            int row,
            int end,
            Position collar,
            double[] easting,
            double[] northing,
            double[] elevation,
            double[] work) {
        if (!isGentle || end - row < WORTH_A_LOOP) {
            super.places(depths, row, end, collar, easting, northing, elevation, work);
            return;
        }
        for (int first = row; first < end; first += BLOCK) {
            gentlePlaces(depths, first, Math.min(end, first + BLOCK), collar, easting, northing, elevation);
        }
    }

    /** Short loops without a branch, which the compiler makes of vector instructions; the columns hold S and C on the way. */
    private void gentlePlaces(
            double[] depths,
            int row,
            int end,
            Position collar,
            double[] easting,
            double[] northing,
            double[] elevation) {
        for (int i = row; i < end; i++) {
            double run = depths[i] - from;
            double angle = run * curvature;
            easting[i] = run * ArcSeries.gentleAlong(angle * angle);
        }
        for (int i = row; i < end; i++) {
            double run = depths[i] - from;
            double angle = run * curvature;
            northing[i] = run * run * ArcSeries.gentleAcross(angle * angle);
        }
        double up = collar.elevation();
        for (int i = row; i < end; i++) {
            elevation[i] = up - (startDown + (easting[i] * tangentDown + northing[i] * bendDown));
        }
        double east = collar.easting();
        double north = collar.northing();
        for (int i = row; i < end; i++) {
            double along = easting[i];
            double across = northing[i];
            easting[i] = east + (startEast + (along * tangentEast + across * bendEast));
            northing[i] = north + (startNorth + (along * tangentNorth + across * bendNorth));
        }
    }

    @Override
    void angles(double run, double[] out) {
        double angle = run * curvature;
        double square = angle * angle;
        double cosine = 1 - square * ArcSeries.across(square);
        double sine = run * ArcSeries.along(square);
        out[0] = inclination(cosine, sine);
        out[1] = azimuth(cosine, sine);
    }

    private double inclination(double cosine, double sine) {
        double north = cosine * tangentNorth + sine * bendNorth;
        double east = cosine * tangentEast + sine * bendEast;
        double down = cosine * tangentDown + sine * bendDown;
        return Bearing.of(Math.sqrt(north * north + east * east), down);
    }

    private double azimuth(double cosine, double sine) {
        double north = cosine * tangentNorth + sine * bendNorth;
        double east = cosine * tangentEast + sine * bendEast;
        return Bearing.azimuth(east, north);
    }

    @Override
    void angles(double[] depths, int row, int end, double[] inclination, double[] azimuth, double[] work) {
        if (!isGentle || end - row < WORTH_A_LOOP) {
            super.angles(depths, row, end, inclination, azimuth, work);
            return;
        }
        for (int first = row; first < end; first += BLOCK) {
            gentleAngles(depths, first, Math.min(end, first + BLOCK), inclination, azimuth);
        }
        for (int i = row; i < end; i++) {
            if (depths[i] == from) {
                inclination[i] = at.direction().inclination();
                azimuth[i] = at.direction().azimuth();
            }
        }
    }

    /** The columns hold the cosine and the sine on the way. */
    private void gentleAngles(double[] depths, int row, int end, double[] inclination, double[] azimuth) {
        for (int i = row; i < end; i++) {
            double angle = (depths[i] - from) * curvature;
            double square = angle * angle;
            inclination[i] = 1 - square * ArcSeries.gentleAcross(square);
        }
        for (int i = row; i < end; i++) {
            double run = depths[i] - from;
            double angle = run * curvature;
            azimuth[i] = run * ArcSeries.gentleAlong(angle * angle);
        }
        for (int i = row; i < end; i++) {
            double cosine = inclination[i];
            double sine = azimuth[i];
            inclination[i] = inclination(cosine, sine);
            azimuth[i] = azimuth(cosine, sine);
        }
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
