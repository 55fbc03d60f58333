package io.github.kernlot.survey.combine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import io.github.kernlot.survey.check.SimulatedHoles;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

class SurveyCombinationProperties {

    /** Three runs of one hole, with stations at their own depths. */
    private static List<SurveyRun> runs(int seed, boolean alike, UnaryOperator<SurveyStation> turned) {
        Random random = new Random(seed);
        List<SurveyStation> hole = SimulatedHoles.sound(seed, 40, 5, 1 + seed % 85, 0.3, 0);
        List<SurveyRun> runs = new ArrayList<>();
        for (int run = 0; run < 3; run++) {
            List<SurveyStation> stations = new ArrayList<>();
            for (int i = run; i < hole.size() - run; i += run + 2) {
                SurveyStation station = hole.get(i);
                stations.add(turned.apply(SimulatedHoles.turned(
                        station, 1.5 * Math.abs(random.nextGaussian()), 360 * random.nextDouble())));
            }
            double dip = 0.1 + random.nextDouble();
            runs.add(Runs.of("run " + run, stations)
                    .withSigma(new DirectionSigma(dip, alike ? 0 : 2 * random.nextDouble())));
        }
        return runs;
    }

    private static void assertNear(List<CombinedStation> expected, List<CombinedStation> actual, double degrees) {
        assertEquals(expected.size(), actual.size());
        for (int i = 0; i < expected.size(); i++) {
            double apart = expected.get(i)
                    .station()
                    .direction()
                    .angleTo(actual.get(i).station().direction());
            assertTrue(apart <= degrees, expected.get(i) + " and " + actual.get(i));
        }
    }

    @Property
    void theOrderOfTheSurveysDoesNotMatter(@ForAll @IntRange(max = 10_000) int seed) {
        List<SurveyRun> runs = runs(seed, false, station -> station);
        List<SurveyRun> shuffled = new ArrayList<>(runs);
        Collections.shuffle(shuffled, new Random(seed));
        assertEquals(SurveyCombination.weighing(runs), SurveyCombination.weighing(shuffled));
    }

    @Property
    void equalSurveysGiveThemselves(@ForAll @IntRange(max = 10_000) int seed) {
        SurveyRun run = runs(seed, false, station -> station).get(1);
        CombinedSurvey combined = SurveyCombination.weighing(
                List.of(run, SurveyRun.of("again", run.survey()), SurveyRun.of("and again", run.survey())));
        for (int i = 0; i < combined.stations().size(); i++) {
            SurveyStation expected = run.survey().stations().get(i);
            SurveyStation station = combined.stations().get(i).station();
            assertEquals(expected.depth(), station.depth());
            assertEquals(0, expected.direction().angleTo(station.direction()), 1e-12);
        }
    }

    @Property
    void theSharesSumToOneAndTheMeanLiesAmongTheSurveys(@ForAll @IntRange(max = 10_000) int seed) {
        List<SurveyRun> runs = runs(seed, false, station -> station);
        for (CombinedStation station : SurveyCombination.weighing(runs).stations()) {
            assertEquals(
                    1,
                    station.shares().values().stream()
                            .mapToDouble(share -> share)
                            .sum(),
                    1e-12);
            assertTrue(station.misfit() < 20, station.toString());
        }
    }

    @Property
    void theNorthThatAzimuthsCountFromDoesNotMatter(
            @ForAll @IntRange(max = 10_000) int seed, @ForAll @DoubleRange(max = 360) double angle) {
        UnaryOperator<SurveyStation> turn = station ->
                new SurveyStation(station.depth(), station.direction().withAzimuthTurned(angle));
        List<CombinedStation> expected =
                SurveyCombination.weighing(runs(seed, false, station -> station)).stations().stream()
                        .map(one -> new CombinedStation(
                                turn.apply(one.station()),
                                one.shares(),
                                one.misfit(),
                                one.alongSigma(),
                                one.acrossSigma()))
                        .toList();
        assertNear(expected, SurveyCombination.weighing(runs(seed, false, turn)).stations(), 1e-10);
    }

    /** Where azimuths are as good as dips nothing is special about the vertical. */
    @Property
    void anyRotationTurnsTheMeanAlong(
            @ForAll @IntRange(max = 10_000) int seed,
            @ForAll @DoubleRange(max = 360) double angle,
            @ForAll @DoubleRange(max = 360) double about,
            @ForAll @DoubleRange(min = -90, max = 90) double above) {
        Rotation rotation = new Rotation(
                new Vector3D(Math.toRadians(about), Math.toRadians(above)),
                Math.toRadians(angle),
                RotationConvention.VECTOR_OPERATOR);
        UnaryOperator<SurveyStation> turn = station -> new SurveyStation(
                station.depth(), Traces.direction(rotation.applyTo(Traces.vector(station.direction()))));
        List<CombinedStation> expected =
                SurveyCombination.weighing(runs(seed, true, station -> station)).stations().stream()
                        .map(one -> new CombinedStation(
                                turn.apply(one.station()),
                                one.shares(),
                                one.misfit(),
                                one.alongSigma(),
                                one.acrossSigma()))
                        .toList();
        assertNear(expected, SurveyCombination.weighing(runs(seed, true, turn)).stations(), 1e-10);
    }

    @Property
    void aSurveyThatIsFarBetterPrevailsWhereItHasStations(@ForAll @IntRange(max = 10_000) int seed) {
        List<SurveyRun> runs = new ArrayList<>(runs(seed, false, station -> station));
        runs.set(0, runs.get(0).withSigma(new DirectionSigma(1e-6, 0)));
        CombinedSurvey weighed = SurveyCombination.weighing(runs);
        CombinedSurvey preferred = SurveyCombination.preferring(runs);
        for (CombinedStation one : preferred.stations()) {
            CombinedStation same = weighed.stations().stream()
                    .filter(other -> other.station().depth() == one.station().depth())
                    .findFirst()
                    .orElseThrow();
            if (one.shares().containsKey("run 0")) {
                assertEquals(0, one.station().direction().angleTo(same.station().direction()), 1e-8);
                assertEquals(1, same.shares().get("run 0"), 1e-9);
            }
        }
    }
}
