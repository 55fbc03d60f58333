package io.github.kernlot.orientation.bulk;

import io.github.kernlot.orientation.internal.DegreeColumns;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Polar;
import java.util.Arrays;

/**
 * As many rows as stay in the nearest cache while one short loop after another goes over them. The arithmetic is that of
 * {@code CoreFrame}, {@code CorePlane}, {@code LineInPlane} and {@code CoreLine}, in the same order, so that not a bit differs.
 */
final class Block {

    static final int ROWS = 256;

    /** The angles of the rows; on the way their sines. */
    final double[] first = new double[ROWS];

    final double[] second = new double[ROWS];
    final double[] third = new double[ROWS];

    private final double[] cosFirst = new double[ROWS];
    private final double[] cosSecond = new double[ROWS];
    private final double[] cosThird = new double[ROWS];
    private final double[] work = new double[ROWS];

    /** The frames: axis, line and quarter, each north, east, down. */
    private final double[][] frame = new double[9][ROWS];

    /** The direction before it is turned, and after. */
    private final double[][] from = new double[3][ROWS];

    private final double[][] to = new double[3][ROWS];

    /** One frame for all rows. */
    void standIn(double[] cosines, int count) {
        for (int k = 0; k < 9; k++) {
            Arrays.fill(frame[k], 0, count, cosines[k]);
        }
    }

    /** The frames of holes whose inclination, azimuth and line angle stand in the three columns; a vertical one is told. */
    void standInHoles(int offset, int count, byte[] status) {
        for (int i = 0; i < count; i++) {
            third[i] = Degrees.reduced(third[i]);
        }
        DegreeColumns.sinCos(first, cosFirst, work, count);
        DegreeColumns.sinCos(second, cosSecond, work, count);
        DegreeColumns.sinCos(third, cosThird, work, count);
        for (int i = 0; i < count; i++) {
            if (first[i] == 0 && status[offset + i] == RowStatus.ANSWERED) {
                status[offset + i] = RowStatus.NO_LOW_SIDE;
            }
        }
        Loops.product(first, cosSecond, frame[0], count);
        Loops.product(first, second, frame[1], count);
        System.arraycopy(cosFirst, 0, frame[2], 0, count);
        Loops.lineNorth(cosFirst, second, cosSecond, third, cosThird, frame[3], count);
        Loops.lineEast(cosFirst, second, cosSecond, third, cosThird, frame[4], count);
        Loops.product(first, cosThird, frame[5], count);
        Loops.cross(frame[1], frame[2], frame[4], frame[5], frame[6], count);
        Loops.cross(frame[2], frame[0], frame[5], frame[3], frame[7], count);
        Loops.cross(frame[0], frame[1], frame[3], frame[4], frame[8], count);
    }

    /** The normals of planes on core, from alpha and beta. */
    void normalsOnCore(int count) {
        sinCosOfTwo(count);
        System.arraycopy(first, 0, from[0], 0, count);
        Loops.productNegated(cosFirst, cosSecond, from[1], count);
        Loops.productNegated(cosFirst, second, from[2], count);
    }

    /** Lines through the core, from the axis angle and delta. */
    void linesOnCore(int count) {
        sinCosOfTwo(count);
        System.arraycopy(cosFirst, 0, from[0], 0, count);
        Loops.product(first, cosSecond, from[1], count);
        Loops.product(first, second, from[2], count);
    }

    /** Lines in planes, from alpha, beta and gamma. */
    void linesInPlanes(int count) {
        sinCosOfTwo(count);
        DegreeColumns.sinCos(third, cosThird, work, count);
        // l = cos(gamma) m + sin(gamma) (t x u)
        Loops.product(cosFirst, cosThird, from[0], count);
        Loops.longAxis(first, cosSecond, cosThird, from[1], count);
        Loops.longAxis(first, second, cosThird, from[2], count);
        Loops.addProduct(from[1], second, third, -1, count);
        Loops.addProduct(from[2], cosSecond, third, 1, count);
    }

    /** The normals of planes in the ground, from dip and dip direction. */
    void normalsInGround(int count) {
        sinCosOfTwo(count);
        Loops.productNegated(first, cosSecond, from[0], count);
        Loops.productNegated(first, second, from[1], count);
        System.arraycopy(cosFirst, 0, from[2], 0, count);
    }

