package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** How a straight line on the core turns from the low side. */
class CarriedFrameTest {

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "carried-line.csv", useHeadersInDisplayName = true)
    void overOneArcTheLineTurnsFromTheLowSide(
            String id,
            double fromInclination,
            double fromAzimuth,
            double toInclination,
            double toAzimuth,
            double turn) {
        CoreFrame start = CoreFrame.at(HoleDirection.ofInclination(fromInclination, fromAzimuth), 0);
        CoreFrame end = start.carriedAlong(HoleDirection.ofInclination(toInclination, toAzimuth));
        assertEquals(turn, Math.IEEEremainder(end.lineAngle(), 360), 0.00006);
    }

    @Test
    void overASurveyTheTurnsAddUp() {
        List<String[]> stations = rows("carried-line-survey.csv");
        CoreFrame carried = CoreFrame.at(direction(stations.get(0)), 0);
        double total = 0;
        for (String[] station : stations.subList(1, stations.size())) {
            CoreFrame next = carried.carriedAlong(direction(station));
            double turn = Math.IEEEremainder(next.lineAngle() - carried.lineAngle(), 360);
            assertEquals(Double.parseDouble(station[3]), turn, 0.00006, () -> "turn to depth " + station[0]);
            total += turn;
            carried = next;
        }
        assertEquals(-11.4270, total, 0.00006);

        // the plane that was read from the line, with the turn left out and with it
        HoleDirection bottom = direction(stations.get(stations.size() - 1));
        PlaneOrientation uncorrected = CoreFrame.at(bottom, 0).toGeographic(CorePlane.of(35, 120));
        PlaneOrientation corrected = carried.toGeographic(CorePlane.of(35, 120));
        assertEquals(45.81, uncorrected.dip(), 0.006);
        assertEquals(21.38, uncorrected.dipDirection(), 0.006);
        assertEquals(50.99, corrected.dip(), 0.006);
        assertEquals(10.94, corrected.dipDirection(), 0.006);
        assertEquals(9.36, corrected.angleTo(uncorrected), 0.006);
    }

    @Test
    void aFullTurnOfASteepHoleIsNotUndone() {
        // -360 cos(5) of a hole that goes round at inclination 5, in many short arcs
        CoreFrame frame = CoreFrame.at(HoleDirection.ofInclination(5, 0), 0);
        double turn = 0;
        for (int i = 1; i <= 36_000; i++) {
            CoreFrame next = frame.carriedAlong(HoleDirection.ofInclination(5, i / 100.0));
            turn += Math.IEEEremainder(next.lineAngle() - frame.lineAngle(), 360);
            frame = next;
        }
        assertEquals(-358.630091, turn, 1e-5);
    }

    @Test
    void oppositeDirectionsHaveNoSmallestRotation() {
        CoreFrame frame = CoreFrame.at(HoleDirection.ofInclination(40, 20), 0);
        frame.carriedAlong(HoleDirection.ofInclination(139.8, 200));
        Exception refused = assertThrows(
                IllegalArgumentException.class, () -> frame.carriedAlong(HoleDirection.ofInclination(139.95, 200)));
        assertTrue(Objects.requireNonNull(refused.getMessage()).startsWith("dogleg is 179.95"), refused.getMessage());
        assertTrue(refused.getMessage().endsWith("degrees; expected within [0, 179.9]"), refused.getMessage());
        assertThrows(IllegalArgumentException.class, () -> frame.carriedAlong(HoleDirection.ofInclination(140, 200)));
    }

    @Test
    void carryingIntoTheSameDirectionChangesNothing() {
        CoreFrame frame = CoreFrame.at(HoleDirection.ofInclination(40, 20), 77);
        assertEquals(77, frame.carriedAlong(HoleDirection.ofInclination(40, 20)).lineAngle(), 1e-13);
    }

    private static HoleDirection direction(String[] station) {
        return HoleDirection.ofPlunge(Double.parseDouble(station[1]), Double.parseDouble(station[2]));
    }

    private static List<String[]> rows(String resource) {
        try {
            Path file = Path.of(Objects.requireNonNull(CarriedFrameTest.class.getResource(resource))
                    .toURI());
            return Files.readAllLines(file).stream()
                    .skip(1)
                    .map(line -> line.split(","))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
