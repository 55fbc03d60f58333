package io.github.kernlot.survey;

import io.github.kernlot.orientation.Position;
import java.util.Objects;

/**
 * A trace asked at many depths at once, in columns of the caller and without memory for each row. It answers to the last bit what
 * {@link HoleTrace} answers for each depth.
 *
 * <p>Depths may come in any order; in order, rising or falling, they are the faster. All columns of a call are read and written at
 * the same rows, {@code offset} to {@code offset + length - 1}. The column of depths may itself be one of the columns that are
 * written, since a row is read before it is written; no two columns that are written may be the same. A depth that the trace does
 * not answer for, NaN among them, gets NaN in every column and the status {@link #REFUSED}, and the others go on.
 *
 * <p>It holds nothing that changes: one can be used by many threads.
 */
public final class TraceColumns {

    /** The status of a depth between stations. */
    public static final byte SURVEYED = 0;

    /** The status of a depth that {@link HoleTrace#isExtrapolated} tells of. */
    public static final byte EXTRAPOLATED = 1;

    /** The status of a depth that the trace does not answer for. */
    public static final byte REFUSED = 2;

    private static final double[] NONE = {};

    private final Position collar;
    private final Leg[] legs;
    private final double[] ends;
    private final LegIndex index;
    private final double firstMeasured;
    private final double reach;

    TraceColumns(Position collar, Leg[] legs, double[] starts, double firstMeasured, double reach) {
        this.collar = collar;
        this.legs = legs;
        this.firstMeasured = firstMeasured;
        this.reach = reach;
        this.index = new LegIndex(starts);
        this.ends = new double[legs.length];
        System.arraycopy(starts, 1, ends, 0, legs.length - 1);
        ends[legs.length - 1] = Math.nextUp(reach);
    }

    /**
     * The columns of a trace.
     *
     * @param trace the trace to ask
     * @return what asks it in bulk
     */
    public static TraceColumns of(HoleTrace trace) {
        return trace.columns();
    }

    /**
     * The places at many depths.
     *
     * @param depths metres along the hole
     * @param offset the first row
     * @param length how many rows
     * @param easting filled with the eastings, metres
     * @param northing filled with the northings, metres
     * @param elevation filled with the elevations, metres, positive up
     * @param status filled with {@link #SURVEYED}, {@link #EXTRAPOLATED} or {@link #REFUSED}
     * @return how many rows were refused
     * @throws IndexOutOfBoundsException if a column does not have these rows; nothing is written then
     */
    public int positions(
            double[] depths,
            int offset,
            int length,
            double[] easting,
            double[] northing,
            double[] elevation,
            byte[] status) {
        checkRows(offset, length, depths.length, easting.length, northing.length, elevation.length, status.length);
        return fill(true, false, depths, offset, length, easting, northing, elevation, NONE, NONE, status);
    }

    /**
     * The directions at many depths.
     *
     * @param depths metres along the hole
     * @param offset the first row
     * @param length how many rows
     * @param inclination filled with the inclinations, from vertically down, degrees in [0, 180]
     * @param azimuth filled with the azimuths, clockwise from grid north, degrees in [0, 360)
     * @param status filled with {@link #SURVEYED}, {@link #EXTRAPOLATED} or {@link #REFUSED}
     * @return how many rows were refused
     * @throws IndexOutOfBoundsException if a column does not have these rows; nothing is written then
     */
    public int directions(
            double[] depths, int offset, int length, double[] inclination, double[] azimuth, byte[] status) {
        checkRows(offset, length, depths.length, inclination.length, azimuth.length, status.length);
        return fill(false, true, depths, offset, length, NONE, NONE, NONE, inclination, azimuth, status);
    }

    /**
     * The places and the directions at many depths.
     *
     * @param depths metres along the hole
     * @param offset the first row
     * @param length how many rows
     * @param easting filled with the eastings, metres
     * @param northing filled with the northings, metres
     * @param elevation filled with the elevations, metres, positive up
     * @param inclination filled with the inclinations, from vertically down, degrees in [0, 180]
     * @param azimuth filled with the azimuths, clockwise from grid north, degrees in [0, 360)
     * @param status filled with {@link #SURVEYED}, {@link #EXTRAPOLATED} or {@link #REFUSED}
     * @return how many rows were refused
     * @throws IndexOutOfBoundsException if a column does not have these rows; nothing is written then
     */
    public int positionsAndDirections(
            double[] depths,
            int offset,
            int length,
            double[] easting,
            double[] northing,
            double[] elevation,
            double[] inclination,
            double[] azimuth,
            byte[] status) {
        checkRows(offset, length, depths.length, easting.length, northing.length, elevation.length, status.length);
        checkRows(offset, length, inclination.length, azimuth.length);
        return fill(true, true, depths, offset, length, easting, northing, elevation, inclination, azimuth, status);
    }

    private static void checkRows(int offset, int length, int... sizes) {
        for (int size : sizes) {
            Objects.checkFromIndexSize(offset, length, size);
        }
    }

    private int fill(
            boolean hasPlaces,
            boolean hasAngles,
            double[] depths,
            int offset,
            int length,
            double[] easting,
            double[] northing,
            double[] elevation,
            double[] inclination,
            double[] azimuth,
            byte[] status) {
        double[] answer = new double[3];
        double east = collar.easting();
        double north = collar.northing();
        double up = collar.elevation();
        int refused = 0;
        int at = 0;
        Leg leg = legs[0];
        double from = leg.from;
        double end = ends[0];
        for (int row = offset; row < offset + length; row++) {
            double depth = depths[row];
            boolean isReached = depth >= from && depth < end;
            if (!isReached && depth >= 0 && depth <= reach) {
                boolean isNext = depth >= end && depth < ends[at + 1];
                at = isNext ? at + 1 : index.at(depth);
                leg = legs[at];
                from = leg.from;
                end = ends[at];
                isReached = true;
            }
            if (!isReached) {
                refuse(hasPlaces, hasAngles, row, easting, northing, elevation, inclination, azimuth, status);
                refused++;
                continue;
            }
            double run = depth - from;
            if (hasPlaces) {
                leg.way(run, answer);
                easting[row] = east + (leg.startEast + answer[1]);
                northing[row] = north + (leg.startNorth + answer[0]);
                elevation[row] = up - (leg.startDown + answer[2]);
            }
            if (hasAngles) {
                if (run == 0) {
                    answer[0] = leg.at.direction().inclination();
                    answer[1] = leg.at.direction().azimuth();
                } else {
                    leg.angles(run, answer);
                }
                inclination[row] = answer[0];
                azimuth[row] = answer[1];
            }
            boolean isExtrapolated = depth < firstMeasured || (leg.isBeyond && run > 0);
            status[row] = isExtrapolated ? EXTRAPOLATED : SURVEYED;
        }
        return refused;
    }

    private static void refuse(
            boolean hasPlaces,
            boolean hasAngles,
            int row,
            double[] easting,
            double[] northing,
            double[] elevation,
            double[] inclination,
            double[] azimuth,
            byte[] status) {
        if (hasPlaces) {
            easting[row] = Double.NaN;
            northing[row] = Double.NaN;
            elevation[row] = Double.NaN;
        }
        if (hasAngles) {
            inclination[row] = Double.NaN;
            azimuth[row] = Double.NaN;
        }
        status[row] = REFUSED;
    }
}
