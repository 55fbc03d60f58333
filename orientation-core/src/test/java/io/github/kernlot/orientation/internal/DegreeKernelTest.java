package io.github.kernlot.orientation.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Exact;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Arctangents against 40 digits (big-math 2.3.2); what happens where one polynomial takes over from another; columns and scalars. */
class DegreeKernelTest {

    private static final int ROUNDS = Integer.getInteger("kernlot.accuracy.rounds", 500);
    /** The largest error seen in 200 000 vectors was 2.34, beside 22.5 degrees. */
    private static final double BOUND = 2.5;

    private final SplittableRandom random = new SplittableRandom(20261125);

    @Test
    void arctangentsOfAnyVectorAreWithinTwoAndAHalfUlps() {
        for (int i = 0; i < 2 * ROUNDS; i++) {
            double scale = Math.pow(10, random.nextInt(-150, 150));
            check(scale * (random.nextDouble() - 0.5), scale * (random.nextDouble() - 0.5));
        }
    }

    @Test
    void arctangentsBesideEveryEighthAndSixteenthOfATurnAreWithinTwoAndAHalfUlps() {
        for (int i = 0; i < 2 * ROUNDS; i++) {
            double angle = Math.toRadians(22.5 * random.nextInt(16));
            double offset = (2 * random.nextDouble() - 1) * Math.pow(10, -1 - 16 * random.nextDouble());
            check(Math.sin(angle) + offset, Math.cos(angle));
            check(Math.sin(angle), Math.cos(angle) + offset);
        }
    }

    @Test
    void arctangentsOfTheSmallestAndLargestNumbersAreWithinTwoAndAHalfUlps() {
        double[] sizes = {Double.MIN_VALUE, 3 * Double.MIN_VALUE, 1e-310, Double.MIN_NORMAL, 1, 1e308, Double.MAX_VALUE
        };
        for (double y : sizes) {
            for (double x : sizes) {
                for (int signs = 0; signs < 4; signs++) {
                    check((signs & 1) == 0 ? y : -y, (signs & 2) == 0 ? x : -x);
                }
            }
        }
    }

    private static void check(double y, double x) {
        BigDecimal exact = Exact.atan2(y, x);
        check("atan2", Degrees.atan2(y, x), exact, y, x);
        boolean isNorth = Degrees.azimuth(y, x) == 0 && y < 0;
        BigDecimal around = y < 0 && !isNorth ? exact.add(BigDecimal.valueOf(360)) : exact;
        if (isNorth) {
            assertTrue(exact.doubleValue() > -Math.ulp(360.0), () -> "azimuth of " + y + " " + x);
        } else {
            check("azimuth", Degrees.azimuth(y, x), around, y, x);
        }
    }

    private static void check(String name, double value, BigDecimal exact, double y, double x) {
        BigDecimal error = new BigDecimal(value).subtract(exact).abs();
        double ulps = error.divide(new BigDecimal(Math.ulp(exact.doubleValue())), MathContext.DECIMAL64)
                .doubleValue();
        assertTrue(ulps <= BOUND, () -> name + " of " + y + " " + x + " is off by " + ulps + " ulp");
    }

    @Test
    void tinyAndHugeAnglesHaveTheirSines() {
        for (double degrees : new double[] {Double.MIN_VALUE, 1e-310, -1e-308, 1e15 + 0.125, -1e15, 0x1p80, 1e300}) {
            double sin = Exact.sin(degrees).doubleValue();
            double cos = Exact.cos(degrees).doubleValue();
            assertEquals(sin, Degrees.sin(degrees), 2 * Math.ulp(sin), "sine of " + degrees);
            assertEquals(cos, Degrees.cos(degrees), 2 * Math.ulp(cos), "cosine of " + degrees);
        }
    }

