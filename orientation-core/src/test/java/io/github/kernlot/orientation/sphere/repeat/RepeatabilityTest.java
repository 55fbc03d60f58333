package io.github.kernlot.orientation.sphere.repeat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CorePlane;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.inference.OneWayAnova;
import org.apache.commons.math3.stat.inference.TTest;
import org.junit.jupiter.api.Test;

class RepeatabilityTest {

    private static RepeatedReading reading(String structure, String reader, double alpha, double beta) {
        return new RepeatedReading(structure, reader, CorePlane.of(alpha, (beta + 720) % 360));
    }

    /** The residual variance follows from F of the one-way analysis and the variance between groups; the library is Commons Math 3.6.1. */
    @Test
    void alphaIsPooledAsInTheAnalysisOfVariance() {
        List<double[]> groups =
                List.of(new double[] {31, 33, 30, 34}, new double[] {55, 52, 57}, new double[] {71, 70, 74, 70, 72});
        double all = groups.stream().flatMapToDouble(Arrays::stream).average().orElseThrow();
        double between = 0;
        List<RepeatedReading> readings = new ArrayList<>();
        for (double[] group : groups) {
            between += group.length * Math.pow(Arrays.stream(group).average().orElseThrow() - all, 2);
            for (double alpha : group) {
                readings.add(reading("joint of " + group.length, "A", alpha, 10));
            }
        }
        double residual = between / 2 / new OneWayAnova().anovaFValue(groups);
        PooledSigma sigma = Repeatability.ofSameReader(readings).alpha().orElseThrow();

        assertEquals(residual, sigma.sigma() * sigma.sigma(), 1e-9);
        assertEquals(9, sigma.degreesOfFreedom());
        // chi-square with 9 degrees of freedom is 19.0228 at 97.5 % and 2.70039 at 2.5 %, from memory
        assertEquals(Math.sqrt(9 / 19.0228), sigma.low(0.95) / sigma.sigma(), 1e-5);
        assertEquals(Math.sqrt(9 / 2.70039), sigma.high(0.95) / sigma.sigma(), 1e-5);
    }

    /** Two readers on the same structures are compared as pairs; the library is Commons Math 3.6.1. */
    @Test
    void theBiasOfAlphaIsThatOfPairs() {
        double[] a = {31, 55, 71, 44, 62};
        double[] b = {29.5, 54, 69, 44.2, 60};
        List<RepeatedReading> readings = new ArrayList<>();
        for (int i = 0; i < a.length; i++) {
            readings.add(reading("joint " + i, "A", a[i], 350 + i));
            readings.add(reading("joint " + i, "B", b[i], 350 - i));
        }
        readings.add(reading("seen by one", "A", 3, 3));
        ReaderBias bias =
                Repeatability.ofSameReader(readings).alphaBias("A", "B").orElseThrow();

        assertEquals(6.3 / 5, bias.difference(), 1e-12);
        assertEquals(new TTest().pairedTTest(a, b), bias.probabilityOfNone(), 1e-9);
        assertEquals(5, bias.structures());
        assertTrue(
                bias.toString().startsWith("1.3 (0.1 to 2.4 with 95 %) from 5 structures, p = 0.0"), bias.toString());
        assertTrue(Repeatability.ofSameReader(readings).alpha().isEmpty());
        assertEquals(
                5, Repeatability.ofAllReaders(readings).alpha().orElseThrow().degreesOfFreedom());
    }

    /** Across north, and by the weights 1/4 (cos^2 60) and 1 (cos^2 0) of the sums of squares 2 and 8. */
    @Test
    void betaIsRoundAndCountsByItsEffectOnThePole() {
        List<RepeatedReading> readings = List.of(
                reading("one", "A", 60, 359),
                reading("one", "A", 60, 1),
                reading("two", "A", 0, 102),
                reading("two", "A", 0, 98),
                reading("across the core", "A", 90, 0),
                reading("across the core", "A", 90, 0));
        Repeatability repeatability = Repeatability.ofSameReader(readings);
        PooledSigma beta = repeatability.beta().orElseThrow();

        assertEquals(Math.sqrt((0.25 * 2 + 8) / 1.25), beta.sigma(), 1e-12);
        assertEquals(1.25 * 1.25 / (0.0625 + 1), beta.degreesOfFreedom(), 1e-12);
        assertEquals(0, repeatability.alpha().orElseThrow().sigma());
        assertTrue(repeatability
                .toString()
                .startsWith("alpha 0.0 (0.0 to 0.0 with 95 %), 3.0 degrees of freedom; beta 2.6"));
    }

