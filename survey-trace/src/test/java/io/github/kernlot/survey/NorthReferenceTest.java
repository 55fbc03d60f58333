package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NorthReferenceTest {

    private static OptionalDouble optional(Double angle) {
        return angle == null ? OptionalDouble.empty() : OptionalDouble.of(angle);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "norths.csv", useHeadersInDisplayName = true)
    void azimuthsChangeNorthAsTheirCheckValuesSay(
            North from,
            North to,
            Double declination,
            Double convergence,
            double azimuth,
            double expected,
            double tolerance,
            String source) {
        NorthReference reference = new NorthReference(from, optional(declination), optional(convergence));

        assertEquals(0, Traces.apart(expected, azimuth + reference.toAdd(to)), tolerance, source);
    }

    @ParameterizedTest
    @CsvSource({
        "MAGNETIC, TRUE, , 1, declination",
        "TRUE, MAGNETIC, , 1, declination",
        "MAGNETIC, GRID, , 1, declination",
        "GRID, MAGNETIC, , 1, declination",
        "MAGNETIC, GRID, 3, , grid convergence",
        "GRID, MAGNETIC, 3, , grid convergence",
        "GRID, TRUE, 3, , grid convergence",
        "TRUE, GRID, 3, , grid convergence"
    })
    void whatWasNotGivenIsNeverTakenAsZero(
            North from, North to, Double declination, Double convergence, String missing) {
        NorthReference reference = new NorthReference(from, optional(declination), optional(convergence));

        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> reference.toAdd(to));

        assertTrue(refused.getMessage().contains("no " + missing + " was given"), refused.getMessage());
    }

    @Test
    void whatIsNotNeededNeedNotBeGiven() {
        NorthReference noConvergence = new NorthReference(North.MAGNETIC, OptionalDouble.of(3), OptionalDouble.empty());

        assertEquals(3, noConvergence.toAdd(North.TRUE));
        assertEquals(-1.5, NorthReference.trueNorth(1.5).toAdd(North.GRID));
        assertEquals(0, NorthReference.grid().toAdd(North.GRID));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-180.01, 180.01, Double.NaN})
    void anAngleBeyondHalfATurnIsRefusedByName(double angle) {
        String declination = assertThrows(IllegalArgumentException.class, () -> NorthReference.magnetic(angle, 0))
                .getMessage();
        String convergence = assertThrows(IllegalArgumentException.class, () -> NorthReference.trueNorth(angle))
                .getMessage();

        assertTrue(declination.startsWith("declination is "), declination);
        assertTrue(convergence.startsWith("grid convergence is "), convergence);
        assertTrue(convergence.contains("[-180, 180]"), convergence);
    }

    @Test
    void aReferencePrintsWhatIsKnown() {
        assertEquals("grid north", NorthReference.grid().toString());
        assertEquals(
                "true north (convergence 1.5)", NorthReference.trueNorth(1.5).toString());
        assertEquals(
                "magnetic north (declination 3.2, convergence -1.1)",
                NorthReference.magnetic(3.2, -1.1).toString());
        assertEquals(
                "magnetic north (declination 3.2)",
                new NorthReference(North.MAGNETIC, OptionalDouble.of(3.2), OptionalDouble.empty()).toString());
    }

    @Test
    void sourcesOfAnglesArePrintedAndKept() {
        NorthReference reference =
                NorthReference.magnetic(3.2, -1.1).withDeclinationFrom("a map").withConvergenceFrom("a grid");

        assertEquals("magnetic north (declination 3.2 from a map, convergence -1.1 from a grid)", reference.toString());
        assertEquals("a map", reference.with(North.GRID).declinationSource());
        assertEquals("a grid", reference.with(North.GRID).convergenceSource());
        assertEquals("given", NorthReference.grid().declinationSource());
    }

    @Test
    void aSourceNeedsAnAngleAndWords() {
        NorthReference grid = NorthReference.grid();
        NorthReference known = NorthReference.magnetic(3.2, -1.1);

        assertThrows(IllegalArgumentException.class, () -> grid.withDeclinationFrom("a map"));
        assertThrows(IllegalArgumentException.class, () -> grid.withConvergenceFrom("a map"));
        assertThrows(IllegalArgumentException.class, () -> known.withDeclinationFrom(" "));
        assertThrows(IllegalArgumentException.class, () -> known.withConvergenceFrom(""));
    }
}
