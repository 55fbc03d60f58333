package io.github.kernlot.orientation.internal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Exact;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Sine and cosine of degrees against 40 digits (big-math 2.3.2), in units in the last place of the result. */
class DegreesAccuracyTest {

    private static final int ROUNDS = Integer.getInteger("kernlot.accuracy.rounds", 500);
    /** The largest error seen in 200 000 angles was 1.54. */
    private static final double BOUND = 2;

    private final SplittableRandom random = new SplittableRandom(20261125);

    @Test
    void sineAndCosineOfEveryWholeAndHalfDegreeAreWithinTwoUlps() {
        for (int i = -2 * 360; i <= 2 * 360; i++) {
            check(i / 2.0);
        }
    }

    @Test
    void sineAndCosineOfAnyAngleAreWithinTwoUlps() {
        for (int i = 0; i < 2 * ROUNDS; i++) {
            check(720 * (random.nextDouble() - 0.5));
        }
    }

    @Test
    void besideAQuarterTurnTheSmallOfTheTwoKeepsAllItsDigits() {
        for (int i = 0; i < 2 * ROUNDS; i++) {
            double offset = (2 * random.nextDouble() - 1) * Math.pow(10, -2 - 12 * random.nextDouble());
            check(90.0 * random.nextInt(-4, 5) + offset);
        }
    }

    @Test
    void tinyAnglesKeepAllTheirDigits() {
        for (int i = 0; i < ROUNDS; i++) {
            check((2 * random.nextDouble() - 1) * Math.pow(10, -300 * random.nextDouble()));
        }
    }

    @Test
    void anglesOfManyTurnsAreReducedExactly() {
        for (int i = 0; i < ROUNDS; i++) {
            check((2 * random.nextDouble() - 1) * Math.pow(10, 3 + 15 * random.nextDouble()));
        }
        // at the change from one reduction to the other
        check(1e9);
        check(Math.nextDown(1e9));
        check(-1e9);
    }

    private void check(double degrees) {
        check("sin", Degrees::sin, Exact::sin, degrees);
        check("cos", Degrees::cos, Exact::cos, degrees);
    }

    private static void check(
            String name, DoubleUnaryOperator found, DoubleFunction<BigDecimal> exact, double degrees) {
        BigDecimal expected = exact.apply(degrees);
        double value = found.applyAsDouble(degrees);
        BigDecimal error = new BigDecimal(value).subtract(expected).abs();
        double ulps = error.divide(new BigDecimal(Math.ulp(expected.doubleValue())), MathContext.DECIMAL64)
                .doubleValue();
        // what is exactly 0 comes out as 1e-40 in 40 digits
        assertTrue(
                ulps <= BOUND || error.doubleValue() < 1e-38,
                () -> name + " of " + degrees + " is off by " + ulps + " ulp");
    }
}
