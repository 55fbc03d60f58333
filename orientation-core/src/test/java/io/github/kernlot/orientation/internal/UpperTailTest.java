package io.github.kernlot.orientation.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.FDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UpperTailTest {

    /** Two degrees of freedom: exp(-x / 2); F with 2 and m: (1 + 2 x / m)^(-m / 2) (elementary integrals). */
    @ParameterizedTest
    @CsvSource({"1e-9", "0.5", "3", "60", "400", "1300"})
    void tailsInClosedForm(double value) {
        near(Math.exp(-value / 2), UpperTail.ofChiSquare(value, 2));
        for (double below : new double[] {1, 4, 14, 61.5}) {
            near(Math.pow(1 + 2 * value / below, -below / 2), UpperTail.ofF(value, 2, below));
        }
    }

    /** Where 1 - P keeps its digits it is the other way. */
    @ParameterizedTest
    @CsvSource({"1, 0.7", "3, 2.2", "5, 11", "17, 25.5"})
    void whatIsLikelyIsOneLessTheDistribution(double freedom, double value) {
        near(
                1 - new ChiSquaredDistribution(null, freedom).cumulativeProbability(value),
                UpperTail.ofChiSquare(value, freedom));
        near(
                1 - new FDistribution(null, freedom, 9.5).cumulativeProbability(value / 6),
                UpperTail.ofF(value / 6, freedom, 9.5));
    }

    @Test
    void nothingAndEverything() {
        assertEquals(1, UpperTail.ofChiSquare(0, 3));
        assertEquals(1, UpperTail.ofChiSquare(-1e-9, 3));
        assertEquals(0, UpperTail.ofChiSquare(Double.POSITIVE_INFINITY, 3));
        assertEquals(1, UpperTail.ofF(0, 3, 4));
        assertEquals(0, UpperTail.ofF(Double.POSITIVE_INFINITY, 3, 4));
    }

    private static void near(double expected, double found) {
        assertEquals(expected, found, 1e-11 * expected);
    }
}
