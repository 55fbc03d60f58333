package io.github.kernlot.orientation.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.sphere.distribution.VonMisesDistribution;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongPredicate;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CircularTestsTest {

    private static final CircularSample ONE =
            CircularStatisticsTest.samples("zar_u2_a").get(0);
    private static final CircularSample OTHER =
            CircularStatisticsTest.samples("zar_u2_b").get(0);
    private static final CircularSample TURTLES =
            CircularStatisticsTest.samples("turtles_B3").get(0);

    private static CircularSample drawn(int size, double kappa, long seed) {
        return CircularSample.of(new VonMisesDistribution(300, kappa).draw(size, seed));
    }

    private static double share(int runs, LongPredicate event) {
        return LongStream.range(0, runs).filter(event).count() / (double) runs;
    }

    /** Zar's table has the probability between 0.1 and 0.2, from memory. */
    @Test
    void everyWayOfSharingOutIsTried() {
        TestOutcome watson = CircularTests.watsonTwoSamples(ONE, OTHER);
        assertEquals("all 352716 ways of sharing out", watson.distribution());
        assertTrue(watson.probability() > 0.1 && watson.probability() < 0.2);
        assertThrows(IllegalArgumentException.class, () -> CircularTests.watsonWheeler(List.of(ONE)));
    }

    /** Turning both samples, or naming them the other way round, changes nothing. */
    @Test
    void theOriginDoesNotCount() {
        CircularSample one = CircularSample.of(235, 245, 250, 285, 460);
        CircularSample other = CircularSample.of(275, 280, 330, 501);
        CircularSample oneBack = CircularSample.of(35, 45, 50, 85, 260);
        CircularSample otherBack = CircularSample.of(75, 80, 130, 301);
        TestOutcome turned = CircularTests.watsonTwoSamples(one, other);
        TestOutcome back = CircularTests.watsonTwoSamples(otherBack, oneBack);
        assertEquals(back.value(), turned.value(), 1e-12);
        assertEquals(back.probability(), turned.probability(), 1e-12);
        assertEquals(
                CircularTests.watsonWheeler(List.of(one, other)).value(),
                CircularTests.watsonWheeler(List.of(otherBack, oneBack)).value(),
                1e-12);
    }

    /** One sample twice is all ties, and nothing is nearer. */
    @Test
    void aSampleIsLikeItself() {
        CircularSample one = CircularSample.of(235, 245, 250, 285, 460);
        assertEquals(0, CircularTests.watsonTwoSamples(one, one).value(), 1e-15);
        assertEquals(1, CircularTests.watsonTwoSamples(one, one).probability());
        assertEquals(0, CircularTests.watsonWheeler(List.of(one, one)).value(), 1e-12);
    }

    /** The limit of pi^2 U2 is that of the square of Kolmogorov's statistic (Watson 1962, from memory), which Commons Math 3.6.1 sums. */
    @Test
    void largeSamplesHaveKolmogorovsDistribution() {
        for (int seed = 0; seed < 20; seed++) {
            TestOutcome outcome = CircularTests.watsonTwoSamples(drawn(30, 1, seed), drawn(40, 1.5, -1 - seed));
            assertEquals("large samples", outcome.distribution());
            double kolmogorov =
                    new KolmogorovSmirnovTest().ksSum(Math.PI * Math.sqrt(outcome.value()), 1e-15, 1_000_000);
            assertEquals(1 - kolmogorov, outcome.probability(), 1e-12);
        }
    }

    /**
     * By hand: the ranks are 1, 2 1/2 and 2 1/2, 4, the scores 90 and 225, 225 and 360 degrees, both sums of the squared length {@code 2 -
     * sqrt(2)}.
     */
    @Test
    void tiedAnglesShareTheirMeanRank() {
        TestOutcome outcome = CircularTests.watsonWheeler(List.of(CircularSample.of(0, 10), CircularSample.of(10, 20)));
        assertEquals(1.5 * (2 - Math.sqrt(2)), outcome.value(), 1e-12);
        assertEquals(Math.exp(-outcome.value() / 2), outcome.probability(), 1e-12);
    }

    /** Chi-square with 4 degrees of freedom has the tail {@code exp(-x / 2) (1 + x / 2)}. */
    @Test
    void threeSamplesHaveTwiceTwoDegreesOfFreedom() {
        TestOutcome outcome = CircularTests.watsonWheeler(List.of(drawn(12, 1, 1), drawn(15, 1, 2), drawn(20, 1, 3)));
        assertEquals("chi-square with 4 degrees of freedom", outcome.distribution());
        assertEquals(Math.exp(-outcome.value() / 2) * (1 + outcome.value() / 2), outcome.probability(), 1e-12);
    }

    /** Angles in two heaps: none of the drawn samples is so far off. */
    @Test
    void whatNoDrawnSampleReachesHasTheProbabilityOfOneMore() {
        CircularSample heaps = CircularSample.of(
                IntStream.range(0, 40).mapToDouble(i -> i + (i < 20 ? 0 : 130)).toArray());
        assertEquals(1 / 200.0, CircularTests.watsonVonMises(heaps, 199, 1).probability());
    }

    @Test
    void theLevelIsKept() {
        assertEquals(
                "large samples",
                CircularTests.watsonTwoSamples(drawn(30, 1, 1), drawn(30, 1, 2)).distribution());
        assertTrue(
                CircularTests.watsonTwoSamples(drawn(30, 9, 1), drawn(30, 0, 2)).refusedAt(0.001));
        double watson = share(
                4000,
                seed -> CircularTests.watsonTwoSamples(drawn(30, 1, seed), drawn(40, 1, -1 - seed))
                        .refusedAt(0.05));
        assertEquals(0.05, watson, 0.014);
        double wheeler = share(
                4000,
                seed -> CircularTests.watsonWheeler(
                                List.of(drawn(12, 1, seed), drawn(15, 1, -1 - seed), drawn(20, 1, 1_000_000 + seed)))
                        .refusedAt(0.05));
        assertEquals(0.05, wheeler, 0.014);
    }

    /** The R package circular 0.4-95 refuses at 5 %. */
    @Test
    void theTurtlesAreNotVonMises() {
        TestOutcome outcome = CircularTests.watsonVonMises(TURTLES, 199, 1);
        assertTrue(outcome.refusedAt(0.05));
        assertEquals(outcome, CircularTests.watsonVonMises(TURTLES, 199, 1));
    }

    /** The critical value of U2 at the level 0.05 is 0.079 near kappa 1 (Lockhart and Stephens 1985, by the R package circular 0.4-95). */
    @Test
    void drawnSamplesHaveTheCriticalValueOfTheTable() {
        double passed = share(
                2000,
                seed -> CircularTests.watsonVonMises(drawn(76, 1.15, seed), 1, 1)
                                .value()
                        > 0.079);
        assertEquals(0.05, passed, 0.02);
        assertFalse(CircularTests.watsonVonMises(drawn(40, 3, 5), 199, 2).refusedAt(0.01));
        String message = assertThrows(
                        IllegalArgumentException.class,
                        () -> CircularTests.watsonVonMises(CircularSample.of(5, 5), 9, 1))
                .getMessage();
        assertTrue(message.startsWith("all angles are the same"), message);
        assertThrows(IllegalArgumentException.class, () -> CircularTests.watsonVonMises(ONE, 0, 1));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 7, 30, 100, 101})
    void uniformAnglesPassTheRayleighTest(int size) {
        double[] found = LongStream.range(0, 1000)
                .mapToDouble(seed -> drawn(size, 0, seed).probabilityOfUniform())
                .toArray();
        for (double level : new double[] {0.05, 0.4}) {
            double share = Arrays.stream(found).filter(p -> p < level).count() / 1000.0;
            assertEquals(level, share, 4 * Math.sqrt(level * (1 - level) / 1000));
        }
    }

    /** From one number of angles to the next by the law of total probability; it begins with the closed form of two. */
    @ParameterizedTest
    @CsvSource({"3,0.7", "3,1.8", "4,1", "4,2", "4,3.3", "5,2.2", "6,4.9"})
    void oneMoreAngleIsAnAverage(int size, double length) {
        double sum = 0;
        int steps = 400;
        for (int i = 0; i < steps; i++) {
            sum += outside(size - 1, length, Math.PI * (i + 0.5) / steps);
        }
        assertEquals(sum / steps, UniformCircle.probabilityAbove(size, length), 3e-4);
    }

    /** P(|x + u| >= r) for a sum x of n angles and a unit vector u at an angle from it: x is shorter or longer than on the chord. */
    private static double outside(int n, double length, double away) {
        double cos = Math.cos(away);
        double square = length * length - 1 + cos * cos;
        if (square < 0) {
            return 1;
        }
        double high = -cos + Math.sqrt(square);
        double low = -cos - Math.sqrt(square);
        double beyond = high <= 0 ? 1 : UniformCircle.probabilityAbove(n, high);
        return low <= 0 ? beyond : beyond + 1 - UniformCircle.probabilityAbove(n, low);
    }

    @Test
    void spreadAtTheEndsOfWhatASampleCanBe() {
        assertEquals(0, CircularSample.of(20).range());
        assertEquals(100, CircularSample.of(100, 200, 150).range());
        assertEquals(40, CircularSample.of(10, 30, 350).range());
        assertEquals(0.0, CircularSample.of(0, 0).standardDeviation());
        assertEquals(1, CircularSample.of(20).probabilityOfUniform());
        assertEquals(0, CircularSample.of(0, 180).unbiasedConcentration());
        assertEquals(Double.POSITIVE_INFINITY, CircularSample.of(0, 180).dispersion());
        assertEquals(Double.POSITIVE_INFINITY, CircularSample.of(9, 9).unbiasedConcentration());
        assertEquals(0, CircularSample.of(10, 90, 170, 260).unbiasedConcentration());
        assertEquals(drawn(16, 3, 1).concentration(), drawn(16, 3, 1).unbiasedConcentration());
    }

    @Test
    void axesThatCancelOutHaveNoMean() {
        assertTrue(CircularSample.of(0, 90).meanAxis().isEmpty());
        assertThrows(IllegalArgumentException.class, () -> ONE.times(0));
    }
}