    /** Lines in the ground, from plunge and trend. */
    void linesInGround(int count) {
        sinCosOfTwo(count);
        Loops.product(cosFirst, cosSecond, from[0], count);
        Loops.product(cosFirst, second, from[1], count);
        System.arraycopy(first, 0, from[2], 0, count);
    }

    private void sinCosOfTwo(int count) {
        DegreeColumns.sinCos(first, cosFirst, work, count);
        DegreeColumns.sinCos(second, cosSecond, work, count);
    }

    /** Dip and dip direction: the normal leans upwards to where the plane falls. */
    void toPlanesInGround(int count) {
        turnToGround(count);
        name(to[0], to[1], to[2], -1, true, count);
    }

    /** Plunge and trend. */
    void toLinesInGround(int count) {
        turnToGround(count);
        name(to[0], to[1], to[2], 1, false, count);
    }

    /** Alpha and beta: the normal on the up-hole side leans to the down-hole end of the ellipse. */
    void toPlanesOnCore(int count) {
        turnToCore(count);
        name(to[1], to[2], to[0], -1, false, count);
    }

    /** Axis angle and delta. */
    void toLinesOnCore(int count) {
        turnToCore(count);
        name(to[1], to[2], to[0], 1, true, count);
    }

    private void turnToGround(int count) {
        for (int k = 0; k < 3; k++) {
            Loops.sumOfProducts(from[0], frame[k], from[1], frame[3 + k], from[2], frame[6 + k], to[k], count);
        }
    }

    private void turnToCore(int count) {
        for (int k = 0; k < 3; k++) {
            Loops.sumOfProducts(
                    from[0], frame[3 * k], from[1], frame[3 * k + 1], from[2], frame[3 * k + 2], to[k], count);
        }
    }

    /** Plunge and trend of the poles in the place of dip and dip direction. */
    void poles(int count) {
        for (int i = 0; i < count; i++) {
            second[i] = Polar.poleTrend(first[i], second[i]);
            first[i] = 90 - first[i];
        }
    }

    /** Leaves the angle from the axis or the plane across it in the first column and the one round it in the second. */
    private void name(double[] x, double[] y, double[] along, double end, boolean fromAxis, int count) {
        double[] across = third;
        DegreeColumns.named(end, x, y, along, across, count);
        DegreeColumns.azimuth(y, x, second, work, count);
        if (fromAxis) {
            DegreeColumns.acute(across, along, first, work, count);
        } else {
            DegreeColumns.acute(along, across, first, work, count);
        }
        choose(along, across, fromAxis ? 0 : 90, count);
    }

    /** What {@link Polar} chooses; the work column then holds the status that this makes. */
    private void choose(double[] along, double[] across, double onAxis, int count) {
        for (int i = 0; i < count; i++) {
            work[i] = RowStatus.ANSWERED;
            if (!(along[i] >= Polar.ROUNDING && across[i] >= Polar.ROUNDING && second[i] < 360)) {
                choose(i, along[i], across[i], onAxis);
            }
        }
    }

    private void choose(int i, double along, double across, double onAxis) {
        if (across < Polar.ROUNDING) {
            first[i] = onAxis;
            second[i] = 0;
            work[i] = RowStatus.SECOND_ANGLE_IDLE;
            return;
        }
        if (second[i] == 360) {
            second[i] = 0;
        }
        if (along < Polar.ROUNDING) {
            first[i] = 90 - onAxis;
            second[i] = second[i] >= 180 ? second[i] - 180 : second[i];
            work[i] = RowStatus.SECOND_ANGLE_TWOFOLD;
        }
    }

    /** Writes the two angles and the status to the caller's columns. */
    int write(int offset, int count, double[] firstOut, double[] secondOut, byte[] status) {
        int refused = 0;
        for (int i = 0; i < count; i++) {
            int row = offset + i;
            if (status[row] < 0) {
                firstOut[row] = Double.NaN;
                secondOut[row] = Double.NaN;
                refused++;
            } else {
                firstOut[row] = first[i] + 0.0;
                secondOut[row] = second[i] + 0.0;
                status[row] = (byte) work[i];
            }
        }
        return refused;
    }
}
