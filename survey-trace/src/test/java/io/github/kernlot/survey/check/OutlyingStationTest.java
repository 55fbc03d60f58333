package io.github.kernlot.survey.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.survey.SurveyStation;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutlyingStationTest {

    private static final SurveyChecks CHECKS = SurveyChecks.assumed();

    private static List<OutlyingStation> outlying(List<SurveyStation> stations) {
        return CHECKS.outlying(RawSurvey.ofStations(stations));
    }

    /**
     * USGS, Positions and orientations of geophones in the SAFOD Pilot Hole (US government data): the azimuth of geophone 2 is printed
     * as 160; its neighbours and the printed positions say 340. The hole stands within 3.3 degrees of vertical.
     */
    private static List<SurveyStation> geophones(double azimuthOfGeophone2) throws IOException {
        List<SurveyStation> stations = new ArrayList<>();
        try (InputStream table = OutlyingStationTest.class.getResourceAsStream("/gyro-hole/surveys.csv")) {
            List<String> lines = new String(table.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(",");
                double azimuth = cells[4].equals("2") ? azimuthOfGeophone2 : Double.parseDouble(cells[2]);
                stations.add(SurveyStation.ofDip(Double.parseDouble(cells[1]), Double.parseDouble(cells[3]), azimuth));
            }
        }
        return stations;
    }

    @Test
    void theReversedAzimuthOfThePublishedGyroSurveyIsFoundAndNoOther() throws IOException {
        List<OutlyingStation> found = outlying(geophones(160));
        assertEquals(1, found.size(), found.toString());
        OutlyingStation one = found.get(0);
        assertEquals(SurveyStation.ofDip(560.39, -87.4, 160), one.station());
        assertEquals(Optional.of(StationSlip.REVERSED_AZIMUTH), one.slip());
        assertFalse(one.end());
        assertTrue(one.angle() > 5 && one.limit() < 2, one.toString());
    }

    @Test
    void withTheAzimuthPutRightNothingIsSaidOfThePublishedGyroSurvey() throws IOException {
        assertEquals(List.of(), CHECKS.findings(RawSurvey.ofStations(geophones(340))));
    }

    @Test
    void whateverStationOfThePublishedGyroSurveyIsTurnedFarEnoughIsFoundAlone() throws IOException {
        List<SurveyStation> sound = geophones(340);
        for (int i = 0; i < sound.size(); i++) {
            List<SurveyStation> stations = new ArrayList<>(sound);
            HoleDirection direction = stations.get(i).direction();
            stations.set(
                    i,
                    SurveyStation.ofInclination(
                            stations.get(i).depth(), direction.inclination() + 8, direction.azimuth()));
            List<OutlyingStation> found = outlying(stations);
            assertEquals(1, found.size(), i + ": " + found);
            assertEquals(stations.get(i), found.get(0).station());
            assertEquals(i == 0 || i == sound.size() - 1, found.get(0).end());
        }
    }

    @ParameterizedTest
    @EnumSource(StationSlip.class)
    void aPlantedSlipIsNamed(StationSlip slip) {
        List<SurveyStation> stations = SimulatedHoles.sound(5, 12, 30, 55, 0.3, 0.2);
        SurveyStation one = stations.get(6);
        // its own inverse, but for the dip that was written as an inclination
        stations.set(6, new SurveyStation(one.depth(), slip.undone(one.direction())));
        List<OutlyingStation> found = outlying(stations);
        assertEquals(1, found.size(), found.toString());
        assertEquals(one.depth(), found.get(0).station().depth());
        assertEquals(Optional.of(slip), found.get(0).slip());
    }

    @Test
    void slipsAreUndoneByHand() {
        HoleDirection direction = HoleDirection.ofDip(-60, 100);
        assertEquals(HoleDirection.ofDip(-60, 280), StationSlip.REVERSED_AZIMUTH.undone(direction));
        assertEquals(HoleDirection.ofDip(60, 100), StationSlip.MIRRORED_DIP.undone(direction));
        assertEquals(HoleDirection.ofDip(-30, 100), StationSlip.DIP_FROM_VERTICAL.undone(direction));
        assertEquals(HoleDirection.ofDip(-60, 260), StationSlip.ANTICLOCKWISE_AZIMUTH.undone(direction));
        assertEquals(HoleDirection.ofDip(30, 0), StationSlip.DIP_FROM_VERTICAL.undone(HoleDirection.ofDip(60, 0)));
    }

    /** A bend that lasts is the hole's, not a station's. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 5, 10, 30})
    void theStationsAtAKinkOrInABuildAreNotBlamed(double degrees) {
        List<SurveyStation> kink = new ArrayList<>();
        List<SurveyStation> build = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            kink.add(SurveyStation.ofInclination(30 * i, i < 6 ? 20 : 20 + degrees, 90));
            build.add(SurveyStation.ofInclination(30 * i, 20 + Math.max(0, i - 5) * degrees / 2, 90));
        }
        assertEquals(List.of(), outlying(kink));
        assertEquals(List.of(), outlying(build));
    }

    @Test
    void twoWrongStationsApartAreBothFound() {
        List<SurveyStation> stations = SimulatedHoles.sound(9, 20, 30, 60, 0.3, 0.2);
        for (int i : new int[] {4, 13}) {
            stations.set(
                    i, new SurveyStation(30.0 * i, stations.get(i).direction().withAzimuthTurned(i)));
        }
        assertEquals(
                List.of(120.0, 390.0),
                outlying(stations).stream().map(one -> one.station().depth()).toList());
    }

    @Test
    void withThreeStationsNobodyKnowsWhichOneIsWrong() {
        List<SurveyStation> three = List.of(
                SurveyStation.ofDip(0, -60, 0), SurveyStation.ofDip(30, -60, 90), SurveyStation.ofDip(60, -60, 0));
        assertEquals(List.of(), outlying(three));
    }

    /**
     * Of simulated sound holes, 1,000 for each row: the share with any station blamed, and with a planted error of 6 degrees the share
     * where that station is found and alone. The limits are what was measured, with room.
     */
    @ParameterizedTest
    @CsvSource({
        "4, 0.3, 0.1, 0.005, 0.85",
        "6, 0.3, 0.3, 0.010, 0.85",
        "12, 0.3, 0.3, 0.010, 0.93",
        "20, 0.3, 0.5, 0.025, 0.90",
        "20, 1.0, 0.5, 0.025, 0.60",
        "40, 0.3, 0.5, 0.020, 0.90"
    })
    void falseAlarmsAreRareAndPlantedErrorsAreFound(
            int count, double wander, double noise, double falseAlarms, double power) {
        int blamed = 0;
        int found = 0;
        int holes = 1000;
        for (int hole = 0; hole < holes; hole++) {
            // one in three is steep
            List<SurveyStation> stations = SimulatedHoles.sound(hole, count, 30, hole % 3 == 0 ? 3 : 40, wander, noise);
            blamed += outlying(stations).isEmpty() ? 0 : 1;
            int at = hole % count;
            stations.set(at, SimulatedHoles.turned(stations.get(at), 6, hole * 37.0));
            List<OutlyingStation> after = outlying(stations);
            found += after.size() == 1 && after.get(0).station().equals(stations.get(at)) ? 1 : 0;
        }
        assertTrue(blamed <= falseAlarms * holes, "blamed in " + blamed);
        assertTrue(found >= power * holes, "found in " + found);
    }

    /** Stations every 3 m and then every 60 m: between those the hole wanders by more, and they are not blamed for it. */
    @Test
    void whereStationsLieFarApartMoreIsAllowed() {
        int blamed = 0;
        for (int hole = 0; hole < 300; hole++) {
            List<SurveyStation> stations = SimulatedHoles.sound(hole, 120, 3, 40, 0.25, 0.05).stream()
                    .filter(station -> station.depth() < 100 || station.depth() % 60 == 0)
                    .toList();
            blamed += outlying(stations).isEmpty() ? 0 : 1;
        }
        assertTrue(blamed <= 6, "blamed in " + blamed);
    }
}
