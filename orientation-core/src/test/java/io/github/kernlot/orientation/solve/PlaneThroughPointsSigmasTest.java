package io.github.kernlot.orientation.solve;

import static io.github.kernlot.orientation.solve.Places.PLACES;
import static io.github.kernlot.orientation.solve.Places.at;
import static io.github.kernlot.orientation.solve.Places.on;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlaneThroughPointsSigmasTest {

    @Test
    void theCovarianceIsThatOfSimulatedPointsWithUnequalErrors() {
        PlaneOrientation truth = PlaneOrientation.ofDipAndDirection(35, 200);
        List<Position> positions = on(truth, PLACES);
        Random random = new Random(11);
        List<double[]> sigmas = new ArrayList<>();
        List<ContactPoint> points = new ArrayList<>();
        for (int i = 0; i < positions.size(); i++) {
            double[] sigma = {0.5 + i % 3, 0.3 + i % 2, 0.2 + 0.5 * (i % 4)};
            sigmas.add(sigma);
            points.add(ContactPoint.of(positions.get(i), PositionCovariance.ofSigmas(sigma[0], sigma[1], sigma[2])));
        }
        PlaneThroughPoints exact = PlaneThroughPoints.of(points);
        PlaneEstimate estimate = exact.estimate().orElseThrow();
        assertEquals(1, exact.planarityProbability().orElseThrow(), 1e-6);
        Vector withDip = Poles.withDip(truth);
        Vector withDirection = Poles.withDipDirection(truth);
        int runs = 4000;
        double dip = 0;
        double strike = 0;
        double both = 0;
        double chiSquare = 0;
        int rejected = 0;
        for (int run = 0; run < runs; run++) {
            List<ContactPoint> noisy = new ArrayList<>();
            for (int i = 0; i < points.size(); i++) {
                Position place = positions.get(i);
                double[] sigma = sigmas.get(i);
                noisy.add(ContactPoint.of(
                        at(
                                place.easting() + sigma[0] * random.nextGaussian(),
                                place.northing() + sigma[1] * random.nextGaussian(),
                                place.elevation() + sigma[2] * random.nextGaussian()),
                        points.get(i).covariance()));
            }
            PlaneThroughPoints found = PlaneThroughPoints.of(noisy);
            Vector pole = Poles.normal(found.plane());
            double onDip = Math.toDegrees(pole.dot(withDip));
            double onStrike = Math.toDegrees(pole.dot(withDirection));
            dip += onDip * onDip / runs;
            strike += onStrike * onStrike / runs;
            both += onDip * onStrike / runs;
            chiSquare += found.chiSquare() / runs;
            rejected += found.planarityProbability().orElseThrow() < 0.05 ? 1 : 0;
        }
        assertEquals(estimate.dipSigma(), Math.sqrt(dip), 0.05 * estimate.dipSigma());
        assertEquals(estimate.strikeSigma(), Math.sqrt(strike), 0.05 * estimate.strikeSigma());
        assertEquals(estimate.correlation(), both / Math.sqrt(dip * strike), 0.06);
        assertEquals(5, chiSquare, 0.2);
        assertEquals(0.05, rejected / (double) runs, 0.015);
    }

    /**
     * By hand: the corners of a rectangle of 60 m down dip and 40 m along strike, sigma 0.1 m, but 0.05 m at the last. The weighted sums of
     * squares about the mean are 36000 / 7, 16000 / 7 and, of products, 7200 / 7, over the square of 0.1 m.
     */
    @Test
    void unequalCornersOfARectangleGiveTheirCovariance() {
        PlaneOrientation truth = PlaneOrientation.ofDipAndDirection(35, 200);
        List<Position> corners = on(truth, new double[][] {{0, 0}, {60, 0}, {0, 40}, {60, 40}});
        double[] sigmas = {0.1, 0.1, 0.1, 0.05};
        PlaneEstimate estimate = PlaneThroughPoints.of(IntStream.range(0, 4)
                        .mapToObj(i -> ContactPoint.of(corners.get(i), sigmas[i]))
                        .toList())
                .estimate()
                .orElseThrow();
        double determinant = 36000 * 16000.0 - 7200 * 7200.0;
        assertEquals(Math.toDegrees(0.1 * Math.sqrt(7 * 16000 / determinant)), estimate.dipSigma(), 1e-6);
        assertEquals(Math.toDegrees(0.1 * Math.sqrt(7 * 36000 / determinant)), estimate.strikeSigma(), 1e-6);
        assertEquals(0.3, estimate.correlation(), 1e-6);
    }

    /** Places along a line that bears 30 degrees, by so much to its side and so much above it; neither slopes along the line nor together. */
    private static List<Position> alongALine(double aside, double above) {
        double[] sides = {1, -1, 0, -1, 1};
        double[] heights = {-1, 2, 0, -2, 1};
        return IntStream.range(0, 5)
                .mapToObj(i -> at(
                        1000 * (i - 2) * 0.5 + aside * sides[i] * Math.sqrt(0.75),
                        1000 * (i - 2) * Math.sqrt(0.75) - aside * sides[i] * 0.5,
                        above * heights[i]))
                .toList();
    }

    /**
     * By hand: about the level plane the squares sum to 10 h^2 with 2 degrees of freedom, about the upright one to 4 s^2 with 3. F is 19.164 at
     * 0.05 (tables of F), s / h then 8.477.
     */
    @Test
    void aBreadthThatScatterMayGiveDoesNotTellTheRoll() {
        PlaneEstimate open =
                PlaneThroughPoints.ofPositions(alongALine(8.47, 1)).estimate().orElseThrow();
        PlaneEstimate told =
                PlaneThroughPoints.ofPositions(alongALine(8.49, 1)).estimate().orElseThrow();
        assertTrue(open.greatestSigma() >= 90 && told.greatestSigma() < 10, open + " and " + told);
        double along = Math.toDegrees(Math.sqrt(5 / 10e6));
        assertEquals(along, open.leastSigma(), 1e-3 * along);
        assertEquals(along, told.leastSigma(), 1e-3 * along);
    }

    /** Chi-square with 3 degrees of freedom is 16.266 at 0.001 (tables of chi-square): 4 s^2 / sigma^2, s 2.0166 sigmas. */
    @Test
    void aBreadthWithinTheSigmasDoesNotTellTheRoll() {
        PlaneEstimate open = ofSigma(alongALine(2.01, 0));
        PlaneEstimate told = ofSigma(alongALine(2.02, 0));
        assertTrue(open.greatestSigma() >= 90 && told.greatestSigma() < 20, open + " and " + told);
    }

    private static PlaneEstimate ofSigma(List<Position> positions) {
        return PlaneThroughPoints.of(positions.stream()
                        .map(place -> ContactPoint.of(place, 1))
                        .toList())
                .estimate()
                .orElseThrow();
    }

    @Test
    void withoutSigmasTheScatterGivesThem() {
        PlaneOrientation truth = PlaneOrientation.ofDipAndDirection(20, 75);
        List<Position> positions = on(truth, PLACES);
        Random random = new Random(5);
        List<Position> noisy = positions.stream()
                .map(place -> at(place.easting(), place.northing(), place.elevation() + random.nextGaussian()))
                .toList();
        PlaneThroughPoints free = PlaneThroughPoints.ofPositions(noisy);
        double scatter = Math.sqrt(
                free.distances().stream().mapToDouble(each -> each * each).sum() / 5);
        PlaneThroughPoints given = PlaneThroughPoints.of(
                noisy.stream().map(place -> ContactPoint.of(place, scatter)).toList());
        assertEquals(0, free.plane().angleTo(given.plane()), 1e-7);
        assertEquals(
                given.estimate().orElseThrow().dipSigma(),
                free.estimate().orElseThrow().dipSigma(),
                1e-6);
    }

    /** Two standard deviations of the share in 4,000 runs are 0.007; from the sigmas alone it would be 0.65, 0.77 and 0.83. */
    @ParameterizedTest
    @ValueSource(ints = {4, 5, 6})
    void theConeOfAScatterOfFewPlacesHoldsNineteenOfTwenty(int count) {
        PlaneOrientation truth = PlaneOrientation.ofDipAndDirection(35, 200);
        Random random = new Random(3);
        int runs = 4_000;
        int inside = 0;
        for (int run = 0; run < runs; run++) {
            List<Position> noisy = on(truth, PLACES).subList(0, count).stream()
                    .map(place -> at(
                            place.easting() + random.nextGaussian(),
                            place.northing() + random.nextGaussian(),
                            place.elevation() + random.nextGaussian()))
                    .toList();
            PlaneEstimate found =
                    PlaneThroughPoints.ofPositions(noisy).estimate().orElseThrow();
            assertEquals(count - 3.0, found.degreesOfFreedom());
            inside += found.plane().angleTo(truth) <= found.cone95() ? 1 : 0;
        }
        assertEquals(0.95, inside / (double) runs, 0.012);
    }

    @Test
    void nearlyCollinearPointsGiveAWidePole() {
        List<ContactPoint> points = List.of(
                ContactPoint.of(at(0, 0, 0), 1), ContactPoint.of(at(100, 0, 0), 1), ContactPoint.of(at(200, 1, 0), 1));
        PlaneThroughPoints found = PlaneThroughPoints.of(points);
        assertTrue(found.breadth() < 0.01);
        assertTrue(found.estimate().orElseThrow().greatestSigma() > 60);
        assertEquals(0, found.chiSquare());
        assertEquals(List.of(0.0, 0.0, 0.0), found.distances());
        assertTrue(found.planarityProbability().isEmpty());
    }

    /** With more and more points on a line the scatter across it would tell the roll ever better, if it were not error. */
    @ParameterizedTest
    @ValueSource(ints = {3, 4, 6, 10, 50})
    void aLineOfUncertainPointsDoesNotTellTheRoll(int count) {
        PlaneOrientation truth = PlaneOrientation.ofDipAndDirection(60, 90);
        Random random = new Random(8);
        int covered = 0;
        for (int i = 0; i < 200; i++) {
            List<ContactPoint> points = new ArrayList<>();
            for (int k = 0; k < count; k++) {
                Position place = at(random.nextGaussian(), 100 * random.nextDouble(), random.nextGaussian());
                points.add(ContactPoint.of(place, 1));
            }
            PlaneEstimate estimate = PlaneThroughPoints.of(points).estimate().orElseThrow();
            covered += estimate.plane().angleTo(truth) <= estimate.cone95() ? 1 : 0;
        }
        assertEquals(200, covered, 6);
    }
}
