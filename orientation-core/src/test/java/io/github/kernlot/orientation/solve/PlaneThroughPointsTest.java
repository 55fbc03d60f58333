package io.github.kernlot.orientation.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Vector;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlaneThroughPointsTest {

    private static Position at(double east, double north, double up) {
        return Position.ofEastingNorthingElevation(east, north, up);
    }

    /** Points on a plane about a centre far from the origin, so far along dip direction and strike. */
    private static List<Position> on(PlaneOrientation plane, double[][] places) {
        double dip = Math.toRadians(plane.dip());
        double direction = Math.toRadians(plane.dipDirection());
        List<Position> positions = new ArrayList<>();
        for (double[] place : places) {
            double down = place[0] * Math.sin(dip);
            double across = place[0] * Math.cos(dip);
            positions.add(at(
                    500_000 + across * Math.sin(direction) - place[1] * Math.cos(direction),
                    6_000_000 + across * Math.cos(direction) + place[1] * Math.sin(direction),
                    300 - down));
        }
        return positions;
    }

    private static final double[][] PLACES = {
        {0, 0}, {120, 10}, {-40, 200}, {60, -150}, {-90, -60}, {30, 90}, {80, 160}, {-120, 40}
    };

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "three-points.csv", useHeadersInDisplayName = true)
    void threePointsGiveThePlaneOfTheWorkedExample(
            String id,
            double east1,
            double north1,
            double up1,
            double east2,
            double north2,
            double up2,
            double east3,
            double north3,
            double up3,
            double dip,
            double dipDirection,
            double tolerance) {
        PlaneThroughPoints found = PlaneThroughPoints.ofPositions(
                List.of(at(east1, north1, up1), at(east2, north2, up2), at(east3, north3, up3)));
        assertEquals(dip, found.plane().dip(), tolerance);
        assertEquals(dipDirection, found.plane().dipDirection(), tolerance);
        assertEquals(List.of(0.0, 0.0, 0.0), found.distances());
        assertTrue(found.estimate().isEmpty());
        assertTrue(found.planarityProbability().isEmpty());
    }

    @Test
    void theGradientOfTheSeamIsOneInSix() {
        // source: Surveying Problems and Solutions (Shepherd; author from memory) p.424 Ex. 8.8, its points as in
        // three-points.csv; no answer seen, but data that give 1 in 6 to the third decimal were made to
        PlaneOrientation seam = PlaneThroughPoints.ofPositions(List.of(
                        at(0, 0, -207.264),
                        at(-442.21891174658583, 1214.9864744795416, -54.864),
                        at(-1591.4339369683112, -167.26644692089891, 21.336)))
                .plane();
        assertEquals(6, 1 / Math.tan(Math.toRadians(seam.dip())), 0.0006);
    }

    @Test
    void twoApparentDipsOfAVeinLieToEitherSideOfItsDip() {
        // source: handbook of engineering calculations, Eq. 48-49 (title from memory: Hicks): the tangents of two
        // apparent dips 140 degrees
        // apart are as 1 to 0.6406; they lie 65 deg 26 min and 74 deg 34 min from the dip, whatever the dip
        double tangent = 0.7;
        double bearing = 53.2;
        double second = bearing + 140;
        PlaneOrientation plane = PlaneThroughPoints.ofPositions(List.of(
                        at(0, 0, 0),
                        at(
                                100 * Math.sin(Math.toRadians(bearing)),
                                100 * Math.cos(Math.toRadians(bearing)),
                                -100 * tangent),
                        at(
                                100 * Math.sin(Math.toRadians(second)),
                                100 * Math.cos(Math.toRadians(second)),
                                -100 * tangent * 0.6406)))
                .plane();
        assertEquals(65 + 26 / 60.0, plane.dipDirection() - bearing, 0.5 / 60 + 0.005);
        assertEquals(74 + 34 / 60.0, second - plane.dipDirection(), 0.5 / 60 + 0.005);
    }

    @Test
    void aStrikeAndTwoPlacesGiveAPlane() {
        // source: Technical Drawing, Higher Level exam paper 2006, Building, Question 5 (Ireland); no answer printed,
        // recomputed: 25.691/025.0.
        // Hole R falls to the north at 55 and meets the top at 80; S lies 90 to the northeast, its top at 50
        double along = (115 - 80) / Math.tan(Math.toRadians(55));
        Position inR = at(0, along, 80);
        Position inS = at(90 * Math.sin(Math.toRadians(45)), 90 * Math.cos(Math.toRadians(45)), 50);
        PlaneOrientation plane = PlaneThroughPoints.ofStrike(295, inR, inS);
        assertEquals(25.691, plane.dip(), 0.0006);
        assertEquals(25, plane.dipDirection(), 1e-9);
        for (Position level : List.of(at(5, 9, 1), at(5 + 1e-4, 1e6, 1))) {
            String message = assertThrows(
                            IllegalArgumentException.class, () -> PlaneThroughPoints.ofStrike(0, at(5, 0, 1), level))
                    .getMessage();
            assertTrue(message.contains("along strike"), message);
        }
        assertThrows(IllegalArgumentException.class, () -> PlaneThroughPoints.ofStrike(0, at(5, 0, 1), at(5, 0, 1)));
        assertThrows(IllegalArgumentException.class, () -> PlaneThroughPoints.ofStrike(Double.NaN, inR, inS));
    }

    @ParameterizedTest
    @CsvSource({"62, 118", "0, 0", "90, 0", "90, 90", "89, 180"})
    void manyPointsOnAPlaneGiveItBack(double dip, double direction) {
        PlaneOrientation truth = PlaneOrientation.ofDipAndDirection(dip, direction);
        PlaneThroughPoints found = PlaneThroughPoints.ofPositions(on(truth, PLACES));
        assertEquals(0, found.plane().angleTo(truth), 1e-9);
        found.distances().forEach(distance -> assertEquals(0, distance, 1e-6));
        assertTrue(found.breadth() > 0.5 && found.breadth() < 1);
        assertEquals(PLACES.length - 3.0, found.chiSquare(), 1e-9);
        assertEquals(1, found.planarityProbability().orElseThrow());
    }

    @Test
    void pointsOnALevelPlaneDoNotSlope() {
        // a widely copied formula gives 45 degrees here
        PlaneThroughPoints found = PlaneThroughPoints.ofPositions(List.of(at(0, 0, 7), at(10, 0, 7), at(0, 10, 7)));
        assertEquals(0, found.plane().dip());
    }

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

    /** With unequal errors the sum of squares has several valleys; a descent from the axes of the cloud alone fails here. */
    @Test
    void noOtherPlaneFitsUnequalPointsBetter() {
        Random random = new Random(5);
        for (int run = 0; run < 400; run++) {
            PlaneOrientation truth =
                    PlaneOrientation.ofDipAndDirection(90 * random.nextDouble(), 360 * random.nextDouble());
            List<ContactPoint> points = new ArrayList<>();
            for (Position place : on(truth, PLACES).subList(0, 5)) {
                double east = Math.exp(3 * random.nextGaussian());
                double north = Math.exp(3 * random.nextGaussian());
                double up = Math.exp(3 * random.nextGaussian());
                points.add(ContactPoint.of(
                        at(
                                place.easting() + east * random.nextGaussian(),
                                place.northing() + north * random.nextGaussian(),
                                place.elevation() + up * random.nextGaussian()),
                        PositionCovariance.ofSigmas(east, north, up)));
            }
            PlaneThroughPoints found = PlaneThroughPoints.of(points);
            assertEquals(chiSquare(points, found.plane()), found.chiSquare(), 1e-6 * (1 + found.chiSquare()));
            for (int i = 0; i < 500; i++) {
                PlaneOrientation other =
                        PlaneOrientation.ofDipAndDirection(90 * random.nextDouble(), 360 * random.nextDouble());
                assertTrue(chiSquare(points, other) > found.chiSquare() - 1e-6, found + " beside " + other);
            }
            Vector pole = Poles.normal(found.plane());
            Displacement way = points.get(1).position().minus(points.get(0).position());
            assertEquals(
                    pole.dot(new Vector(way.north(), way.east(), way.down())),
                    found.distances().get(1) - found.distances().get(0),
                    1e-6);
            for (double turn : new double[] {-0.01, 0.01}) {
                PlaneOrientation beside = found.plane().withAzimuthTurned(turn);
                PlaneOrientation steeper = PlaneOrientation.ofDipAndDirection(
                        Math.max(0, Math.min(90, found.plane().dip() + turn)),
                        found.plane().dipDirection());
                assertTrue(chiSquare(points, beside) > found.chiSquare() - 1e-6, found + " beside " + beside);
                assertTrue(chiSquare(points, steeper) > found.chiSquare() - 1e-6, found + " beside " + steeper);
            }
        }
    }

    /**
     * By hand: the corners of a square lie 7 cm above and below a level plane by turns. That twist no plane follows; of it each corner keeps
     * a part in proportion to its variance, 4 x 7 / (1 + 1 + 1 + 4) = 4 cm and four times that.
     */
    @Test
    void aTwistIsSharedOutByTheVariances() {
        double[][] corners = {{0, 0, 0.07, 1}, {100, 0, -0.07, 1}, {100, 100, 0.07, 1}, {0, 100, -0.07, 2}};
        PlaneThroughPoints found = PlaneThroughPoints.of(Arrays.stream(corners)
                .map(corner -> ContactPoint.of(at(corner[0], corner[1], corner[2]), corner[3]))
                .toList());
        double[] below = {-0.04, 0.04, -0.04, 0.16};
        for (int i = 0; i < 4; i++) {
            assertEquals(below[i], found.distances().get(i), 1e-6);
        }
        assertEquals(3 * 0.04 * 0.04 + 0.08 * 0.08, found.chiSquare(), 1e-8);
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

    /**
     * By hand, on a grid of three by three: the bend (1, -2, 1) along it, c times, has squares of 18 c^2; the product of both bends, which no
     * surface of second order follows, 36. F = c^2 / 2 with 3 and 3 degrees of freedom is 9.277 at 0.05 (tables of F).
     */
    @Test
    void aBendIsHeldAgainstWhatNoBentSurfaceFollows() {
        double[] bend = {1, -2, 1};
        double times = Math.sqrt(2 * 9.277);
        List<Position> grid = IntStream.range(0, 9)
                .mapToObj(i ->
                        at(50.0 * (i % 3), 50.0 * (i / 3), 0.01 * (times * bend[i % 3] + bend[i % 3] * bend[i / 3])))
                .toList();
        assertEquals(
                0.05,
                PlaneThroughPoints.ofPositions(grid).planarityProbability().orElseThrow(),
                1e-5);
    }

    @Test
    void placesOnTwoLinesDoNotTellWhetherTheSurfaceBends() {
        double[][] places = {{0, 0}, {0, 10}, {0, 20}, {0, 50}, {30, 0}, {30, 20}, {30, 40}, {30, 90}};
        PlaneThroughPoints found =
                PlaneThroughPoints.ofPositions(on(PlaneOrientation.ofDipAndDirection(20, 75), places));
        assertTrue(found.planarityProbability().isEmpty());
    }

    private static double chiSquare(List<ContactPoint> points, PlaneOrientation plane) {
        double east = -Math.sin(Math.toRadians(plane.dip())) * Math.sin(Math.toRadians(plane.dipDirection()));
        double north = -Math.sin(Math.toRadians(plane.dip())) * Math.cos(Math.toRadians(plane.dipDirection()));
        double up = -Math.cos(Math.toRadians(plane.dip()));
        double[] along = new double[points.size()];
        double[] weights = new double[points.size()];
        double sum = 0;
        double total = 0;
        for (int i = 0; i < along.length; i++) {
            Position place = points.get(i).position();
            PositionCovariance errors = points.get(i).covariance();
            along[i] = east * (place.easting() - 500_000)
                    + north * (place.northing() - 6_000_000)
                    + up * place.elevation();
            weights[i] = 1
                    / (east * east * errors.eastEast() + north * north * errors.northNorth() + up * up * errors.upUp());
            sum += weights[i] * along[i];
            total += weights[i];
        }
        double squares = 0;
        for (int i = 0; i < along.length; i++) {
            squares += weights[i] * Math.pow(along[i] - sum / total, 2);
        }
        return squares;
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
    void curvedBedsFailTheTestOfPlanarity() {
        PlaneOrientation truth = PlaneOrientation.ofDipAndDirection(20, 75);
        Random random = new Random(8);
        int rejected = 0;
        int curvedRejected = 0;
        int runs = 2000;
        double[][] places = new double[14][];
        for (int i = 0; i < places.length; i++) {
            places[i] = new double[] {200 * random.nextDouble() - 100, 200 * random.nextDouble() - 100};
        }
        List<Position> positions = on(truth, places);
        for (int run = 0; run < runs; run++) {
            List<Position> flat = new ArrayList<>();
            List<Position> curved = new ArrayList<>();
            for (int i = 0; i < places.length; i++) {
                double noise = random.nextGaussian();
                double sag = 10 * Math.pow(places[i][0] / 100, 2);
                Position place = positions.get(i);
                flat.add(at(place.easting(), place.northing(), place.elevation() + noise));
                curved.add(at(place.easting(), place.northing(), place.elevation() + noise - sag));
            }
            rejected +=
                    PlaneThroughPoints.ofPositions(flat).planarityProbability().orElseThrow() < 0.05 ? 1 : 0;
            curvedRejected += PlaneThroughPoints.ofPositions(curved)
                                    .planarityProbability()
                                    .orElseThrow()
                            < 0.05
                    ? 1
                    : 0;
        }
        assertEquals(0.05, rejected / (double) runs, 0.02);
        assertTrue(curvedRejected > 0.95 * runs, curvedRejected + " of " + runs);
    }

    @Test
    void exactSurfacesAreToldWithoutRounding() {
        double[][] grid = new double[9][];
        List<Position> bowl = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            grid[i] = new double[] {10.0 * (i % 3), 10.0 * (i / 3)};
            bowl.add(at(grid[i][0], grid[i][1], Math.pow(grid[i][0] - 10, 2) / 100));
        }
        PlaneOrientation flat = PlaneOrientation.ofDipAndDirection(20, 75);
        assertEquals(
                1,
                PlaneThroughPoints.ofPositions(on(flat, grid))
                        .planarityProbability()
                        .orElseThrow());
        assertTrue(PlaneThroughPoints.ofPositions(bowl).planarityProbability().orElseThrow() < 1e-6);
    }

    @Test
    void pointsOnALineOrTooFewAreRefused() {
        List<Position> line = List.of(at(0, 0, 0), at(1, 2, 3), at(2, 4, 6), at(-1, -2, -3));
        assertThrows(IllegalArgumentException.class, () -> PlaneThroughPoints.ofPositions(line));
        assertThrows(IllegalArgumentException.class, () -> PlaneThroughPoints.ofPositions(line.subList(0, 3)));
        assertThrows(IllegalArgumentException.class, () -> PlaneThroughPoints.ofPositions(line.subList(0, 2)));
        assertThrows(IllegalArgumentException.class, () -> PlaneThroughPoints.ofPositions(List.of()));
        // a line is what is a thousand million times as long as broad
        List<Position> thin = List.of(at(0, 0, 0), at(1e6, 0, 0), at(5e5, 0, 1e-4));
        List<Position> broader = List.of(at(0, 0, 0), at(1e6, 0, 0), at(5e5, 0, 1e-2));
        assertThrows(IllegalArgumentException.class, () -> PlaneThroughPoints.ofPositions(thin));
        assertEquals(90, PlaneThroughPoints.ofPositions(broader).plane().dip(), 1e-6);
        Position one = at(5, 5, 5);
        assertThrows(IllegalArgumentException.class, () -> PlaneThroughPoints.ofPositions(List.of(one, one, one)));
        List<ContactPoint> sharp = List.of(
                ContactPoint.of(at(0, 0, 0), 0), ContactPoint.of(at(1, 0, 0), 1), ContactPoint.of(at(0, 1, 0), 1));
        String exact = assertThrows(IllegalArgumentException.class, () -> PlaneThroughPoints.of(sharp))
                .getMessage();
        assertTrue(exact.startsWith("point 1 has no uncertainty"), exact);
        // known exactly across the plane in which they lie, north = east
        PositionCovariance alongOneLine = new PositionCovariance(1, 1, 1, 1, 1, 1);
        List<ContactPoint> correlated =
                List.of(at(0, 0, 0), at(10, 10, 0), at(0, 0, 10), at(10, 10, 11), at(5, 5, 3)).stream()
                        .map(place -> ContactPoint.of(place, alongOneLine))
                        .toList();
        assertThrows(IllegalArgumentException.class, () -> PlaneThroughPoints.of(correlated));
        assertThrows(IllegalArgumentException.class, () -> PlaneThroughPoints.of(correlated.subList(0, 3)));
        for (double far : new double[] {1e61, 1e100, 1e300}) {
            List<Position> apart = List.of(at(0, 0, 0), at(far, 0, 0), at(0, far, 0), at(far, far, 0));
            String message = assertThrows(IllegalArgumentException.class, () -> PlaneThroughPoints.ofPositions(apart))
                    .getMessage();
            assertTrue(message.startsWith("distance of point 1 from the middle"), message);
        }
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

    @Test
    void readsWithItsBreadth() {
        assertEquals(
                "0.0/000.0 (dip/dip direction), through 3 points, breadth 57.7 %",
                PlaneThroughPoints.ofPositions(List.of(at(0, 0, 7), at(10, 0, 7), at(0, 10, 7)))
                        .toString());
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
