package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The functions below an arc against 40 digits (big-math 2.3.2). */
class ArcAccuracyTest {

    private static final MathContext DIGITS = new MathContext(40);
    private static final BigDecimal DEGREES = new BigDecimal(180).divide(BigDecimalMath.pi(DIGITS), DIGITS);

    /** How far a number lies from what it should be, in units of its last place. */
    private static double ulps(BigDecimal expected, double found) {
        double ulp = Math.ulp(expected.doubleValue());
        return expected.subtract(new BigDecimal(found))
                .abs()
                .divide(new BigDecimal(ulp), DIGITS)
                .doubleValue();
    }

    @Test
    void theSeriesAreWithin2UlpWhereArcsAreGentleAndWithin4Beyond() {
        Random random = new Random(1);
        double gentle = 0;
        double any = 0;
        for (int i = 0; i < 4000; i++) {
            double square = i % 2 == 0 ? 0.04 * random.nextDouble() : Math.pow(10, -16 + 17 * random.nextDouble());
            BigDecimal exact = new BigDecimal(square);
            BigDecimal angle = BigDecimalMath.sqrt(exact, DIGITS);
            BigDecimal along = BigDecimalMath.sin(angle, DIGITS).divide(angle, DIGITS);
            // 1 - cos x as 2 sin^2 (x/2), which keeps the digits of the reference
            BigDecimal half = BigDecimalMath.sin(angle.divide(BigDecimal.valueOf(2), DIGITS), DIGITS);
            BigDecimal across =
                    half.multiply(half, DIGITS).multiply(BigDecimal.valueOf(2)).divide(exact, DIGITS);
            double worst = Math.max(ulps(along, ArcSeries.along(square)), ulps(across, ArcSeries.across(square)));
            // near pi the sine is as sharp as the angle itself, which an arc turns through only above 179.9 degrees
            if (square <= 0.04) {
                gentle = Math.max(gentle, worst);
            } else if (square < 6) {
                any = Math.max(any, worst);
            }
        }
        assertTrue(gentle <= 2, gentle + " ulp");
        assertTrue(any <= 4, any + " ulp");
    }

    @Test
    void aBearingIsWithin3Ulp() {
        Random random = new Random(2);
        double worst = 0;
        for (int i = 0; i < 20_000; i++) {
            double y = component(random);
            double x = component(random);
            double found = Bearing.of(y, x);
            BigDecimal expected = BigDecimalMath.atan2(new BigDecimal(y), new BigDecimal(x), DIGITS)
                    .multiply(DEGREES, DIGITS);
            worst = Math.max(worst, ulps(expected, found));
        }
        assertTrue(worst <= 3, worst + " ulp");
    }

    private static double component(Random random) {
        double sign = random.nextBoolean() ? 1 : -1;
        return sign
                * (random.nextBoolean() ? random.nextDouble() + 1e-3 : Math.pow(10, -18 + 18 * random.nextDouble()));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0",
        "0, -0.0, 0",
        "0, 1, 0",
        "1, 1, 45",
        "1, 0, 90",
        "1, -1, 135",
        "0, -1, 180",
        "-0.0, -1, 180",
        "-1, -1, -135",
        "-1, 0, -90",
        "-1, 1, -45",
        "5e-324, 1, 0",
        "5e-324, 5e-324, 45"
    })
    void bearingsAlongTheAxesAndBetweenAreExact(double y, double x, double degrees) {
        assertEquals(degrees, Bearing.of(y, x), 1e-300);
        assertEquals(degrees < 0 ? degrees + 360 : degrees, Bearing.azimuth(y, x), 1e-300);
    }

    @Test
    void anAzimuthIsNever360() {
        assertEquals(0, Bearing.azimuth(-1e-30, 1));
        assertTrue(Bearing.azimuth(-1e-15, 1) < 360);
        assertEquals(359, Bearing.azimuth(Math.sin(Math.toRadians(-1)), Math.cos(Math.toRadians(-1))), 1e-13);
    }
}
