package io.github.kernlot.orientation.internal;

/**
 * {@link DegreeKernel} over columns. The loops are short, begin at 0, and hold no branch: C2 makes vector instructions of each of them,
 * which it does not of a long one. Every column may be written over another that is no longer needed, but columns named in one call
 * are different arrays.
 */
public final class DegreeColumns {

    private DegreeColumns() {}

    /**
     * Sines and cosines.
     *
     * @param sin angles in degrees, below 1e9 in size; replaced by their sines
     * @param cos filled with the cosines
     * @param work filled with what is not wanted
     * @param count how many rows
     */
    public static void sinCos(double[] sin, double[] cos, double[] work, int count) {
        rests(sin, work, count);
        cosines(sin, cos, count);
        sines(sin, count);
        ofParts(sin, cos, work, count);
    }

    private static void rests(double[] angle, double[] part, int count) {
        for (int i = 0; i < count; i++) {
            double quarters = DegreeKernel.quarters(angle[i]);
            angle[i] = DegreeKernel.rest(angle[i], quarters);
            part[i] = DegreeKernel.partOfTurn(quarters);
        }
    }

    private static void cosines(double[] rest, double[] cos, int count) {
        for (int i = 0; i < count; i++) {
            cos[i] = DegreeKernel.cosOfRest(rest[i]);
        }
    }

    private static void sines(double[] rest, int count) {
        for (int i = 0; i < count; i++) {
            rest[i] = DegreeKernel.sinOfRest(rest[i]);
        }
    }

    private static void ofParts(double[] sin, double[] cos, double[] part, int count) {
        for (int i = 0; i < count; i++) {
            double sinOfRest = sin[i];
            double cosOfRest = cos[i];
            sin[i] = DegreeKernel.sin(sinOfRest, cosOfRest, part[i]);
            cos[i] = DegreeKernel.cos(sinOfRest, cosOfRest, part[i]);
        }
    }

    /**
     * Angles of vectors in a quarter of the circle.
     *
     * @param up components at 90 degrees, not negative, below 1.3
     * @param along components at 0 degrees, not negative, below 1.3
     * @param angle filled with the angles in degrees, in [0, 90]; NaN for a null vector
     * @param work filled with what is not wanted
     * @param count how many rows
     */
    public static void acute(double[] up, double[] along, double[] angle, double[] work, int count) {
        octants(up, along, work, angle, count);
        eighths(work, angle, count);
    }

    private static void eighths(double[] octant, double[] angle, int count) {
        for (int i = 0; i < count; i++) {
            angle[i] = 45 * octant[i] + angle[i];
        }
    }

    /**
     * Angles of vectors as azimuths.
     *
     * @param y components at 90 degrees, below 1.3 in size
     * @param x components at 0 degrees, below 1.3 in size
     * @param angle filled with the angles in degrees, in [0, 360]; NaN for a null vector
     * @param work filled with what is not wanted
     * @param count how many rows
     */
    public static void azimuth(double[] y, double[] x, double[] angle, double[] work, int count) {
        octants(y, x, work, angle, count);
        azimuths(y, x, work, angle, count);
    }

    private static void azimuths(double[] y, double[] x, double[] octant, double[] angle, int count) {
        for (int i = 0; i < count; i++) {
            angle[i] = DegreeKernel.azimuth(side(y[i]), side(x[i]), octant[i], angle[i]);
        }
    }

    /** -1 below zero, else 1, for numbers up to 1.3: 0.75 of the smallest number is that number, and of none below 1.3 is it 1. */
    private static double side(double component) {
        return 1 + 2 * Math.floor(0.75 * component);
    }

    private static void octants(double[] y, double[] x, double[] octant, double[] beyond, int count) {
        nearest(y, x, octant, count);
        slopes(y, x, octant, beyond, count);
        atan(beyond, count);
    }

    private static void nearest(double[] y, double[] x, double[] octant, int count) {
        for (int i = 0; i < count; i++) {
            octant[i] = DegreeKernel.octant(Math.abs(y[i]), Math.abs(x[i]));
        }
    }

    private static void slopes(double[] y, double[] x, double[] octant, double[] slope, int count) {
        for (int i = 0; i < count; i++) {
            slope[i] = DegreeKernel.slope(Math.abs(y[i]), Math.abs(x[i]), octant[i]);
        }
    }

    private static void atan(double[] slope, int count) {
        for (int i = 0; i < count; i++) {
            slope[i] = DegreeKernel.atan(slope[i]);
        }
    }

    /**
     * Directions without an arrow as {@link Polar} names them, before it chooses where they lie along the axis or across it.
     *
     * @param end 1 if the end whose third component is not negative is named, -1 for the other one
     * @param x first components across the axis; turned to that end
     * @param y second components across the axis; turned to that end
     * @param along components along the axis; replaced by their sizes
     * @param across filled with the lengths across the axis
     * @param count how many rows
     */
    public static void named(double end, double[] x, double[] y, double[] along, double[] across, int count) {
        for (int i = 0; i < count; i++) {
            double side = end * side(along[i]);
            x[i] = side * x[i];
            y[i] = side * y[i];
        }
        for (int i = 0; i < count; i++) {
            across[i] = Math.sqrt(x[i] * x[i] + y[i] * y[i]);
            along[i] = Math.abs(along[i]);
        }
    }
}
