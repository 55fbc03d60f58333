package io.github.kernlot.survey.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.survey.SurveyStation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class OutlyingStationProperties {

    private static List<SurveyStation> faulty(long seed, int count) {
        List<SurveyStation> stations = SimulatedHoles.sound(seed, count, 30, 1 + seed % 80, 0.4, 0.2);
        stations.set(count / 2, SimulatedHoles.turned(stations.get(count / 2), 7, seed));
        return stations;
    }

    private static List<Double> depths(List<SurveyStation> stations) {
        return SurveyChecks.assumed().outlying(RawSurvey.ofStations(stations)).stream()
                .map(one -> one.station().depth())
                .toList();
    }

    @Property
    void theNorthThatAzimuthsCountFromDoesNotMatter(
            @ForAll @IntRange(max = 1000) int seed,
            @ForAll @IntRange(min = 4, max = 25) int count,
            @ForAll @DoubleRange(max = 360) double turn) {
        List<SurveyStation> stations = faulty(seed, count);
        List<SurveyStation> turned = stations.stream()
                .map(station ->
                        new SurveyStation(station.depth(), station.direction().withAzimuthTurned(turn)))
                .toList();
        assertEquals(depths(stations), depths(turned));
    }

    @Property
    void aHoleSurveyedFromBelowHasTheSameOutliers(
            @ForAll @IntRange(max = 1000) int seed, @ForAll @IntRange(min = 4, max = 25) int count) {
        List<SurveyStation> stations = faulty(seed, count);
        double end = stations.get(count - 1).depth();
        List<SurveyStation> reversed = stations.stream()
                .map(station -> new SurveyStation(end - station.depth(), station.direction()))
                .toList();
        List<Double> expected = new ArrayList<>(
                depths(stations).stream().map(depth -> end - depth).toList());
        Collections.reverse(expected);
        assertEquals(expected, depths(reversed));
    }

    @Property
    void theOrderOfTheRowsDoesNotMatter(
            @ForAll @IntRange(max = 1000) int seed, @ForAll @IntRange(min = 4, max = 25) int count) {
        List<SurveyStation> stations = faulty(seed, count);
        List<SurveyStation> shuffled = new ArrayList<>(stations);
        Collections.shuffle(shuffled, new Random(seed));
        assertEquals(depths(stations), depths(shuffled));
    }

    @Property
    void noSurveyBreaksTheChecks(@ForAll @IntRange(max = 100_000) int seed, @ForAll @IntRange(max = 30) int count) {
        Random random = new Random(seed);
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double inclination = random.nextInt(4) == 0 ? 180.0 * random.nextInt(2) : 180 * random.nextDouble();
            stations.add(SurveyStation.ofInclination(random.nextInt(20), inclination, 90.0 * random.nextInt(4)));
        }
        List<Finding> findings = SurveyChecks.assumed().findings(RawSurvey.ofStations(stations));
        assertEquals(findings, SurveyChecks.assumed().findings(RawSurvey.ofStations(stations)));
    }
}