    /** A reader who takes the other end of the ellipse is half a turn off, not 180 and -180 in turn. */
    @Test
    void aBiasOfHalfATurnIsSeen() {
        List<RepeatedReading> readings = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            readings.add(reading("joint " + i, "A", 40, 60 * i));
            readings.add(reading("joint " + i, "B", 40, 60 * i + 180 + (i % 2 == 0 ? 2 : -2)));
        }
        Repeatability all = Repeatability.ofAllReaders(readings);
        ReaderBias bias = all.betaBias("A", "B").orElseThrow();
        assertEquals(180, Math.abs(bias.difference()), 1e-9);
        assertEquals(2 / Math.sqrt(5), bias.standardError(), 1e-9);
        assertTrue(bias.probabilityOfNone() < 1e-9);
        assertTrue(all.betaBias("A", "C").isEmpty());
    }

    /** By hand: 350, 352 and 0 lie 4, 2 and 6 from their mean 354; the sum of squares is 56 with 2 degrees of freedom. */
    @Test
    void betaThatIsReadUnevenlyScattersAboutItsMean() {
        Repeatability three = Repeatability.ofSameReader(
                List.of(reading("joint", "A", 40, 350), reading("joint", "A", 40, 352), reading("joint", "A", 40, 0)));
        assertEquals(Math.sqrt(28), three.beta().orElseThrow().sigma(), 1e-12);
    }

    /** By hand: differences 4 and 8 with weights 1/4 (cos^2 60) and 3/4 (cos^2 30); what was read across the core has no beta. */
    @Test
    void theBiasOfBetaCountsByTheMeanAlphaOfBothReaders() {
        Repeatability all = Repeatability.ofAllReaders(List.of(
                reading("one", "A", 62, 2),
                reading("one", "B", 58, 358),
                reading("two", "A", 29, 108),
                reading("two", "B", 31, 100),
                reading("across the core", "A", 90, 0),
                reading("across the core", "B", 90, 0)));
        ReaderBias bias = all.betaBias("A", "B").orElseThrow();
        assertEquals(7, bias.difference(), 1e-12);
        assertEquals(Math.sqrt(0.25 * 9 + 0.75 * 1), bias.standardError(), 1e-12);
        assertEquals(2, bias.structures());
    }

    @Test
    void aBiasOfAQuarterTurnIsSeenAndOneThatCancelsOutIsNot() {
        List<RepeatedReading> quarter = List.of(
                reading("one", "A", 40, 95), reading("one", "B", 40, 10),
                reading("two", "A", 40, 115), reading("two", "B", 40, 20));
        ReaderBias bias = Repeatability.ofAllReaders(quarter).betaBias("A", "B").orElseThrow();
        assertEquals(90, bias.difference(), 1e-9);
        assertEquals(5, bias.standardError(), 1e-9);
        List<RepeatedReading> opposite = List.of(
                reading("one", "A", 40, 10), reading("one", "B", 40, 10),
                reading("two", "A", 40, 200), reading("two", "B", 40, 20));
        assertTrue(Repeatability.ofAllReaders(opposite).betaBias("A", "B").isEmpty());
        assertTrue(Repeatability.ofAllReaders(quarter.subList(0, 2))
                .betaBias("A", "B")
                .isEmpty());
    }

    @Test
    void nothingReadTwiceSaysNothing() {
        Repeatability none = Repeatability.ofAllReaders(List.of());
        assertTrue(none.beta().isEmpty());
        assertEquals("alpha read once; beta read once", none.toString());
        assertEquals(1, new ReaderBias(0, 0, 3).probabilityOfNone());
        assertEquals(0, new ReaderBias(1, 0, 3).probabilityOfNone());
    }

    /** Simulated readers: the interval holds the true sigma 95 times of 100, and order does not count. */
    @Test
    void theIntervalsHoldTheTrueSigmas() {
        int alphas = 0;
        int betas = 0;
        int runs = 2000;
        for (int run = 0; run < runs; run++) {
            Random random = new Random(run);
            List<RepeatedReading> readings = new ArrayList<>();
            for (int structure = 0; structure < 12; structure++) {
                double alpha = 15 + 60 * random.nextDouble();
                double beta = 360 * random.nextDouble();
                for (int i = 0; i < 2 + structure % 2; i++) {
                    readings.add(reading(
                            "joint " + structure,
                            "A",
                            alpha + 2 * random.nextGaussian(),
                            beta + 5 * random.nextGaussian()));
                }
            }
            Repeatability found = Repeatability.ofSameReader(readings);
            alphas += holds(found.alpha().orElseThrow(), 2) ? 1 : 0;
            betas += holds(found.beta().orElseThrow(), 5) ? 1 : 0;
            Collections.shuffle(readings, random);
            assertEquals(
                    found.beta().orElseThrow().sigma(),
                    Repeatability.ofSameReader(readings).beta().orElseThrow().sigma(),
                    1e-9);
        }
        assertEquals(0.95, alphas / (double) runs, 0.02);
        assertEquals(0.95, betas / (double) runs, 0.02);
    }

    private static boolean holds(PooledSigma sigma, double value) {
        return sigma.low(0.95) <= value && value <= sigma.high(0.95);
    }

    @Test
    void refusesWhatIsNoReading() {
        assertThrows(IllegalArgumentException.class, () -> reading(" ", "A", 3, 3));
        assertThrows(IllegalArgumentException.class, () -> reading("joint", "", 3, 3));
        assertThrows(IllegalArgumentException.class, () -> new PooledSigma(-1, 3));
        assertThrows(IllegalArgumentException.class, () -> new PooledSigma(1, 0));
        assertThrows(IllegalArgumentException.class, () -> new PooledSigma(1, 3).low(1));
        assertThrows(IllegalArgumentException.class, () -> new ReaderBias(1, 1, 1));
        assertEquals(
                "joint by A: alpha 41.0, beta 213.0",
                reading("joint", "A", 41, 213).toString());
    }
}