    /** Neighbours may change places by a rounding, but never by more. */
    @ParameterizedTest
    @ValueSource(doubles = {-45, 45, 135 - 90, 315 - 360})
    void sinesRiseAcrossTheChangeOfPolynomials(double joint) {
        assertRises(Degrees::sin, joint);
        assertRises(angle -> -Degrees.cos(angle + 90), joint);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.41421356237309503, 1, 2.414213562373095})
    void arctangentsRiseAcrossTheChangeOfPolynomials(double joint) {
        assertRises(y -> Degrees.atan2(y, 1), joint);
        assertRises(x -> Degrees.atan2(1, -x), joint);
        assertRises(y -> Degrees.azimuth(y, -1) * -1, joint);
    }

    private static void assertRises(DoubleUnaryOperator function, double joint) {
        double step = Math.max(Math.ulp(joint), 1e-17);
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = -3000; i <= 3000; i++) {
            double value = function.applyAsDouble(joint + i * step);
            assertTrue(value >= highest - Math.ulp(highest), () -> "falls at " + joint);
            highest = Math.max(highest, value);
        }
        assertTrue(function.applyAsDouble(joint + 1e-3) > function.applyAsDouble(joint - 1e-3));
    }

    /** The same sums in another language (CPython 3.11, which has the same doubles) made the same bits. */
    @Test
    void theBitsAreTheSameEverywhere() {
        long hash = 0;
        for (int i = 0; i < 100_000; i++) {
            double degrees = i * 0.37 - 5000;
            double sin = Degrees.sin(degrees);
            double cos = Degrees.cos(degrees);
            hash = 31 * hash + Double.doubleToRawLongBits(sin);
            hash = 31 * hash + Double.doubleToRawLongBits(cos);
            hash = 31 * hash + Double.doubleToRawLongBits(Degrees.azimuth(sin, cos));
            hash = 31 * hash + Double.doubleToRawLongBits(Degrees.azimuth(cos, 0.3 - sin));
        }
        assertEquals("bb5ca910ffa6b77b", Long.toHexString(hash));
    }

    @Test
    void columnsAreTheScalars() {
        int count = 20_000;
        double[] angle = new double[count];
        double[] y = new double[count];
        double[] x = new double[count];
        for (int i = 0; i < count; i++) {
            double beside = random.nextInt(3) * 1e-14 * random.nextDouble(-1, 1);
            angle[i] = random.nextBoolean() ? random.nextDouble(-1e4, 1e4) : 15 * random.nextInt(-50, 50) + beside;
            y[i] = random.nextInt(8) == 0 ? beside : random.nextDouble(-1.2, 1.2);
            x[i] = random.nextInt(8) == 0 ? -beside + Double.MIN_VALUE : random.nextDouble(-1.2, 1.2);
        }
        double[] sin = angle.clone();
        double[] cos = new double[count];
        double[] azimuth = new double[count];
        double[] acute = new double[count];
        double[] work = new double[count];
        DegreeColumns.sinCos(sin, cos, work, count);
        DegreeColumns.azimuth(y, x, azimuth, work, count);
        double[] up = new double[count];
        double[] along = new double[count];
        for (int i = 0; i < count; i++) {
            up[i] = Math.abs(y[i]);
            along[i] = Math.abs(x[i]);
        }
        DegreeColumns.acute(up, along, acute, work, count);
        for (int i = 0; i < count; i++) {
            assertEquals(Degrees.sin(angle[i]), sin[i] + 0.0);
            assertEquals(Degrees.cos(angle[i]), cos[i] + 0.0);
            assertEquals(Degrees.azimuth(y[i], x[i]), azimuth[i] == 360 ? 0 : azimuth[i] + 0.0);
            assertEquals(Degrees.atan2(up[i], along[i]), acute[i] + 0.0);
        }
    }

    @Test
    void whatIsNotAFiniteVectorIsAnswered() {
        assertEquals(0.0, Degrees.atan2(0, -0.0));
        assertEquals(0.0, Degrees.azimuth(-0.0, 0));
        assertEquals(Double.NaN, Degrees.atan2(Double.NaN, 1));
        assertEquals(Double.NaN, Degrees.azimuth(1, Double.NaN));
        assertEquals(-135.0, Degrees.atan2(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY));
        assertEquals(270.0, Degrees.azimuth(Double.NEGATIVE_INFINITY, 1));
        assertEquals(Double.NaN, Degrees.sin(Double.POSITIVE_INFINITY));
    }
}
