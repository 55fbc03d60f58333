package io.github.kernlot.orientation.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.sphere.distribution.BinghamDistribution;
import io.github.kernlot.orientation.sphere.distribution.FisherDistribution;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.FDistribution;
import org.junit.jupiter.api.Test;

/** Samples at the ends of what a sample can be. */
class SphereSampleTest {

    private static final DirectedLine EAST = DirectedLine.ofPlungeAndTrend(0, 90);
    private static final DirectedLine DOWN = DirectedLine.ofPlungeAndTrend(90, 0);
    private static final DirectionSample LAVA = SphereStatisticsTest.sample("fisher1953");

    private static DirectionSample directions(double... plungeAndAzimuth) {
        return DirectionSample.of(IntStream.range(0, plungeAndAzimuth.length / 2)
                .mapToObj(i -> DirectedLine.ofPlungeAndTrend(plungeAndAzimuth[2 * i], plungeAndAzimuth[2 * i + 1]))
                .toList());
    }

    /** Up-holes too, whose inclination is above 90. */
    @Test
    void holesAreArrowsDownHole() {
        DirectionSample holes = DirectionSample.ofHoles(List.of(
                HoleDirection.ofDip(-60, 90), HoleDirection.ofDip(20, 90), HoleDirection.ofInclination(180, 0)));
        assertEquals(
                List.of(DirectedLine.ofPlungeAndTrend(60, 90), DirectedLine.ofPlungeAndTrend(-20, 90)),
                holes.directions().stream()
                        .limit(2)
                        .map(line -> DirectedLine.ofPlungeAndTrend(
                                Math.rint(line.plunge() * 1e9) / 1e9, Math.rint(line.trend() * 1e9) / 1e9))
                        .toList());
        assertEquals(-90, holes.directions().get(2).plunge(), 1e-12);
        assertEquals(90, holes.mean().orElseThrow().trend(), 1e-9);
    }

    @Test
    void oneDirectionSaysNothingOfItsMean() {
        DirectionSample one = DirectionSample.of(List.of(EAST));
        assertEquals(EAST, one.mean().orElseThrow());
        assertEquals(180, one.meanCone95());
        assertEquals(180, one.meanConeOfLargeSample(0.95));
        assertTrue(one.meanEllipse(0.95).isEmpty());
        assertTrue(one.unbiasedConcentration().isEmpty());
        assertEquals(Double.POSITIVE_INFINITY, one.concentration());
        assertEquals(0, one.angleHolding(0.95));
        assertEquals(EAST, one.median());
        assertTrue(one.fisher().isEmpty());
        assertTrue(one.kent().isEmpty());
        assertTrue(one.kentOfGreatestLikelihood().isEmpty());
        assertTrue(one.outlier().isEmpty());
        assertEquals(1, one.meanLength());

        AxisSample axis = one.axes();
        assertEquals(0, axis.mean().orElseThrow().angleTo(LineOrientation.ofPlungeAndTrend(0, 90)), 1e-12);
        assertTrue(axis.foldAxis().isEmpty());
        assertTrue(axis.meanEllipse(0.95).isEmpty());
        assertTrue(axis.bingham().isEmpty());
        assertTrue(axis.watsonCluster().isEmpty());
        assertEquals(0, axis.median().angleTo(LineOrientation.ofPlungeAndTrend(0, 90)), 1e-12);
        assertTrue(axis.tensor().shape().isEmpty());
        assertEquals(Double.POSITIVE_INFINITY, axis.tensor().strength());
    }

    @Test
    void equalDirectionsAreSharp() {
        DirectionSample same = directions(33, 77, 33, 77, 33, 77, 33, 77);
        assertEquals(Double.POSITIVE_INFINITY, same.concentration());
        assertEquals(Double.POSITIVE_INFINITY, same.unbiasedConcentration().orElseThrow());
        assertEquals(0, same.meanCone95());
        assertEquals(0, same.meanConeOfLargeSample(0.95), 1e-6);
        assertEquals(0, same.meanEllipse(0.95).orElseThrow().longRadius(), 1e-6);
        assertTrue(same.outlier().isEmpty());
        assertEquals(0, same.median().angleTo(DirectedLine.ofPlungeAndTrend(33, 77)), 1e-12);
        assertEquals(0, same.axes().meanEllipse(0.95).orElseThrow().longRadius(), 1e-6);
        assertTrue(same.axes().toString().startsWith("mean 33.0/077.0 (plunge/trend), 95 % within 0.0 by 0.0"));
    }

