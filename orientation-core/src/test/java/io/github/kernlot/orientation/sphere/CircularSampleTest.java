package io.github.kernlot.orientation.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.inference.TTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

class CircularSampleTest {

    private static final CircularSample TREES = CircularSample.of(45, 55, 81, 96, 110, 117, 132, 154);

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    private static void near(ArgumentsAccessor row, int column, double value, double tolerance) {
        if (row.getString(column) != null) {
            assertEquals(row.getDouble(column), value, tolerance, row.getString(0) + ": " + row.getString(10));
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "circle-samples.csv", numLinesToSkip = 1, maxCharsPerColumn = 10_000)
    void samplesInPrintHaveTheirNumbers(ArgumentsAccessor row) {
        CircularSample sample = CircularSample.of(numbers(row.getString(1)));

        near(row, 2, sample.mean().orElseThrow(), 1e-8);
        near(row, 3, sample.meanLength(), 1e-12);
        near(row, 4, sample.standardDeviation(), 1e-10);
        near(row, 5, sample.median().from(), 1e-9);
        near(row, 6, sample.median().to(), 1e-9);
        near(row, 7, sample.concentration(), 1e-11);
        near(row, 8, sample.probabilityOfUniform(), 6e-11);
        near(row, 9, sample.rayleighSeries(), 1e-10);
    }

    @Test
    void equalMeansOfSharpSamples() {
        CircularSample ten = CircularSample.of(10, 10);
        assertEquals(1, CircularSample.probabilityOfEqualMeans(List.of(ten, ten)));
        assertEquals(0, CircularSample.probabilityOfEqualMeans(List.of(ten, CircularSample.of(20, 20))));
        assertEquals(1, CircularSample.probabilityOfEqualMeans(List.of(CircularSample.of(1), CircularSample.of(9))));
        assertThrows(IllegalArgumentException.class, () -> CircularSample.probabilityOfEqualMeans(List.of(ten)));
    }

    /** Of small angles round a circle the test for bias is Student's; the library is Commons Math 3.6.1. */
    @Test
    void smallAnglesAreTestedAsOnALine() {
        double[] angles = {0.011, 0.004, 0.017, -0.003, 0.009, 0.002};
        CircularSample sample = CircularSample.of(angles);

        assertEquals(new TTest().tTest(0, angles), sample.probabilityOfMean(0), 1e-6);
        double t = new TDistribution(null, 5).inverseCumulativeProbability(0.975);
        double variance = Arrays.stream(angles).map(x -> x * x).sum()
                - 6 * Math.pow(Arrays.stream(angles).average().orElseThrow(), 2);
        assertEquals(t * Math.sqrt(variance / 5 / 6), sample.meanRadius95(), 1e-6);
    }

    /** The standard error of many small angles is that of a mean on a line. */
    @Test
    void manySmallAnglesHaveTheNormalInterval() {
        double[] angles = new double[100];
        double squares = 0;
        for (int i = 0; i < angles.length; i++) {
            angles[i] = 0.01 * (i % 11 - 5);
            squares += angles[i] * angles[i];
        }
        double mean = Arrays.stream(angles).average().orElseThrow();
        double error = Math.sqrt(squares / 100 - mean * mean) / 10;

        assertEquals(1.959963985 * error, CircularSample.of(angles).meanRadius95(), 1e-6);
    }

    /** Upton's interval where the scatter is wide, with chi-square 3.841459 (from memory). */
    @Test
    void wideScatterHasUptonsInterval() {
        MeanTest test = new MeanTest.Spread(8, 5.5);
        double cosine = Math.sqrt(2 * 8 * (2 * 5.5 * 5.5 - 8 * 3.841458820694124) / (4 * 8 - 3.841458820694124)) / 5.5;

        assertEquals(Math.toDegrees(Math.acos(cosine)), test.radius(0.95), 1e-9);
        assertEquals(180, new MeanTest.Spread(8, 3.5).radius(0.95));
    }

    @Test
    void theVTestOfTheTreesRefusesUniformity() {
        // u = sqrt(2 n) R cos(mean - 90), worked out by hand: 4 * 0.825218 * cos 8.98775 = 3.26034
        assertEquals(0.000556, TREES.probabilityOfUniformAgainst(90), 1e-6);
        assertEquals(0.999444, TREES.probabilityOfUniformAgainst(270), 1e-6);
        // 4 * 0.825218 * cos 38.98775 = 2.56570
        assertEquals(0.005148, TREES.probabilityOfUniformAgainst(60), 1e-6);
    }

    @Test
    void withoutAMeanNothingIsSaid() {
        CircularSample opposite = CircularSample.of(0, 90, 180, 270);

        assertTrue(opposite.mean().isEmpty());
        assertEquals(180, opposite.meanRadius95());
        assertEquals(1, opposite.probabilityOfMean(12));
        assertEquals(0, opposite.concentration());
        assertEquals(1, opposite.probabilityOfUniform());
        assertEquals(Double.POSITIVE_INFINITY, opposite.standardDeviation());
        assertEquals(new Arc(0, 270), opposite.median());
        assertEquals("no mean, spread Infinity, of 4", opposite.toString());
    }

    @Test
    void oneAngleSaysNothingOfItsMean() {
        CircularSample one = CircularSample.of(359);
        assertEquals(359, one.mean().orElseThrow(), 1e-12);
        assertEquals(180, one.meanRadius95());
        assertEquals(1, one.probabilityOfMean(90));
        assertEquals(new Arc(359, 359), one.median());
    }

    @Test
    void equalAnglesAreSharp() {
        CircularSample equal = CircularSample.of(7, 7, 7);
        assertEquals(0, equal.meanRadius95());
        assertEquals(1, equal.probabilityOfMean(7));
        assertEquals(0, equal.probabilityOfMean(8));
        assertEquals(Double.POSITIVE_INFINITY, equal.concentration());
    }

    @Test
    void medianArcsMayLieAcrossNorthAndApart() {
        Arc across = CircularSample.of(350, 20).median();
        assertEquals(new Arc(350, 20), across);
        assertEquals(30, across.width());
        assertEquals(5, across.middle());
        assertEquals("350.0 to 020.0", across.toString());
        assertEquals("012.0", new Arc(12, 12).toString());
        assertEquals(new Arc(100, 100), CircularSample.of(100, 100, 220, 340).median());
    }

    @Test
    void printsItsMean() {
        assertEquals("mean 099.0, 95 % within 33.8, spread 35.5, of 8", TREES.toString());
    }

    @Test
    void refusesWhatIsNoSample() {
        assertThrows(IllegalArgumentException.class, () -> CircularSample.of());
        assertThrows(IllegalArgumentException.class, () -> CircularSample.of(1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> TREES.probabilityOfMean(Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> TREES.probabilityOfUniformAgainst(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Arc(-1, 0));
    }

    /** The interval holds what the test does not refuse, in each of its three forms. */
    @Property
    void theIntervalIsWhatTheTestDoesNotRefuse(
            @ForAll @IntRange(min = 2, max = 60) int size,
            @ForAll @DoubleRange(min = 1, max = 140) double width,
            @ForAll @DoubleRange(min = 0, max = 360) double middle) {
        double[] angles = new double[size];
        for (int i = 0; i < size; i++) {
            angles[i] = middle + width * (2.0 * i / (size - 1) - 1);
        }
        CircularSample sample = CircularSample.of(angles);
        double radius = sample.meanRadius95();
        double mean = sample.mean().orElse(middle);

        assertEquals(1, sample.probabilityOfMean(mean), 1e-3);
        if (radius < 90) {
            assertEquals(0.05, sample.probabilityOfMean(mean + radius), 1e-6);
            assertEquals(0.05, sample.probabilityOfMean(mean - radius), 1e-6);
        } else if (radius == 180) {
            assertTrue(sample.probabilityOfMean(mean + 89) > 0.05);
        }
    }
}
