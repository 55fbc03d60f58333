package io.github.kernlot.orientation.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.sphere.distribution.BinghamDistribution;
import io.github.kernlot.orientation.sphere.distribution.FisherDistribution;
import io.github.kernlot.orientation.sphere.distribution.KentDistribution;
import java.util.List;
import java.util.Random;
import java.util.function.LongPredicate;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How often what is said to happen in 95 of 100 samples, or in 5, does: Monte Carlo with fixed seeds, within four standard errors. */
class SphereCoverageTest {

    private static final DirectedLine MEAN = DirectedLine.ofPlungeAndTrend(-10, 333);
    private static final LineOrientation ALONG = LineOrientation.ofPlungeAndTrend(0, 63);
    private static final LineOrientation AXIS = LineOrientation.ofPlungeAndTrend(10, 153);
    private static final int RUNS = 4000;

    /** What is expected, give or take what the approximation may be off and four standard errors of the count. */
    private static void often(double share, double off, LongPredicate event) {
        double found = LongStream.range(0, RUNS).filter(event).count() / (double) RUNS;
        assertEquals(share, found, off + 4 * Math.sqrt(share * (1 - share) / RUNS));
    }

    private static DirectionSample fisher(int size, double kappa, long seed) {
        return DirectionSample.of(FisherDistribution.of(MEAN, kappa).draw(size, seed));
    }

    private static boolean inCone(DirectionSample sample, double radius) {
        return sample.mean().orElseThrow().angleTo(MEAN) <= radius;
    }

    @ParameterizedTest
    @CsvSource({"2,30,0.0", "5,3,0.005", "5,50,0", "10,3,0.005", "40,3,0.005", "9,400,0"})
    void fishersConeHoldsTheTrueMean(int size, double kappa, double off) {
        often(0.95, off, seed -> {
            DirectionSample sample = fisher(size, kappa, seed);
            return inCone(sample, sample.meanCone95());
        });
    }

    /** Why kappa is to be 3 or more: the documentation has this number. */
    @Test
    void fishersConeOfWideScatterIsTooNarrow() {
        often(0.89, 0, seed -> {
            DirectionSample sample = fisher(10, 1, seed);
            return inCone(sample, sample.meanCone95());
        });
    }

    @ParameterizedTest
    @CsvSource({"25,1,0.01", "25,20,0.02", "100,5,0.01"})
    void theConeOfLargeSamplesHoldsTheTrueMean(int size, double kappa, double off) {
        often(0.95, off, seed -> {
            DirectionSample sample = fisher(size, kappa, seed);
            return inCone(sample, sample.meanConeOfLargeSample(0.95));
        });
    }

    @ParameterizedTest
    @CsvSource({"25,40,15,0.02", "100,40,15,0.01", "100,6,2.5,0.01"})
    void kentsEllipseHoldsTheTrueMean(int size, double kappa, double beta, double off) {
        KentDistribution kent = new KentDistribution(MEAN, ALONG, kappa, beta);
        often(
                0.95,
                off,
                seed -> DirectionSample.of(kent.draw(size, seed))
                        .meanEllipse(0.95)
                        .orElseThrow()
                        .holds(AXIS));
    }

    @ParameterizedTest
    @CsvSource({"8,10,60,0.02", "25,10,60,0.01", "100,3,60,0.01"})
    void theEllipseOfTheMeanAxisHoldsTheTrueOne(int size, double a, double b, double off) {
        BinghamDistribution bingham = new BinghamDistribution(AXIS, ALONG, a, b);
        often(
                0.95,
                off,
                seed -> AxisSample.of(bingham.draw(size, seed))
                        .meanEllipse(0.95)
                        .orElseThrow()
                        .holds(AXIS));
    }

