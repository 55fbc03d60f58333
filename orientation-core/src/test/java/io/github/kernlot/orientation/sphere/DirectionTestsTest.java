package io.github.kernlot.orientation.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.sphere.distribution.FisherDistribution;
import io.github.kernlot.orientation.sphere.distribution.KentDistribution;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongPredicate;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DirectionTestsTest {

    private static final DirectedLine MEAN = DirectedLine.ofPlungeAndTrend(35, 200);
    private static final LineOrientation ALONG = LineOrientation.ofPlungeAndTrend(0, 110);

    private static DirectionSample fisher(int size, double kappa, long seed) {
        return DirectionSample.of(FisherDistribution.of(MEAN, kappa).draw(size, seed));
    }

    private static void often(double share, double off, int runs, LongPredicate event) {
        double found = LongStream.range(0, runs).filter(event).count() / (double) runs;
        assertEquals(share, found, off + 4 * Math.sqrt(share * (1 - share) / runs));
    }

    /** The modified statistics and their critical values are those of Fisher, Lewis and Embleton 1987, for an estimated mean, from memory. */
    @ParameterizedTest
    @CsvSource({"0.05,1.094,1.207", "0.01,1.308,1.347"})
    void drawnSamplesHaveTheCriticalValuesOfTheBook(double level, double colatitudes, double longitudes) {
        int n = 40;
        double root = Math.sqrt(n);
        often(level, level / 5, 3000, seed -> {
            double d =
                    DirectionTests.fisherColatitudes(fisher(n, 20, seed), 1, 1).value();
            return (d - 0.2 / n) * (root + 0.26 + 0.5 / root) > colatitudes;
        });
        often(level, level / 5, 3000, seed -> {
            double v =
                    DirectionTests.symmetryOfBearings(fisher(n, 20, seed), 1, 1).value();
            return v * (root - 0.567 + 1.623 / root) > longitudes;
        });
    }

    @ParameterizedTest
    @CsvSource({"6,30", "20,2"})
    void theLevelIsKept(int size, double kappa) {
        for (double level : new double[] {0.05, 0.3}) {
            often(
                    level,
                    0.01,
                    800,
                    seed -> DirectionTests.fisherColatitudes(fisher(size, kappa, seed), 99, seed)
                            .refusedAt(level + 1e-9));
            often(
                    level,
                    0.01,
                    800,
                    seed -> DirectionTests.symmetryOfBearings(fisher(size, kappa, seed), 99, seed)
                            .refusedAt(level + 1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"9,30,0.04", "25,2,0.05", "100,30,0.05"})
    void theLevelOfElongationIsKept(int size, double kappa, double share) {
        often(
                share,
                0.003,
                4000,
                seed -> DirectionTests.elongation(fisher(size, kappa, seed)).refusedAt(0.05));
    }

    /** Kent 1982: {@code n (k / 2)^2 I1/2(k) / I5/2(k) w^2}; the ratio of these Bessel functions is {@code 1 - 3 coth(k) / k + 3 / k^2}. */
    @ParameterizedTest
    @CsvSource({"3,1", "20,2", "400,3"})
    void elongationIsKentsTestWithItsOwnFourthMoment(double kappa, long seed) {
        DirectionSample sample = fisher(40_000, kappa, seed);
        TangentScatter across =
                TangentScatter.of(sample.units(), Unit.of(sample.mean().orElseThrow()));
        double w = across.longVariance() - across.shortVariance();
        double k = sample.concentration();
        double ratio = 1 - 3 / (k * Math.tanh(k)) + 3 / (k * k);
        double kent = sample.size() * k * k / 4 / ratio * w * w;
        assertEquals(kent, DirectionTests.elongation(sample).value(), 0.03 * kent);
    }

    @Test
    void anOvalSampleIsElongated() {
        DirectionSample oval = DirectionSample.of(new KentDistribution(MEAN, ALONG, 60, 20).draw(60, 1));
        assertTrue(DirectionTests.elongation(oval).refusedAt(0.001));
        assertTrue(DirectionTests.elongation(fisher(60, 60, 1)).probability() > 0.05);
    }

    /** A tenth of the sample is scattered far wider than the rest. */
    @Test
    void aSampleOfTwoConcentrationsIsNotFishers() {
        List<DirectedLine> both =
                new ArrayList<>(FisherDistribution.of(MEAN, 500).draw(90, 1));
        both.addAll(FisherDistribution.of(MEAN, 10).draw(10, 2));
        TestOutcome outcome = DirectionTests.fisherColatitudes(DirectionSample.of(both), 199, 3);
        assertEquals(1 / 200.0, outcome.probability());
        assertEquals("199 drawn samples", outcome.distribution());
        assertEquals(outcome, DirectionTests.fisherColatitudes(DirectionSample.of(both), 199, 3));
        assertFalse(DirectionTests.fisherColatitudes(fisher(100, 40, 5), 199, 3).refusedAt(0.05));
    }

    /** Three spokes, which an ellipse knows nothing of. */
    @Test
    void threeLobesAreNotEven() {
        DirectionSample spokes = DirectionSample.ofVectors(IntStream.range(0, 45)
                .mapToObj(i -> new double[] {
                    0.01 * (i / 3 + 1) * Math.cos(2 * Math.PI * i / 3),
                    0.01 * (i / 3 + 1) * Math.sin(2 * Math.PI * i / 3),
                    1
                })
                .toArray(double[][]::new));
        assertTrue(DirectionTests.symmetryOfBearings(spokes, 199, 1).refusedAt(0.01));
        assertEquals(1, DirectionTests.elongation(spokes).probability(), 1e-9);
        assertFalse(DirectionTests.symmetryOfBearings(fisher(45, 9, 2), 199, 1).refusedAt(0.05));
    }

    @Test
    void refusesWhatHasNoScatterOrNoMean() {
        DirectionSample same = DirectionSample.of(List.of(MEAN, MEAN));
        DirectionSample opposite = DirectionSample.ofVectors(new double[] {0, 0, 1}, new double[] {0, 0, -1});
        for (DirectionSample sample : List.of(same, opposite)) {
            assertThrows(IllegalArgumentException.class, () -> DirectionTests.elongation(sample));
            assertThrows(IllegalArgumentException.class, () -> DirectionTests.fisherColatitudes(sample, 9, 1));
            assertThrows(IllegalArgumentException.class, () -> DirectionTests.symmetryOfBearings(sample, 9, 1));
        }
        DirectionSample good = fisher(9, 9, 9);
        assertThrows(IllegalArgumentException.class, () -> DirectionTests.fisherColatitudes(good, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> DirectionTests.symmetryOfBearings(good, 0, 1));
    }
}
