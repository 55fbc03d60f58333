package io.github.kernlot.orientation.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.internal.Eigen;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.orientation.sphere.distribution.FisherDistribution;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.FDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.correlation.Covariance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EqualMeansTest {

    private static final DirectedLine DOWN = DirectedLine.ofPlungeAndTrend(90, 0);

    private static DirectionSample directions(double... plungeAndAzimuth) {
        return DirectionSample.of(IntStream.range(0, plungeAndAzimuth.length / 2)
                .mapToObj(i -> DirectedLine.ofPlungeAndTrend(plungeAndAzimuth[2 * i], plungeAndAzimuth[2 * i + 1]))
                .toList());
    }

    @Test
    void meansAreToldApart() {
        DirectionSample a = DirectionSample.of(FisherDistribution.of(DOWN, 60).draw(40, 1));
        DirectionSample b = DirectionSample.of(FisherDistribution.of(DirectedLine.ofPlungeAndTrend(75, 200), 60)
                .draw(40, 2));
        DirectionSample c = DirectionSample.of(FisherDistribution.of(DOWN, 60).draw(40, 3));
        for (List<DirectionSample> samples : List.of(List.of(a, b), List.of(a, b, c))) {
            assertTrue(EqualMeans.watsonWilliams(samples).refusedAt(0.001));
            assertTrue(EqualMeans.watsonUnequalConcentrations(samples).refusedAt(0.001));
            assertTrue(EqualMeans.ofAnyScatter(samples).refusedAt(0.001));
            assertTrue(EqualMeans.ofAxes(
                            samples.stream().map(DirectionSample::axes).toList())
                    .refusedAt(0.001));
        }
        assertFalse(EqualMeans.watsonWilliams(List.of(a, c)).refusedAt(0.01));
        assertTrue(EqualMeans.ofAnyScatter(List.of(a, c)).toString().contains("F with 2 and "));
        DirectionSample sharp = directions(0, 0, 0, 0);
        assertEquals(1, EqualMeans.watsonWilliams(List.of(sharp, sharp)).probability());
        assertEquals(
                0,
                EqualMeans.watsonWilliams(List.of(sharp, directions(3, 3, 3, 3)))
                        .probability());
        assertThrows(
                IllegalArgumentException.class,
                () -> EqualMeans.watsonWilliams(List.of(directions(0, 0), directions(0, 1))));
        assertThrows(IllegalArgumentException.class, () -> EqualMeans.watsonUnequalConcentrations(List.of(a, sharp)));
        String message = assertThrows(IllegalArgumentException.class, () -> EqualMeans.ofAnyScatter(List.of(a, sharp)))
                .getMessage();
        assertTrue(message.contains("does not scatter on two sides"), message);
        assertThrows(IllegalArgumentException.class, () -> EqualMeans.ofAxes(List.of(sharp.axes(), a.axes())));
    }

    /** Chi-square with 4 degrees of freedom has the tail {@code exp(-x / 2) (1 + x / 2)}; F is that of Commons Math 3.6.1. */
    @Test
    void threeSamplesHaveTwiceTwoDegreesOfFreedom() {
        List<DirectionSample> samples = List.of(
                DirectionSample.of(FisherDistribution.of(DOWN, 60).draw(10, 1)),
                DirectionSample.of(FisherDistribution.of(DOWN, 60).draw(15, 2)),
                DirectionSample.of(FisherDistribution.of(DOWN, 60).draw(20, 3)));
        double lengths =
                samples.stream().mapToDouble(DirectionSample::resultant).sum();
        double all = DirectionSample.of(
                        samples.stream().flatMap(s -> s.directions().stream()).toList())
                .resultant();
        TestOutcome williams = EqualMeans.watsonWilliams(samples);
        assertEquals(42 * (lengths - all) / (2 * (45 - lengths)), williams.value(), 1e-9);
        assertEquals("F with 4 and 84 degrees of freedom", williams.distribution());
        assertEquals(
                1 - new FDistribution(null, 4, 84).cumulativeProbability(williams.value()),
                williams.probability(),
                1e-9);
        TestOutcome unequal = EqualMeans.watsonUnequalConcentrations(samples);
        assertEquals("chi-square with 4 degrees of freedom", unequal.distribution());
        assertEquals(Math.exp(-unequal.value() / 2) * (1 + unequal.value() / 2), unequal.probability(), 1e-12);
        TestOutcome any = EqualMeans.ofAnyScatter(samples);
        assertTrue(any.distribution().startsWith("F with 4 and "), any.distribution());
    }

    @Test
    void oneSampleIsRefusedByAll() {
        DirectionSample one = DirectionSample.of(FisherDistribution.of(DOWN, 60).draw(40, 1));
        for (Executable test : List.<Executable>of(
                () -> EqualMeans.watsonWilliams(List.of(one)),
                () -> EqualMeans.watsonUnequalConcentrations(List.of(one)),
                () -> EqualMeans.ofAnyScatter(List.of(one)),
                () -> EqualMeans.ofAxes(List.of(one.axes())))) {
            String message = assertThrows(IllegalArgumentException.class, test).getMessage();
            assertTrue(message.startsWith("number of samples is 1"), message);
        }
    }

    /** Beside a sample that is known all but exactly there is one mean to test: Hotelling's T squared, from its definition in the plane. */
    @ParameterizedTest
    @ValueSource(ints = {7, 12, 30})
    void besideASharpSampleItIsHotellings(int size) {
        Random random = new Random(size);
        double scale = 1e-3;
        double[][] plane = new double[size][];
        for (int i = 0; i < size; i++) {
            double common = random.nextGaussian();
            plane[i] = new double[] {scale * (0.6 + common), scale * (random.nextGaussian() + 0.5 * common - 0.4)};
        }
        DirectionSample scattered = DirectionSample.ofVectors(
                Arrays.stream(plane).map(xy -> new double[] {xy[0], xy[1], 1}).toArray(double[][]::new));
        DirectionSample sharp = DirectionSample.ofVectors(IntStream.range(0, 3000)
                .mapToObj(i -> new double[] {1e-5 * Math.cos(i), 1e-5 * Math.sin(i), 1})
                .toArray(double[][]::new));

        RealMatrix covariance = new Covariance(plane).getCovarianceMatrix().scalarMultiply(1.0 / size);
        double[] mean = {
            Arrays.stream(plane).mapToDouble(xy -> xy[0]).average().orElseThrow(),
            Arrays.stream(plane).mapToDouble(xy -> xy[1]).average().orElseThrow()
        };
        RealMatrix row = new Array2DRowRealMatrix(new double[][] {mean});
        double square = row.multiply(MatrixUtils.inverse(covariance))
                .multiply(row.transpose())
                .getEntry(0, 0);
        double exact = 1
                - new FDistribution(null, 2, size - 2).cumulativeProbability(square * (size - 2) / (2.0 * (size - 1)));
        assertEquals(
                exact, EqualMeans.ofAnyScatter(List.of(scattered, sharp)).probability(), 0.03 * exact + 0.1 / size);
    }

    /**
     * The pivotal bootstrap of Amaral, Dryden and Wood 2007 (from memory): every sample is turned so that its mean is the common one, drawn
     * from with replacement, and the statistic worked out anew.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void theBootstrapAgrees(long seed) {
        List<DirectionSample> samples = List.of(
                DirectionSample.of(FisherDistribution.of(DOWN, 8).draw(30, seed)),
                DirectionSample.of(FisherDistribution.of(DirectedLine.ofPlungeAndTrend(86, 30), 60)
                        .draw(35, seed + 10)),
                DirectionSample.of(FisherDistribution.of(DOWN, 150).draw(40, seed + 20)));
        Least observed = Least.of(samples);
        List<List<Vector>> centred = samples.stream()
                .map(sample -> units(sample).stream()
                        .map(v -> v.carried(Unit.of(sample.mean().orElseThrow()), observed.place))
                        .toList())
                .toList();
        Random random = new Random(seed);
        int greater = 0;
        for (int run = 0; run < 1000; run++) {
            List<DirectionSample> drawn = centred.stream()
                    .map(vectors ->
                            DirectionSample.ofUnits(Stream.generate(() -> vectors.get(random.nextInt(vectors.size())))
                                    .limit(vectors.size())
                                    .toList()))
                    .toList();
            greater += Least.of(drawn).sum >= observed.sum ? 1 : 0;
        }
        assertEquals(greater / 1000.0, EqualMeans.ofAnyScatter(samples).probability(), 0.06);
    }

    /** Why F and not chi-square: the shares stand in the documentation. */
    @ParameterizedTest
    @CsvSource({"4,0.33", "7,0.18", "10,0.13", "25,0.07"})
    void chiSquaredWouldRefuseTooOften(int size, double share) {
        ChiSquaredDistribution chiSquared = new ChiSquaredDistribution(null, 4);
        double critical = chiSquared.inverseCumulativeProbability(0.95);
        double[] kappas = {4, 50, 200};
        int runs = 2000;
        long refused = LongStream.range(0, runs)
                .mapToObj(seed -> IntStream.range(0, 3)
                        .mapToObj(i -> DirectionSample.of(
                                FisherDistribution.of(DOWN, kappas[i]).draw(size + i, 3 * seed + i)))
                        .toList())
                .filter(samples -> Least.of(samples).sum > critical)
                .count();
        assertEquals(share, refused / (double) runs, 4 * Math.sqrt(share * (1 - share) / runs));
    }

    private static List<Vector> units(DirectionSample sample) {
        return sample.directions().stream().map(Unit::of).toList();
    }

    /** The place where the sum of the squares of the distances is least, in sigmas, by descent from the pooled mean. */
    private record Least(Vector place, double sum) {

        static Least of(List<DirectionSample> samples) {
            List<RealMatrix> inverses = samples.stream().map(Least::inverse).toList();
            Vector place = samples.stream()
                    .map(DirectionSample::sum)
                    .reduce(new Vector(0, 0, 0), Vector::plus)
                    .unit();
            double sum = sum(inverses, place);
            for (double step = 0.1; step > 1e-6; step /= 2) {
                boolean moved = true;
                while (moved) {
                    moved = false;
                    for (Vector way : List.of(new Vector(step, 0, 0), new Vector(0, step, 0))) {
                        for (Vector next :
                                List.of(place.plus(way).unit(), place.minus(way).unit())) {
                            double there = sum(inverses, next);
                            if (there < sum) {
                                place = next;
                                sum = there;
                                moved = true;
                            }
                        }
                    }
                }
            }
            return new Least(place, sum);
        }

        private static double sum(List<RealMatrix> inverses, Vector place) {
            double[] components = {place.north(), place.east(), place.down()};
            return inverses.stream()
                    .mapToDouble(inverse -> MatrixUtils.createRealVector(components)
                            .dotProduct(inverse.operate(MatrixUtils.createRealVector(components))))
                    .sum();
        }

        /** By the covariance of coordinates in the plane across the mean. */
        private static RealMatrix inverse(DirectionSample sample) {
            Vector mean = Unit.of(sample.mean().orElseThrow());
            Vector one = Unit.across(mean);
            Vector other = mean.cross(one);
            double[][] plane = units(sample).stream()
                    .map(v -> new double[] {v.dot(one), v.dot(other)})
                    .toArray(double[][]::new);
            double length = sample.meanLength();
            RealMatrix covariance =
                    new Covariance(plane).getCovarianceMatrix().scalarMultiply(1 / (sample.size() * length * length));
            RealMatrix axes = new Array2DRowRealMatrix(new double[][] {Eigen.components(one), Eigen.components(other)});
            return axes.transpose().multiply(MatrixUtils.inverse(covariance)).multiply(axes);
        }
    }
}