    /** The eigenvalues of the tensor may come out a last digit above 1 and 1/2, and the length of one a last digit below 1. */
    @Test
    void roundingIsNoError() {
        for (DirectedLine line : FisherDistribution.of(EAST, 0).draw(2000, 5)) {
            DirectionSample one = DirectionSample.of(List.of(line));
            assertEquals(1, one.probabilityOfUniform());
            assertTrue(one.axes().watsonCluster().isEmpty());
            assertTrue(one.axes().bingham().isEmpty());
            PlaneOrientation across = PlaneOrientation.ofPole(one.axes().axes().get(0));
            AxisSample cross = AxisSample.of(List.of(across.lineAtRake(20), across.lineAtRake(110)));
            assertTrue(cross.bingham().isEmpty());
            assertTrue(cross.watsonGirdle().isEmpty());
            assertEquals(1, cross.tensor().girdleIndex(), 1e-12);
        }
    }

    @Test
    void oppositeDirectionsHaveNoMean() {
        DirectionSample opposite = directions(10, 0, -10, 180, 40, 90, -40, 270);
        assertTrue(opposite.mean().isEmpty());
        assertEquals(0, opposite.concentration(), 1e-6);
        assertEquals(180, opposite.meanCone95());
        assertEquals(180, opposite.meanConeOfLargeSample(0.95));
        assertTrue(opposite.meanEllipse(0.95).isEmpty());
        assertTrue(opposite.fisher().isEmpty());
        assertTrue(opposite.kent().isEmpty());
        assertEquals(1, opposite.probabilityOfUniform(), 1e-9);
        assertEquals("no mean, kappa 0.000, of 4", opposite.toString());
        double sum = opposite.directions().stream()
                .mapToDouble(direction -> direction.angleTo(opposite.median()))
                .sum();
        assertEquals(360, sum, 1e-9);
    }

    @Test
    void axesAllRoundOneAxisAreAGirdle() {
        AxisSample girdle = AxisSample.of(IntStream.range(0, 12)
                .mapToObj(i -> LineOrientation.ofPlungeAndTrend(0, 30 * i))
                .toList());
        assertTrue(girdle.mean().isEmpty());
        assertTrue(girdle.meanPlane().isEmpty());
        assertTrue(girdle.towardsMean().isEmpty());
        assertTrue(girdle.meanEllipse(0.95).isEmpty());
        assertEquals(90, girdle.foldAxis().orElseThrow().plunge(), 1e-9);
        assertEquals(0, girdle.foldAxisEllipse(0.95).orElseThrow().longRadius(), 1e-6);
        assertEquals(1, girdle.tensor().girdleIndex(), 1e-12);
        assertEquals(0, girdle.tensor().shape().orElseThrow(), 1e-12);
        assertTrue(girdle.bingham().isEmpty());
        assertTrue(girdle.watsonGirdle().isEmpty());
        assertEquals("no mean, of 12", girdle.toString());
        assertTrue(girdle.probabilityOfUniform() < 0.02);
    }

    @Test
    void theThreeAxesOfACubeAreUniform() {
        AxisSample cube =
                AxisSample.ofVectors(new double[] {1, 0, 0}, new double[] {0, -7, 0}, new double[] {0, 0, 1e-200});
        assertEquals(1, cube.probabilityOfUniform(), 1e-9);
        assertTrue(cube.tensor().shape().isEmpty());
        assertEquals(0, cube.tensor().strength(), 1e-12);
        assertEquals(1, cube.tensor().randomIndex(), 1e-12);
        assertEquals(0, cube.bingham().orElseThrow().leastConcentration(), 1e-9);
        assertEquals(0, cube.watsonCluster().orElseThrow().concentration(), 1e-9);
    }

    @Test
    void clustersHaveAnInfiniteShapeWhereTheyAreRound() {
        OrientationTensor round = new OrientationTensor(
                0.8,
                0.1,
                0.1,
                LineOrientation.ofPlungeAndTrend(90, 0),
                LineOrientation.ofPlungeAndTrend(0, 0),
                LineOrientation.ofPlungeAndTrend(0, 90));
        assertEquals(Double.POSITIVE_INFINITY, round.shape().orElseThrow());
        assertEquals(
                "0.800 along 90.0/000.0 (plunge/trend), 0.100 along 0.0/000.0 (plunge/trend), 0.100 along 0.0/090.0 (plunge/trend)",
                round.toString());
    }

    @Test
    void polesOfPlanesGiveTheMeanPlane() {
        AxisSample poles = AxisSample.ofPoles(List.of(
                PlaneOrientation.ofDipAndDirection(88, 120),
                PlaneOrientation.ofDipAndDirection(88, 300),
                PlaneOrientation.ofDipAndDirection(86, 118),
                PlaneOrientation.ofDipAndDirection(86, 298)));
        assertEquals(0, poles.meanPlane().orElseThrow().angleTo(PlaneOrientation.ofDipAndDirection(90, 119)), 0.01);
        assertTrue(poles.towardsMean().orElseThrow().concentration() > 200);
        assertEquals(4, poles.axes().size());
    }

