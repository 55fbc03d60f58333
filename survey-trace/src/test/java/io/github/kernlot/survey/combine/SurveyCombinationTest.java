package io.github.kernlot.survey.combine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.SurveyLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class SurveyCombinationTest {

    private static final SurveyRun GYRO = Runs.of("gyro", "0 -60 90; 50 -60 90; 100 -60 90");
    private static final SurveyRun SHOTS = Runs.of("shots", "30 -61 91; 60 -61 91; 90 -61 91; 120 -61 91; 150 -61 91");

    private static List<Double> depths(CombinedSurvey combined) {
        return combined.stations().stream().map(one -> one.station().depth()).toList();
    }

    @Test
    void theFirstSurveyThatCoversADepthGivesIt() {
        CombinedSurvey combined = SurveyCombination.preferring(List.of(GYRO, SHOTS));
        assertEquals(List.of(0.0, 50.0, 100.0, 120.0, 150.0), depths(combined));
        assertEquals(Map.of("gyro", 1.0), combined.stations().get(2).shares());
        assertEquals(Map.of("shots", 1.0), combined.stations().get(3).shares());
        assertEquals(
                "0.00 m -60.0/090.0 (dip/azimuth) from gyro 1.00",
                combined.toString().lines().findFirst().orElseThrow());
        assertEquals(
                List.of(
                        "info at 120.00 m: the direction comes from shots, at 100.00 m from gyro; from there it bends by 1.11 degrees"),
                combined.findings().stream().map(Finding::toString).toList());
        assertEquals(5, combined.survey().stations().size());
    }

    @Test
    void theOrderIsThePriority() {
        assertEquals(
                List.of(0.0, 30.0, 60.0, 90.0, 120.0, 150.0),
                depths(SurveyCombination.preferring(List.of(SHOTS, GYRO))));
    }

    @Test
    void rangesOfDepthAreChosenByCuttingARun() {
        CombinedSurvey combined = SurveyCombination.preferring(List.of(
                GYRO.between(0, 50),
                named("middle", SHOTS.between(60, 90)),
                named("foot", GYRO.between(100, 100)),
                SHOTS));
        assertEquals(List.of(0.0, 50.0, 60.0, 90.0, 100.0, 120.0, 150.0), depths(combined));
    }

    private static SurveyRun named(String name, SurveyRun run) {
        return SurveyRun.of(name, run.survey());
    }

    /** Two equally good stations: half-way between them on their arc. */
    @Test
    void twoEquallyGoodDirectionsMeetHalfWay() {
        CombinedSurvey combined = SurveyCombination.weighing(
                List.of(Runs.of("one", "0 0 80; 30 0 80"), Runs.of("two", "0 0 100; 30 0 100")));
        CombinedStation station = combined.stations().get(0);
        assertEquals(90, station.station().direction().azimuth(), 1e-12);
        assertEquals(0.5, station.shares().get("one"), 1e-15);
        assertEquals(10, station.misfit(), 1e-12);
        assertEquals(0.3 / Math.sqrt(2), station.alongSigma().orElseThrow(), 1e-12);
        assertEquals(Math.hypot(0.3, 1) / Math.sqrt(2), station.acrossSigma().orElseThrow(), 1e-12);
    }

    /** Sigmas 1 and 2, azimuths as good as dips: weights 4 and 1, a fifth of the way along the arc, by the vectors of Hipparchus. */
    @Test
    void theMeanDividesTheArcByTheWeights() {
        HoleDirection near = HoleDirection.ofDip(-40, 20);
        HoleDirection far = HoleDirection.ofDip(-10, 70);
        SurveyRun one = Runs.of("one", List.of(new SurveyStation(0, near))).withSigma(new DirectionSigma(1, 0));
        SurveyRun two = Runs.of("two", List.of(new SurveyStation(0, far))).withSigma(new DirectionSigma(2, 0));
        HoleDirection mean = SurveyCombination.weighing(List.of(one, two))
                .stations()
                .get(0)
                .station()
                .direction();
        double arc = Vector3D.angle(Traces.vector(near), Traces.vector(far));
        assertEquals(arc / 5, Vector3D.angle(Traces.vector(near), Traces.vector(mean)), 1e-13);
        assertEquals(arc * 4 / 5, Vector3D.angle(Traces.vector(far), Traces.vector(mean)), 1e-13);
    }

    /** At the mean the weighted images of the directions cancel, along the vertical and across it, by the vectors of Hipparchus. */
    @Test
    void atTheMeanTheWeightedDifferencesCancel() {
        Random random = new Random(5);
        for (int tries = 0; tries < 100; tries++) {
            List<SurveyRun> runs = new ArrayList<>();
            HoleDirection start = HoleDirection.ofInclination(180 * random.nextDouble(), 360 * random.nextDouble());
            for (int i = 0; i < 3; i++) {
                Vector3D moved = Traces.vector(start)
                        .add(new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                                .scalarMultiply(0.15));
                runs.add(Runs.of("run " + i, List.of(new SurveyStation(0, Traces.direction(moved))))
                        .withSigma(new DirectionSigma(0.1 + random.nextDouble(), 2 * random.nextDouble())));
            }
            HoleDirection mean =
                    SurveyCombination.weighing(runs).stations().get(0).station().direction();
            Vector3D axis = Traces.vector(mean);
            Vector3D right = new Vector3D(
                    -Math.sin(Math.toRadians(mean.azimuth())), Math.cos(Math.toRadians(mean.azimuth())), 0);
            Vector3D high = right.crossProduct(axis);
            double up = 0;
            double across = 0;
            for (SurveyRun run : runs) {
                Vector3D direction =
                        Traces.vector(run.survey().stations().get(0).direction());
                double angle = Vector3D.angle(axis, direction);
                Vector3D side = direction
                        .subtract(axis.scalarMultiply(axis.dotProduct(direction)))
                        .normalize();
                double sine = Math.sin(Math.toRadians(mean.inclination()));
                double dip = Math.pow(run.sigma().dip(), 2);
                up += angle * side.dotProduct(high) / dip;
                across += angle
                        * side.dotProduct(right)
                        / (dip + Math.pow(run.sigma().azimuth() * sine, 2));
            }
            assertEquals(0, up, 1e-10);
            assertEquals(0, across, 1e-10);
        }
    }

    @Test
    void aVerticalHoleHasAMeanToo() {
        CombinedSurvey combined = SurveyCombination.weighing(
                List.of(Runs.of("north", "0 -89 0; 30 -90 0"), Runs.of("south", "0 -89 180; 30 -90 77")));
        for (CombinedStation station : combined.stations()) {
            assertEquals(0, station.station().direction().inclination(), 1e-12);
        }
    }

    @Test
    void aDepthBetweenStationsCountsByItsInterval() {
        SurveyRun one = Runs.of("one", "0 -60 90; 100 -60 90").withSigma(new DirectionSigma(0.4, 0));
        SurveyRun two = Runs.of("two", "0 -60 90; 50 -60 90; 100 -60 90").withSigma(new DirectionSigma(0.4, 0));
        CombinedStation middle = SurveyCombination.weighing(List.of(one, two), 0.06, SurveyLimits.assumed())
                .stations()
                .get(1);
        double arc = 0.16 / 2 + 0.0036 * 25;
        assertEquals(1 / arc / (1 / arc + 1 / 0.16), middle.shares().get("one"), 1e-12);
    }

    /**
     * A hole that wanders and two surveys of it, with the errors that they are said to have: over 400 holes, the combined stations miss the
     * truth by their sigmas, along and across, within 4 %, and by less than either survey.
     */
    @Test
    void theSigmasOfTheMeanAreWhatItMissesBy() {
        Random random = new Random(17);
        DirectionSigma gyro = new DirectionSigma(0.15, 0.3);
        DirectionSigma shots = new DirectionSigma(0.3, 1.0);
        double along = 0;
        double across = 0;
        double misses = 0;
        double gyroMisses = 0;
        int count = 0;
        int gyroCount = 0;
        for (int hole = 0; hole < 400; hole++) {
            double[][] truth = wandering(random, 301, 0.05);
            SurveyRun first = surveyed("gyro", truth, 0, 50, gyro, random);
            SurveyRun second = surveyed("shots", truth, 10, 30, shots, random);
            for (CombinedStation station :
                    SurveyCombination.weighing(List.of(first, second)).stations()) {
                if (station.shares().size() == 2) {
                    double[] miss = miss(station.station(), truth);
                    along += Math.pow(miss[0] / station.alongSigma().orElseThrow(), 2);
                    across += Math.pow(miss[1] / station.acrossSigma().orElseThrow(), 2);
                    misses += miss[0] * miss[0] + miss[1] * miss[1];
                    count++;
                }
            }
            for (SurveyStation station : first.survey().stations()) {
                double[] miss = miss(station, truth);
                gyroMisses += miss[0] * miss[0] + miss[1] * miss[1];
                gyroCount++;
            }
        }
        assertEquals(1, Math.sqrt(along / count), 0.04);
        assertEquals(1, Math.sqrt(across / count), 0.04);
        assertTrue(misses / count < gyroMisses / gyroCount, misses / count + " " + gyroMisses / gyroCount);
    }

    /** Inclination and azimuth every metre. */
    private static double[][] wandering(Random random, int count, double wander) {
        double[][] truth = new double[count][];
        double inclination = 50;
        double azimuth = 100;
        for (int i = 0; i < count; i++) {
            truth[i] = new double[] {inclination, azimuth};
            inclination += wander * random.nextGaussian();
            azimuth += wander * random.nextGaussian() / Math.sin(Math.toRadians(inclination));
        }
        return truth;
    }

    private static SurveyRun surveyed(
            String name, double[][] truth, int first, int spacing, DirectionSigma sigma, Random random) {
        List<SurveyStation> stations = new ArrayList<>();
        for (int depth = first; depth < truth.length; depth += spacing) {
            double sine = Math.sin(Math.toRadians(truth[depth][0]));
            stations.add(SurveyStation.ofInclination(
                    depth,
                    truth[depth][0] + sigma.dip() * random.nextGaussian(),
                    truth[depth][1] + Math.hypot(sigma.azimuth(), sigma.dip() / sine) * random.nextGaussian()));
        }
        return Runs.of(name, stations).withSigma(sigma);
    }

    private static double[] miss(SurveyStation station, double[][] truth) {
        double[] there = truth[(int) station.depth()];
        return new double[] {
            station.direction().inclination() - there[0],
            (station.direction().azimuth() - there[1]) * Math.sin(Math.toRadians(there[0]))
        };
    }

    @Test
    void whereOneSurveySpeaksAloneItsStationStays() {
        CombinedSurvey combined = SurveyCombination.weighing(List.of(GYRO, SHOTS));
        CombinedStation last = combined.stations().get(combined.stations().size() - 1);
        assertEquals(SurveyStation.ofDip(150, -61, 91), last.station());
        assertEquals(OptionalDouble.empty(), last.alongSigma());
        assertEquals(
                Set.of("gyro", "shots"), combined.stations().get(1).shares().keySet());
        assertEquals(
                2,
                combined.findings().stream()
                        .filter(finding -> finding.what().startsWith("the direction comes from"))
                        .count());
    }

    @Test
    void aConstantOffsetIsToldAndStaysInTheMean() {
        SurveyRun one = Runs.of("one", "0 -60 90; 30 -60 91; 60 -60 92; 90 -60 93");
        SurveyRun two = Runs.of("two", "0 -60 94; 30 -60 95; 60 -60 96; 90 -60 97");
        CombinedSurvey combined = SurveyCombination.weighing(List.of(two, one));
        assertEquals(92, combined.stations().get(0).station().direction().azimuth(), 1e-9);
        List<String> found = combined.findings().stream().map(Finding::toString).toList();
        assertEquals(1, found.size(), found.toString());
        assertTrue(
                found.get(0)
                        .startsWith(
                                "warning: the azimuths of two less those of one are 4.00 +- 0.00 degrees from 4 stations throughout; the mean has not been freed of it"),
                found.toString());
    }

    @Test
    void surveysThatDifferMoreThanTheirSigmasAllowAreTold() {
        SurveyRun one = Runs.of("one", "0 -60 90; 30 -60 90; 60 -60 90");
        SurveyRun two = Runs.of("two", "0 -64 90; 30 -56 90; 60 -61 90");
        List<Finding> found = SurveyCombination.weighing(List.of(one, two)).findings();
        assertTrue(found.get(0).what().startsWith("the surveys differ more than their sigmas allow"), found.toString());
        // (16 + 16 + 1) / (2 x 0.09) over 6 degrees of freedom
        assertEquals(
                Math.sqrt(33 / 0.18 / 6),
                found.get(0).measurement().orElseThrow().value(),
                1e-6);
    }

    @Test
    void whatCannotBeCombinedIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> SurveyCombination.preferring(List.of()));
        assertThrows(IllegalArgumentException.class, () -> SurveyCombination.weighing(List.of()));
        assertThrows(IllegalArgumentException.class, () -> SurveyCombination.preferring(List.of(GYRO, GYRO)));
        assertThrows(IllegalArgumentException.class, () -> SurveyCombination.weighing(List.of(GYRO, GYRO)));
        assertThrows(
                IllegalArgumentException.class,
                () -> SurveyCombination.weighing(List.of(GYRO, SHOTS), -1, SurveyLimits.assumed()));
        SurveyRun reversed = Runs.of("reversed", "0 60 90; 50 60 90");
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> SurveyCombination.weighing(List.of(GYRO, reversed)));
        assertEquals(
                "at 0.00 m the surveys gyro and reversed point 120.0 degrees apart; expected at most 90",
                refused.getMessage());
    }
}
