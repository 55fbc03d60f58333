package io.github.kernlot.orientation.sphere.distribution;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.apache.commons.math3.distribution.UniformRealDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawn samples against distribution functions and moments that are worked out another way; the test is of Commons Math 3.6.1. */
class DrawsTest {

    private static final int MANY = 20_000;
    private static final DirectedLine MEAN = DirectedLine.ofPlungeAndTrend(-20, 310);
    private static final LineOrientation ALONG = LineOrientation.ofPlungeAndTrend(0, 40);
    private static final LineOrientation AXIS = LineOrientation.ofPlungeAndTrend(20, 130);

    private static void assertUniform(double[] shares) {
        double p = new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new UniformRealDistribution(0, 1), shares);
        assertTrue(p > 0.001, "p " + p);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.05, 0.7, 5, 300, 1e6, 1e10})
    void vonMisesHasItsDistributionFunction(double kappa) {
        VonMisesDistribution distribution = new VonMisesDistribution(350, kappa);
        double[] drawn = distribution.draw(MANY, 3);
        assertUniform(Arrays.stream(drawn)
                .map(angle -> distribution.probabilityBelow((angle - 350 + 180 + 720) % 360))
                .toArray());
        assertArrayEquals(drawn, distribution.draw(MANY, 3));
        assertNotEquals(drawn[0], distribution.draw(1, 4)[0]);
    }

    /** The JDK's own generators: the same distribution, a new sample at each call. */
    @ParameterizedTest
    @ValueSource(strings = {"L64X128MixRandom", "Xoshiro256PlusPlus", "SplittableRandom", "Random"})
    void aCallersGeneratorDrawsFromTheSameDistribution(String algorithm) {
        RandomGenerator random = RandomGeneratorFactory.of(algorithm).create(12);
        VonMisesDistribution circle = new VonMisesDistribution(0, 3);
        double[] angles = circle.draw(MANY, random);
        assertUniform(Arrays.stream(angles)
                .map(angle -> circle.probabilityBelow((angle + 180) % 360))
                .toArray());
        assertNotEquals(angles[0], circle.draw(1, random)[0]);

        FisherDistribution fisher = FisherDistribution.of(MEAN, 8);
        assertUniform(fisher.draw(MANY, random).stream()
                .mapToDouble(direction -> fisher.probabilityWithin(direction.angleTo(MEAN)))
                .toArray());

        // of one concentration on all sides Kent's is Fisher's
        assertUniform(new KentDistribution(MEAN, ALONG, 8, 0)
                .draw(MANY, random).stream()
                        .mapToDouble(direction -> fisher.probabilityWithin(direction.angleTo(MEAN)))
                        .toArray());

        // the even girdle's bearings are even, and so are its poles' where nothing is concentrated
        assertUniform(new BinghamDistribution(AXIS, ALONG, 0, 0)
                .draw(MANY, random).stream()
                        .mapToDouble(axis -> Math.abs(Frame.vector(axis).dot(Frame.vector(AXIS))))
                        .toArray());
        assertUniform(new WatsonDistribution(LineOrientation.ofPlungeAndTrend(90, 0), -40)
                .draw(MANY, random).stream()
                        .mapToDouble(axis -> axis.trend() % 180 / 180)
                        .toArray());
    }

    /** At kappa 0 the distribution function is a line, and its slope is the density. */
    @Test
    void theDistributionFunctionIsTheIntegralOfTheDensity() {
        VonMisesDistribution even = new VonMisesDistribution(0, 0);
        assertEquals(0.25, even.probabilityBelow(90), 1e-14);
        VonMisesDistribution peaked = new VonMisesDistribution(200, 11);
        double slope = (peaked.probabilityBelow(200.001) - peaked.probabilityBelow(199.999)) / Math.toRadians(0.002);
        assertEquals(peaked.density(220), slope, 1e-6);
        assertEquals(0.5, peaked.probabilityBelow(180), 1e-15);
        assertEquals(1, new VonMisesDistribution(0, 1e8).probabilityBelow(360), 1e-12);
        assertEquals(0, new VonMisesDistribution(0, 1e8).probabilityBelow(0), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-5, 0.7, 5, 300, 1e9})
    void fisherHasItsDistributionFunction(double kappa) {
        FisherDistribution fisher = FisherDistribution.of(MEAN, kappa);
        List<DirectedLine> drawn = fisher.draw(MANY, 5);
        assertUniform(drawn.stream()
                .mapToDouble(direction -> fisher.probabilityWithin(direction.angleTo(MEAN)))
                .toArray());
        Frame frame = Frame.about(Frame.vector(MEAN));
        assertUniform(drawn.stream()
                .map(Frame::vector)
                .mapToDouble(v -> Math.atan2(v.dot(frame.second()), v.dot(frame.third())) / (2 * Math.PI) + 0.5)
                .toArray());
        assertEquals(drawn, fisher.draw(MANY, 5));
    }

    /** Mean and variance of what was drawn against those of the family, which numerical integration has confirmed. */
    @ParameterizedTest
    @CsvSource({"0,0", "1,0.5", "10,0", "10,4.9", "400,150", "1e6,4e5"})
    void kentHasItsMoments(double kappa, double beta) {
        KentDistribution kent = new KentDistribution(MEAN, ALONG, kappa, beta);
        Frame frame = Frame.of(Frame.vector(MEAN), Frame.vector(ALONG));
        ExponentialFamily.Point point = KentDistribution.point(kappa, beta);
        List<Vector> drawn = kent.draw(MANY, 7).stream().map(Frame::vector).toList();
        double[] s = drawn.stream()
                .map(v -> v.minus(frame.first()))
                .mapToDouble(apart -> -apart.dot(apart) / 2)
                .toArray();
        double[] t = drawn.stream()
                .mapToDouble(v -> Math.pow(v.dot(frame.second()), 2) - Math.pow(v.dot(frame.third()), 2))
                .toArray();
        near(point.s(), point.ss(), s);
        near(point.t(), point.tt(), t);
        double[] across = drawn.stream().mapToDouble(v -> v.dot(frame.second())).toArray();
        near(0, Arrays.stream(across).map(y -> y * y).average().orElseThrow(), across);
    }

    @ParameterizedTest
    @CsvSource({"0,0", "0,3", "1,1", "2,9", "0,1e4", "300,300", "20,4e5"})
    void binghamHasItsMoments(double a, double b) {
        BinghamDistribution bingham = new BinghamDistribution(AXIS, ALONG, a, b);
        Frame frame = Frame.of(Frame.vector(AXIS), Frame.vector(ALONG));
        ExponentialFamily.Point point = BinghamDistribution.point(a, b);
        List<Vector> drawn = bingham.draw(MANY, 11).stream().map(Frame::vector).toList();
        near(
                point.s(),
                point.ss(),
                drawn.stream()
                        .mapToDouble(v -> -Math.pow(v.dot(frame.second()), 2))
                        .toArray());
        near(
                point.t(),
                point.tt(),
                drawn.stream()
                        .mapToDouble(v -> -Math.pow(v.dot(frame.third()), 2))
                        .toArray());
    }

    private static void near(double mean, double variance, double[] drawn) {
        double found = Arrays.stream(drawn).average().orElseThrow();
        assertEquals(0, (found - mean) / Math.sqrt(variance / drawn.length), 4);
    }

    @Test
    void watsonIsDrawnAboutItsAxisAndAlongItsGirdle() {
        WatsonDistribution cluster = new WatsonDistribution(AXIS, 200);
        assertTrue(cluster.draw(200, 1).stream().allMatch(axis -> axis.angleTo(AXIS) < 20));
        WatsonDistribution girdle = new WatsonDistribution(AXIS, -200);
        assertTrue(girdle.draw(200, 1).stream().allMatch(axis -> axis.angleTo(AXIS) > 70));
        assertTrue(cluster.density(AXIS) > girdle.density(AXIS));
    }
}