    /** Of two directions every place between has the same sum, and the mean is the nearest to itself. */
    @Test
    void theMedianOfTwoIsTheirMean() {
        DirectionSample two = directions(10, 350, 30, 60);
        assertEquals(0, two.median().angleTo(two.mean().orElseThrow()), 1e-6);
    }

    /** On a great circle the sum is least between the two in the middle, and the nearest there to the mean is one of them. */
    @Test
    void theMedianOfAnEvenNumberIsTheEndThatIsNearestToTheMean() {
        DirectionSample four = directions(0, 0, 0, 10, 0, 20, 0, 70);
        assertEquals(0, four.median().angleTo(DirectedLine.ofPlungeAndTrend(0, 20)), 1e-6);
        DirectionSample three = directions(0, 0, 0, 10, 0, 70);
        assertEquals(0, three.median().angleTo(DirectedLine.ofPlungeAndTrend(0, 10)), 1e-6);
    }

    @Test
    void aDirectionThatHoldsTheMajorityIsTheMedian() {
        DirectionSample heavy = directions(20, 20, 20, 20, 20, 20, 20, 20, -70, 10, 80, 200, 0, 300);
        assertEquals(0, heavy.median().angleTo(DirectedLine.ofPlungeAndTrend(20, 20)), 1e-9);
    }

    /** Four directions a like angle from the vertical, to north, south, east and west. */
    private static List<double[]> cross(double angle) {
        double sine = Math.sin(Math.toRadians(angle));
        double cosine = Math.cos(Math.toRadians(angle));
        return List.of(
                new double[] {sine, 0, cosine},
                new double[] {-sine, 0, cosine},
                new double[] {0, sine, cosine},
                new double[] {0, -sine, cosine});
    }

    /** By hand: the sum of four is 4 cos 30 long, root of 13 with the level one; F by Commons Math 3.6.1. */
    @Test
    void theStrayOfFiveHasTheStatisticByHand() {
        List<double[]> vectors = new ArrayList<>(cross(30));
        vectors.add(new double[] {1, 0, 0});
        Outlier outlier = DirectionSample.ofVectors(vectors.toArray(new double[0][]))
                .outlier()
                .orElseThrow();
        assertEquals(4, outlier.index());
        assertEquals(3 * (1 + Math.sqrt(12) - Math.sqrt(13)) / (4 - Math.sqrt(12)), outlier.statistic(), 1e-9);
        double one = 1 - new FDistribution(null, 2, 6).cumulativeProbability(outlier.statistic());
        assertEquals(5 * one, outlier.probability(), 1e-9);
    }

    /** By hand: the mean length is cos 10 and the mean square of the sine sin^2 10, so that sin a = tan 10 sqrt(-ln 0.05 / 4). */
    @Test
    void theConeOfALargeSampleByHand() {
        DirectionSample sample = DirectionSample.ofVectors(cross(10).toArray(new double[0][]));
        assertEquals(8.777340, sample.meanConeOfLargeSample(0.95), 1e-6);
    }

