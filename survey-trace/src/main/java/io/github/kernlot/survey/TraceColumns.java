package io.github.kernlot.survey;

import io.github.kernlot.orientation.Position;
import java.util.Objects;

/**
 * A trace asked at many depths at once, in columns of the caller and without memory for each row. It answers to the last bit what
 * {@link HoleTrace} answers for each depth.
 *
 * <p>Depths may come in any order; in order, rising or falling, they are the faster. All columns of a call are read and written at
 * the same rows, {@code offset} to {@code offset + length - 1}, and must be different arrays. A depth that the trace does not answer
 * for, NaN among them, gets NaN in every column and the status {@link #REFUSED}, and the others go on.
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
     * @throws IllegalArgumentException if two columns are one array
     */
    public int positions(
            double[] depths,
            int offset,
            int length,
            double[] easting,
            double[] northing,
            double[] elevation,
            byte[] status) {
        checkRows(offset, length, status.length, depths, easting, northing, elevation);
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
     * @throws IllegalArgumentException if two columns are one array
     */
    public int directions(
            double[] depths, int offset, int length, double[] inclination, double[] azimuth, byte[] status) {
        checkRows(offset, length, status.length, depths, inclination, azimuth);
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
     * @throws IllegalArgumentException if two columns are one array
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
        checkRows(offset, length, status.length, depths, easting, northing, elevation, inclination, azimuth);
        return fill(true, true, depths, offset, length, easting, northing, elevation, inclination, azimuth, status);
    }

    private static void checkRows(int offset, int length, int statuses, double[]... columns) {
        Objects.checkFromIndexSize(offset, length, statuses);
        for (int i = 0; i < columns.length; i++) {
            Objects.checkFromIndexSize(offset, length, columns[i].length);
            for (int j = 0; j < i; j++) {
                if (columns[i] == columns[j]) {
                    throw new IllegalArgumentException("two columns are one array; expected an array for each");
                }
            }
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
        int refused = 0;
        int row = offset;
        while (row < offset + length) {
            double depth = depths[row];
            if (!(depth >= 0 && depth <= reach)) {
                refuse(hasPlaces, hasAngles, row, easting, northing, elevation, inclination, azimuth, status);
                refused++;
                row++;
                continue;
            }
            int at = index.at(depth);
            Leg leg = legs[at];
            // rows in order stay on one leg for long, and are faster together
            int end = row + 1;
            double until = ends[at];
            while (end < offset + length && depths[end] >= leg.from && depths[end] < until) {
                end++;
            }
            if (hasPlaces) {
                leg.places(depths, row, end, collar, easting, northing, elevation, answer);
            }
            if (hasAngles) {
                leg.angles(depths, row, end, inclination, azimuth, answer);
            }
            byte surveyed = leg.from < firstMeasured ? EXTRAPOLATED : SURVEYED;
            byte below = leg.isBeyond ? EXTRAPOLATED : surveyed;
            for (int i = row; i < end; i++) {
                status[i] = depths[i] > leg.from ? below : surveyed;
            }
            row = end;
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
