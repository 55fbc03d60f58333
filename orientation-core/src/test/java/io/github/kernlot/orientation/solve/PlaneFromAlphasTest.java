package io.github.kernlot.orientation.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PlaneFromAlphasTest {

    private static final HoleDirection EAST = HoleDirection.ofPlunge(60, 90);
    private static final HoleDirection SOUTH = HoleDirection.ofPlunge(50, 180);
    private static final HoleDirection NORTHWEST = HoleDirection.ofPlunge(70, 315);
    private static final PlaneOrientation TRUTH = PlaneOrientation.ofDipAndDirection(55, 130);

    private static List<AlphaReading> readings(PlaneOrientation plane, double sigma, HoleDirection... holes) {
        List<AlphaReading> readings = new ArrayList<>();
        for (HoleDirection hole : holes) {
            readings.add(AlphaReading.of(hole, Grid.alpha(plane, hole), sigma));
        }
        return readings;
    }

    private static double chiSquare(PlaneOrientation plane, List<AlphaReading> readings) {
        return readings.stream()
                .mapToDouble(reading -> (Grid.alpha(plane, reading.hole()) - reading.alpha()) / reading.alphaSigma())
                .map(off -> off * off)
                .sum();
    }

    @Test
    void aThirdHolePicksOneOfFourPlanes() {
        PlaneFromAlphas two = PlaneFromAlphas.of(readings(TRUTH, 1, EAST, SOUTH));
        assertEquals(4, two.tied().size());
        assertFalse(two.isDecided());
        assertEquals(0.25, two.best().weight(), 1e-6);
        assertTrue(two.probability().isEmpty());
        PlaneFromAlphas three = PlaneFromAlphas.of(readings(TRUTH, 1, EAST, SOUTH, NORTHWEST));
        assertTrue(three.isDecided());
        assertEquals(0, three.best().plane().angleTo(TRUTH), 1e-9);
        assertEquals(1, three.probability().orElseThrow(), 1e-9);
    }

    @Test
    void roundedAlphasOfTheWorkedExampleGiveItsPlane() {
        // source: derived and checked numerically by another program, alphas 11, 6 and 55: 130.36/54.57 by a linear
        // solve, whose weights
        // are others
        PlaneFromAlphas found = PlaneFromAlphas.of(
                List.of(AlphaReading.of(EAST, 11, 1), AlphaReading.of(SOUTH, 6, 1), AlphaReading.of(NORTHWEST, 55, 1)));
        assertTrue(found.isDecided());
        assertTrue(found.best().plane().angleTo(PlaneOrientation.ofDipAndDirection(54.57, 130.36)) < 0.3);
        List<Double> residuals = found.best().residuals();
        for (int i = 0; i < 3; i++) {
            AlphaReading reading = found.readings().get(i);
            assertEquals(reading.alpha() - Grid.alpha(found.best().plane(), reading.hole()), residuals.get(i), 1e-9);
        }
    }

    /** With two degrees of freedom the tail is exp(-x / 2) (handbooks' chi-square tables: 5.991 for 0.05). */
    @Test
    void howProbableTheResidualsAreKeepsItsDigits() {
        for (double off : new double[] {0, 2, 5, 25}) {
            List<AlphaReading> readings = readings(TRUTH, 1, EAST, SOUTH, NORTHWEST, HoleDirection.ofPlunge(80, 20));
            AlphaReading last = readings.remove(3);
            readings.add(AlphaReading.of(last.hole(), last.alpha() - off, 1));
            PlaneFromAlphas found = PlaneFromAlphas.of(readings);
            double expected = Math.exp(-found.best().chiSquare() / 2);
            assertEquals(expected, found.probability().orElseThrow(), 1e-9 * expected);
        }
    }

    @Test
    void ofManyHolesFewPairsSuffice() {
        Random random = new Random(2);
        HoleDirection[] holes = new HoleDirection[3_000];
        for (int i = 0; i < holes.length; i++) {
            holes[i] = HoleDirection.ofPlunge(-90 + 180 * random.nextDouble(), 360 * random.nextDouble());
        }
        PlaneFromAlphas found = PlaneFromAlphas.of(readings(TRUTH, 1, holes));
        assertTrue(found.isDecided());
        assertEquals(0, found.best().plane().angleTo(TRUTH), 1e-9);
    }

    @Test
    void bruteForceFindsNothingBetter() {
        List<PlaneOrientation> grid = Grid.planes(1);
        Random random = new Random(9);
        for (int run = 0; run < 8; run++) {
            List<AlphaReading> readings = new ArrayList<>();
            PlaneOrientation plane =
                    PlaneOrientation.ofDipAndDirection(90 * random.nextDouble(), 360 * random.nextDouble());
            for (int i = 0; i < 3 + run % 4; i++) {
                HoleDirection hole = HoleDirection.ofPlunge(-90 + 180 * random.nextDouble(), 360 * random.nextDouble());
                double alpha = Grid.alpha(plane, hole) + 3 * random.nextGaussian();
                readings.add(AlphaReading.of(hole, Math.max(0, Math.min(90, alpha)), 1 + 2 * random.nextDouble()));
            }
            PlaneFromAlphas found = PlaneFromAlphas.of(readings);
            PlaneOrientation best = grid.stream()
                    .min(Comparator.comparingDouble(each -> chiSquare(each, readings)))
                    .orElseThrow();
            assertTrue(found.best().chiSquare() <= chiSquare(best, readings));
            assertEquals(chiSquare(found.best().plane(), readings), found.best().chiSquare(), 1e-6);
            assertTrue(found.best().plane().angleTo(best) < 2 || found.tied().size() > 1, found::toString);
            for (AlphaCandidate candidate : found.candidates()) {
                grid.stream()
                        .filter(each -> each.angleTo(candidate.plane()) < 0.02)
                        .forEach(each -> assertTrue(chiSquare(each, readings) >= candidate.chiSquare()));
            }
        }
    }

    @Test
    void symmetricHolesStayTied() {
        // the plane and its mirror about the vertical plane of both holes
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(40, 30);
        PlaneFromAlphas found = PlaneFromAlphas.of(
                readings(plane, 0.5, EAST, HoleDirection.ofPlunge(60, 270), HoleDirection.ofPlunge(80, 90)));
        PlaneOrientation mirror = PlaneOrientation.ofDipAndDirection(40, 150);
        assertEquals(2, found.tied().size());
        assertTrue(found.tied().stream().anyMatch(each -> each.plane().angleTo(plane) < 1e-6));
        assertTrue(found.tied().stream().anyMatch(each -> each.plane().angleTo(mirror) < 1e-6));
        assertEquals(0.5, found.best().weight(), 1e-6);
    }

    @Test
    void theCovarianceIsThatOfSimulatedAlphas() {
        double sigma = 0.8;
        HoleDirection[] holes = {EAST, SOUTH, NORTHWEST, HoleDirection.ofPlunge(-30, 40)};
        PlaneEstimate estimate = PlaneFromAlphas.of(readings(TRUTH, sigma, holes))
                .best()
                .estimate()
                .orElseThrow();
        Random random = new Random(3);
        int runs = 1500;
        double dip = 0;
        double strike = 0;
        double both = 0;
        Vector withDip = Poles.withDip(TRUTH);
        Vector withDirection = Poles.withDipDirection(TRUTH);
        for (int i = 0; i < runs; i++) {
            List<AlphaReading> noisy = readings(TRUTH, sigma, holes).stream()
                    .map(each -> AlphaReading.of(each.hole(), each.alpha() + sigma * random.nextGaussian(), sigma))
                    .toList();
            Vector pole = Poles.normal(PlaneFromAlphas.of(noisy).best().plane());
            double onDip = Math.toDegrees(pole.dot(withDip));
            double onStrike = Math.toDegrees(pole.dot(withDirection));
            dip += onDip * onDip / runs;
            strike += onStrike * onStrike / runs;
            both += onDip * onStrike / runs;
        }
        assertEquals(estimate.dipSigma(), Math.sqrt(dip), 0.07 * estimate.dipSigma());
        assertEquals(estimate.strikeSigma(), Math.sqrt(strike), 0.07 * estimate.strikeSigma());
        assertEquals(estimate.correlation(), both / Math.sqrt(dip * strike), 0.08);
    }

    @Test
    void alphaNinetyFixesThePoleWithinItsSigma() {
        PlaneOrientation across = PlaneOrientation.ofDipAndDirection(30, 270);
        PlaneFromAlphas found = PlaneFromAlphas.of(
                List.of(AlphaReading.of(EAST, 90, 1), AlphaReading.of(SOUTH, Grid.alpha(across, SOUTH), 1)));
        assertEquals(0, found.best().plane().angleTo(across), 1e-6);
        PlaneEstimate estimate = found.best().estimate().orElseThrow();
        assertTrue(estimate.greatestSigma() < 1.001 && estimate.leastSigma() > 0.6, estimate::toString);
    }

    @Test
    void nearlyParallelHolesLeaveAWayOpen() {
        HoleDirection near = HoleDirection.ofPlunge(60, 90.00001);
        PlaneFromAlphas found = PlaneFromAlphas.of(readings(TRUTH, 1, EAST, near));
        assertTrue(found.best().estimate().isEmpty()
                || found.best().estimate().orElseThrow().greatestSigma() > 1000);
    }

    @Test
    void contradictingAlphasGiveTheNearestPlaneAndItsResiduals() {
        // cones 10 and 10 about holes 60 apart: the pole lies half way, 20 off in both
        PlaneFromAlphas found = PlaneFromAlphas.of(List.of(
                AlphaReading.of(HoleDirection.ofPlunge(60, 0), 80, 2),
                AlphaReading.of(HoleDirection.ofPlunge(60, 180), 80, 2)));
        assertEquals(0, found.best().plane().dip(), 1e-6);
        assertEquals(20, found.best().residuals().get(0), 1e-6);
        assertEquals(200, found.best().chiSquare(), 1e-4);
    }

    @Test
    void tooFewOrParallelHolesAreRefused() {
        AlphaReading one = AlphaReading.of(EAST, 40, 2);
        AlphaReading back = AlphaReading.of(HoleDirection.ofPlunge(-60, 270), 41, 2);
        assertThrows(IllegalArgumentException.class, () -> PlaneFromAlphas.of(List.of()));
        assertThrows(IllegalArgumentException.class, () -> PlaneFromAlphas.of(List.of(one)));
        assertThrows(IllegalArgumentException.class, () -> PlaneFromAlphas.of(List.of(one, back)));
        assertThrows(IllegalArgumentException.class, () -> AlphaReading.of(EAST, 40, 0));
        assertThrows(IllegalArgumentException.class, () -> AlphaReading.of(EAST, Double.NaN, 1));
    }

    @Test
    void readsAsAList() {
        String text =
                PlaneFromAlphas.of(readings(TRUTH, 1, EAST, SOUTH, NORTHWEST)).toString();
        assertEquals(
                "3 alphas, one plane, p = 1.0 of residuals so large\n55.0/130.0 (dip/dip direction), chi-square 0.0, weight 1.00",
                text);
        assertEquals(
                "alpha 40.0 +- 2.0 in -60.0/090.0 (dip/azimuth)",
                AlphaReading.of(EAST, 40, 2).toString());
    }
}