    /** Few axes that are half a cluster: the share is what was found, and stands in the documentation. */
    @ParameterizedTest
    @CsvSource({
        "8,10,60,0.87,0",
        "25,10,60,0.92,0",
        "25,0.5,30,0.945,0.01",
        "100,3,60,0.945,0.01",
        "100,0.5,30,0.945,0.01"
    })
    void theEllipseOfTheFoldAxisHoldsTheTrueOne(int size, double a, double b, double share, double off) {
        BinghamDistribution bingham = new BinghamDistribution(AXIS, ALONG, a, b);
        LineOrientation fold = LineOrientation.ofPlungeAndTrend(80, 333);
        often(
                share,
                off,
                seed -> AxisSample.of(bingham.draw(size, seed))
                        .foldAxisEllipse(0.95)
                        .orElseThrow()
                        .holds(fold));
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 12, 60})
    void uniformDirectionsPassTheRayleighTest(int size) {
        for (double level : new double[] {0.05, 0.3}) {
            often(level, 0, seed -> fisher(size, 0, seed).probabilityOfUniform() < level);
        }
    }

    @ParameterizedTest
    @CsvSource({"5,0.02", "10,0.015", "50,0.005"})
    void uniformAxesPassBinghamsTest(int size, double off) {
        for (double level : new double[] {0.05, 0.3}) {
            often(level, off, seed -> fisher(size, 0, seed).axes().probabilityOfUniform() < level);
        }
    }

    @ParameterizedTest
    @CsvSource({"4,30", "10,5", "40,30"})
    void fishersSamplesHaveNoMoreOutliersThanTheLevel(int size, double kappa) {
        often(
                0.05,
                0.004,
                seed -> fisher(size, kappa, seed).outlier().orElseThrow().probability() < 0.05);
    }

    private static List<DirectionSample> three(long seed, int size, double... kappas) {
        return IntStream.range(0, kappas.length)
                .mapToObj(i -> fisher(size + i, kappas[i], 3 * seed + i + 1_000_000))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"3,40", "6,4", "30,10"})
    void samplesOfOneMeanPassWatsonAndWilliams(int size, double kappa) {
        often(
                0.05,
                0.005,
                seed -> EqualMeans.watsonWilliams(three(seed, size, kappa, kappa, kappa))
                        .refusedAt(0.05));
    }

    /** The shares are what was found, and stand in the documentation. */
    @ParameterizedTest
    @CsvSource({"10,0.080", "25,0.066", "80,0.055"})
    void samplesOfOneMeanPassWatsonsTest(int size, double share) {
        often(
                share,
                0,
                seed -> EqualMeans.watsonUnequalConcentrations(three(seed, size, 10, 50, 200))
                        .refusedAt(0.05));
    }

    /** The shares are what was found, and stand in the documentation. */
    @ParameterizedTest
    @CsvSource({"4,0.10,0.10", "5,0.077,0.069", "7,0.06,0.06", "10,0.05,0.05", "25,0.045,0.05", "80,0.05,0.05"})
    void samplesOfOneMeanPassTheTestOfAnyScatter(int size, double directions, double axes) {
        often(
                directions,
                0,
                seed -> EqualMeans.ofAnyScatter(three(seed, size, 4, 50, 200)).refusedAt(0.05));
        often(
                axes,
                0,
                seed -> EqualMeans.ofAxes(three(seed, size, 10, 50, 200).stream()
                                .map(DirectionSample::axes)
                                .toList())
                        .refusedAt(0.05));
    }

    /** Two samples, each of offsets that trail off to one side along both axes. */
    @ParameterizedTest
    @CsvSource({"7,0.034", "25,0.043"})
    void lopsidedSamplesOfOneMeanPassTheTestOfAnyScatter(int size, double share) {
        often(share, 0.01, seed -> {
            Random random = new Random(seed);
            return EqualMeans.ofAnyScatter(List.of(lopsided(size, random), lopsided(size, random)))
                    .refusedAt(0.05);
        });
    }

    private static DirectionSample lopsided(int size, Random random) {
        return DirectionSample.ofVectors(IntStream.range(0, size)
                .mapToObj(i -> new double[] {
                    -0.14 * (1 + Math.log(1 - random.nextDouble())), -0.14 * (1 + Math.log(1 - random.nextDouble())), 1
                })
                .toArray(double[][]::new));
    }

    @Test
    void wideScatterIsRefusedTooSeldom() {
        often(
                0.024,
                0,
                seed -> EqualMeans.ofAnyScatter(three(seed, 10, 1.5, 1.5, 1.5)).refusedAt(0.05));
    }
}