    /**
     * Twenty axes, ten 20 degrees to north and south of the vertical and ten 10 degrees to east and west: by the formula of Prentice
     * (1984, from memory) with sums that factor by hand, over n - 1 and with F of 2 and 18 degrees of freedom (in closed form) as in Hotelling's test.
     */
    @Test
    void theEllipseOfAMeanAxisByHand() {
        List<double[]> vectors = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            vectors.addAll(cross(20).subList(0, 2));
            vectors.addAll(cross(10).subList(2, 4));
        }
        AxisEllipse ellipse = AxisSample.ofVectors(vectors.toArray(new double[0][]))
                .meanEllipse(0.95)
                .orElseThrow();
        double wide = Math.pow(Math.sin(Math.toRadians(20)), 2);
        double narrow = Math.pow(Math.sin(Math.toRadians(10)), 2);
        double down = 1 - (wide + narrow) / 2;
        double quantile = 9 * (Math.pow(0.05, -1 / 9.0) - 1);
        double square = 2 * 19 / 18.0 * quantile / 38;
        assertEquals(0, ellipse.centre().angleTo(LineOrientation.ofPlungeAndTrend(90, 0)), 1e-9);
        assertEquals(0, ellipse.longAxis().angleTo(LineOrientation.ofPlungeAndTrend(0, 0)), 1e-9);
        assertEquals(
                Math.toDegrees(Math.asin(Math.sqrt(square * wide * (1 - wide)) / (down - wide / 2))),
                ellipse.longRadius(),
                1e-9);
        assertEquals(
                Math.toDegrees(Math.asin(Math.sqrt(square * narrow * (1 - narrow)) / (down - narrow / 2))),
                ellipse.shortRadius(),
                1e-9);
    }

    /** 140 / sqrt(kappa) and 81 / sqrt(kappa) degrees hold 95 and 63 of a hundred (palaeomagnetism, from memory). */
    @Test
    void theAnglesThatHoldMostDirectionsAreThoseOfTheRule() {
        double root = Math.sqrt(LAVA.concentration());
        assertEquals(140 / root, LAVA.angleHolding(0.95), 0.3);
        assertEquals(81 / root, LAVA.angleHolding(0.63), 0.2);
    }

    @Test
    void aStrayDirectionIsFound() {
        List<DirectedLine> many =
                new ArrayList<>(FisherDistribution.of(DOWN, 80).draw(30, 4));
        many.add(12, EAST);
        Outlier outlier = DirectionSample.of(many).outlier().orElseThrow();
        assertEquals(12, outlier.index());
        assertTrue(outlier.probability() < 1e-6);
        assertTrue(outlier.toString().startsWith("number 13 of the sample, E = "));

        many.remove(12);
        assertTrue(DirectionSample.of(many).outlier().orElseThrow().probability() > 0.05);
        // all others the same: nothing is infinite or no number
        assertEquals(
                0,
                directions(0, 0, 0, 0, 0, 0, 0, 0, 9, 9).outlier().orElseThrow().probability(),
                1e-12);
    }

    @Test
    void anEllipseHoldsWhatLiesInIt() {
        AxisEllipse ellipse = LAVA.meanEllipse(0.95).orElseThrow();
        assertTrue(ellipse.holds(ellipse.centre()));
        assertFalse(ellipse.holds(ellipse.longAxis()));
        AxisEllipse open = new AxisEllipse(ellipse.centre(), ellipse.longAxis(), 90, 5, 0.95);
        assertTrue(open.holds(ellipse.longAxis()));
        assertEquals(
                "70.9/024.3 (plunge/trend), 95 % within 8.5 along 7.0/273.7 (plunge/trend) and 6.6 across",
                ellipse + "");
        assertThrows(
                IllegalArgumentException.class, () -> new AxisEllipse(ellipse.centre(), ellipse.centre(), 9, 5, 0.95));
    }

    @Test
    void printTheirMeans() {
        assertEquals("mean arrow 70.9/024.3 (plunge/trend), 95 % within 8.8, kappa 39.47, of 9", LAVA.toString());
        assertEquals(
                "S = 38.55, p = 2.92e-07 (chi-square with 5 degrees of freedom)",
                LAVA.axes().uniformity() + "");
    }

    @Test
    void manyDirectionsAreTestedByChiSquared() {
        // either side of where the exact sum ends, for the same length over the root of n
        double exact = UniformSphere.probabilityAbove(50, 1.6 * Math.sqrt(50));
        double corrected = UniformSphere.probabilityAbove(51, 1.6 * Math.sqrt(51));
        assertEquals(exact, corrected, 2e-4);
        assertEquals(1, UniformSphere.probabilityAbove(5, 0));
        assertEquals(0, UniformSphere.probabilityAbove(5, 5));
    }

    @Test
    void refuseWhatIsNoSample() {
        assertThrows(IllegalArgumentException.class, () -> DirectionSample.of(List.of()));
        assertThrows(IllegalArgumentException.class, () -> AxisSample.of(List.of()));
        assertThrows(IllegalArgumentException.class, () -> DirectionSample.ofVectors(new double[] {1, 2}));
        assertThrows(IllegalArgumentException.class, () -> DirectionSample.ofVectors(new double[] {0, 0, 0}));
        assertThrows(IllegalArgumentException.class, () -> DirectionSample.ofVectors(new double[] {1, Double.NaN, 0}));
        assertThrows(IllegalArgumentException.class, () -> LAVA.meanCone(1));
        assertThrows(IllegalArgumentException.class, () -> LAVA.meanCone(0));
        assertThrows(IllegalArgumentException.class, () -> LAVA.angleHolding(-0.1));
        assertThrows(IllegalArgumentException.class, () -> DirectionSample.criticalResultant(1, 0.05));
        assertThrows(IllegalArgumentException.class, () -> LAVA.axes().meanEllipse(Double.NaN));
    }

    @Test
    void fitsAreThoseOfTheDrawnDistribution() {
        LineOrientation first = LineOrientation.ofPlungeAndTrend(30, 200);
        LineOrientation middle = LineOrientation.ofPlungeAndTrend(0, 110);
        AxisSample drawn = AxisSample.of(new BinghamDistribution(first, middle, 4, 25).draw(20_000, 9));
        BinghamDistribution found = drawn.bingham().orElseThrow();
        assertEquals(4, found.middleConcentration(), 0.2);
        assertEquals(25, found.leastConcentration(), 0.8);
        assertEquals(0, found.first().angleTo(first), 0.5);
        assertEquals(0, drawn.foldAxis().orElseThrow().angleTo(LineOrientation.ofPlungeAndTrend(60, 20)), 0.5);
    }
}
