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

    /** What {@link #write} must know of the last names: the components along the axis, and the angle of a direction along it. */
    private double[] edge = to[0];

    private double onAxis;

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
        Loops.margins(along, across, Polar.ROUNDING, second, 360, work, count);
        edge = along;
        onAxis = fromAxis ? 0 : 90;
    }

    /** Writes the two angles to the caller's columns and completes the status. */
    int write(int offset, int count, double[] firstOut, double[] secondOut, byte[] status) {
        double[] margin = work;
        double[] polar = first;
        double[] round = second;
        int refused = 0;
        for (int i = 0; i < count; i++) {
            int row = offset + i;
            firstOut[row] = polar[i];
            secondOut[row] = round[i];
            if (!(margin[i] > 0) || status[row] != RowStatus.ANSWERED) {
                refused += writeUnusual(i, row, firstOut, secondOut, status);
            }
        }
        return refused;
    }

    /** A row that was refused, or one where {@link Polar} chooses an angle. */
    private int writeUnusual(int i, int row, double[] firstOut, double[] secondOut, byte[] status) {
        if (RowStatus.isRefused(status[row])) {
            firstOut[row] = Double.NaN;
            secondOut[row] = Double.NaN;
            return 1;
        }
        double along = edge[i];
        double across = third[i];
        double round = second[i] == 360 ? 0 : second[i];
        if (across < Polar.ROUNDING) {
            firstOut[row] = onAxis;
            secondOut[row] = 0;
            status[row] = RowStatus.SECOND_ANGLE_IDLE;
        } else if (along < Polar.ROUNDING) {
            firstOut[row] = 90 - onAxis;
            secondOut[row] = round >= 180 ? round - 180 : round;
            status[row] = RowStatus.SECOND_ANGLE_TWOFOLD;
        } else {
            secondOut[row] = round;
        }
        return 0;
    }
}
