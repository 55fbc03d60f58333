package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A gyro survey with positions that were published beside it: USGS, Positions and orientations of geophones in the SAFOD Pilot
 * Hole (US government data), eastings and northings rounded to 0.5 m, inclinations to 0.1 degrees. The printed azimuth of geophone
 * 2 points the wrong way: 160 for 340.
 */
class GyroSurveyTest {

    private record Geophone(double easting, double northing, double elevation, HoleDirection direction) {}

    /** From the top down. */
    private static List<Geophone> geophones(double azimuthOfGeophone2) throws IOException {
        List<Geophone> geophones = new ArrayList<>();
        try (InputStream table = GyroSurveyTest.class.getResourceAsStream("gyro-survey.csv")) {
            List<String> lines = new String(table.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(",");
                double azimuth = cells[0].equals("2") ? azimuthOfGeophone2 : Double.parseDouble(cells[4]);
                geophones.add(new Geophone(
                        Double.parseDouble(cells[1]),
                        Double.parseDouble(cells[2]),
                        Double.parseDouble(cells[3]),
                        HoleDirection.ofInclination(Double.parseDouble(cells[5]), azimuth)));
            }
        }
        return geophones;
    }

    /** Each course is as long as makes the arc descend by the printed difference of elevations. */
    private static HoleTrace trace(List<Geophone> geophones) {
        List<SurveyStation> stations = new ArrayList<>();
        double depth = 0;
        stations.add(new SurveyStation(depth, geophones.get(0).direction()));
        for (int i = 1; i < geophones.size(); i++) {
            Geophone upper = geophones.get(i - 1);
            Geophone lower = geophones.get(i);
            HoleTrace oneMetre = Traces.of(
                    List.of(new SurveyStation(0, upper.direction()), new SurveyStation(1, lower.direction())));
            depth += (upper.elevation() - lower.elevation())
                    / oneMetre.displacementAt(1).down();
            stations.add(new SurveyStation(depth, lower.direction()));
        }
        return Traces.of(stations);
    }

    private static void assertFarthest(double east, double north, double azimuthOfGeophone2) throws IOException {
        List<Geophone> geophones = geophones(azimuthOfGeophone2);
        HoleTrace trace = trace(geophones);
        double farthestEast = 0;
        double farthestNorth = 0;
        for (int i = 0; i < geophones.size(); i++) {
            Displacement way =
                    trace.displacementAt(trace.survey().stations().get(i).depth());
            Geophone geophone = geophones.get(i);
            Geophone first = geophones.get(0);
            farthestEast = Math.max(farthestEast, Math.abs(geophone.easting() - first.easting() - way.east()));
            farthestNorth = Math.max(farthestNorth, Math.abs(geophone.northing() - first.northing() - way.north()));
            assertEquals(first.elevation() - geophone.elevation(), way.down(), 1e-9);
        }
        assertEquals(east, farthestEast, 0.005);
        assertEquals(north, farthestNorth, 0.005);
    }

    @Test
    void thePublishedPositionsAreMetWithinTheirRoundingOnceTheReversedAzimuthIsPutRight() throws IOException {
        assertFarthest(0.50, 0.73, 340);
    }

    @Test
    void theReversedAzimuthAsPrintedMissesThePublishedPositionsByMetres() throws IOException {
        assertFarthest(0.93, 3.56, 160);
    }

    @Test
    void onlyTheReversedAzimuthMakesADoglegAboveFiveDegrees() throws IOException {
        assertEquals(2, doglegsAbove(5, geophones(160)));
        assertEquals(0, doglegsAbove(1.3, geophones(340)));
    }

    private static long doglegsAbove(double limit, List<Geophone> geophones) {
        long found = 0;
        for (int i = 1; i < geophones.size(); i++) {
            found += geophones.get(i).direction().angleTo(geophones.get(i - 1).direction()) > limit ? 1 : 0;
        }
        return found;
    }
}
