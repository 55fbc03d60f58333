package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.Displacement;
import java.util.Locale;

/**
 * The first order beside drawn holes, at one depth.
 *
 * @param firstOrder what the derivatives say
 * @param drawn what the drawn holes say
 * @param offset the mean of the drawn places from the place as measured, which the first order takes as none
 * @param draws how many holes were drawn and counted
 * @param discarded how many draws had their stations out of order and were left out
 */
public record MonteCarloReport(
        PointUncertainty firstOrder, PointUncertainty drawn, Displacement offset, int draws, int discarded) {

    /** Variances that are nothing but rounding, metres squared: of 1e-9 m. */
    private static final double PLACE_ROUNDING = 1e-18;

    /** The same of a unit vector: of 1e-14. */
    private static final double DIRECTION_ROUNDING = 1e-28;

    /**
     * The standard error of one number of the drawn covariance, by the sampling of a normal distribution:
     * {@code sqrt((C_ii C_jj + C_ij^2) / (n - 1))}.
     *
     * @param row 0 to 5: place north, east, down, unit vector north, east, down
     * @param column 0 to 5
     * @return the standard error, in the unit of that number
     * @throws IndexOutOfBoundsException if an index lies outside 0 to 5
     */
    public double standardError(int row, int column) {
        double[][] joint = drawn.joint();
        double cross = joint[row][column];
        return Math.sqrt((joint[row][row] * joint[column][column] + cross * cross) / (draws - 1));
    }

    /**
     * How far the two covariances of the place are apart, by what sampling alone makes of it: the root of the sum of squares of the
     * differences over that of their expectations, {@code (tr(C)^2 + tr(C C)) / (n - 1)}.
     *
     * @return about 1 or less where the first order holds; above 3 it does not, to the precision of so many draws
     */
    public double placeDiscrepancy() {
        return discrepancy(drawn.place(), firstOrder.place(), PLACE_ROUNDING);
    }

    /**
     * How far the two covariances of the direction are apart, as {@link #placeDiscrepancy}.
     *
     * @return about 1 or less where the first order holds
     */
    public double directionDiscrepancy() {
        return discrepancy(drawn.tangent(), firstOrder.tangent(), DIRECTION_ROUNDING);
    }

    private double discrepancy(Covariance sampled, Covariance expected, double rounding) {
        double[][] one = sampled.toArray();
        double[][] other = expected.toArray();
        double apart = 0;
        double square = 0;
        double trace = 0;
        for (int i = 0; i < one.length; i++) {
            trace += one[i][i];
            for (int j = 0; j < one.length; j++) {
                apart += (one[i][j] - other[i][j]) * (one[i][j] - other[i][j]);
                square += one[i][j] * one[i][j];
            }
        }
        return Math.sqrt(apart * (draws - 1) / (trace * trace + square + rounding * rounding));
    }

    /** Both in words. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "first order %s\n%d drawn holes %s\ndiscrepancy of place %.2f, of direction %.2f; discarded %d",
                firstOrder,
                draws,
                drawn,
                placeDiscrepancy(),
                directionDiscrepancy(),
                discarded);
    }
}
