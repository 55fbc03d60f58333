package io.github.kernlot.orientation.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class DegreesTest {

    @Test
    void multiplesOfThirtyAreExactWhereTheSineIs() {
        double[] sines = {0, 0.5, Math.sqrt(0.75), 1, Math.sqrt(0.75), 0.5, 0, -0.5, -Math.sqrt(0.75), -1};
        for (int turn = -5; turn <= 5; turn++) {
            for (int i = 0; i < sines.length; i++) {
                assertEquals(sines[i], Degrees.sin(360.0 * turn + 30 * i));
                assertEquals(sines[i], Degrees.cos(360.0 * turn + 30 * i - 90));
            }
        }
    }

    @Test
    void quarterTurnsAreExactHoweverFar() {
        assertEquals(1.0, Degrees.sin(360e10 + 90));
        assertEquals(0.0, Degrees.cos(360e10 + 90));
        assertEquals(-1.0, Degrees.cos(-360e10 - 180));
    }

    @Property
    void sineIsOddAndCosineIsEven(@ForAll @DoubleRange(min = -1e4, max = 1e4) double angle) {
        assertEquals(Degrees.sin(angle) + 0.0, -Degrees.sin(-angle) + 0.0);
        assertEquals(Degrees.cos(angle), Degrees.cos(-angle));
    }

    @Property
    void aQuarterTurnMakesASineACosine(@ForAll @DoubleRange(min = 0, max = 44.9) double angle) {
        // so few digits that 90 - angle is exact
        double coarse = Math.rint(angle * 0x1p40) * 0x1p-40;
        assertEquals(Degrees.cos(coarse), Degrees.sin(90 - coarse));
        assertEquals(Degrees.sin(coarse), Degrees.cos(90 - coarse));
        assertEquals(Degrees.sin(coarse), Degrees.sin(180 - coarse));
    }

    /** What the classes of general-purpose libraries make of these inputs differs; the contract here is the interval. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "wrapping.csv", useHeadersInDisplayName = true)
    void anAngleIsWrappedIntoItsInterval(double input, double into360, double into180) {
        assertEquals(into360, Degrees.wrap360(input));
        assertEquals(into180, Degrees.wrap180(input));
    }

    @Property
    void aWrappedAngleIsTheSameAngle(@ForAll @DoubleRange(min = -1e5, max = 1e5) double angle) {
        double around = Degrees.wrap360(angle);
        double about = Degrees.wrap180(angle);
        assertTrue(around >= 0 && around < 360);
        assertTrue(about > -180 && about <= 180);
        assertEquals(0, Math.IEEEremainder(around - angle, 360), 1e-13 + Math.ulp(angle));
        assertEquals(0, Math.IEEEremainder(about - angle, 360), Math.ulp(angle));
        assertEquals(around, Degrees.wrap360(around));
        assertEquals(about, Degrees.wrap180(about));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1, 0",
        "1, 1, 45",
        "1, 0, 90",
        "1, -1, 135",
        "0, -1, 180",
        "-1, 0, -90",
        "-0.0, -1, 180",
        "0, 0, 0",
        "0, -0.0, 0",
        "-0.0, -0.0, 0",
        "-0.0, 1, 0",
        "-1, -1, -135",
        "1e-300, -1, 180",
        "-1e-300, -1, -180"
    })
    void theAngleOfAVectorIsCountedFromXTowardsY(double y, double x, double angle) {
        assertEquals(angle, Degrees.atan2(y, x));
        assertEquals(angle < 0 ? angle + 360 : angle, Degrees.azimuth(y, x));
    }

    @Test
    void anAzimuthBarelyWestOfNorthIsNorth() {
        assertEquals(0.0, Degrees.azimuth(-1e-20, 1));
        assertEquals(Math.nextDown(360.0), Degrees.azimuth(-1e-15, 1));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 000.0",
        "7.5, 007.5",
        "12.25, 012.3",
        "12.24999, 012.2",
        "99.95, 100.0",
        "359.94, 359.9",
        "359.95, 000.0",
        "359.96, 000.0"
    })
    void anAzimuthHasThreeDigitsBeforeThePoint(double azimuth, String text) {
        assertEquals(text, Degrees.azimuthText(azimuth));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.0", "-0.0, 0.0", "-0.04, 0.0", "-0.06, -0.1", "62.44, 62.4", "-60, -60.0", "89.96, 90.0"})
    void anAngleHasOneDigitAfterThePoint(double angle, String text) {
        assertEquals(text, Degrees.text(angle));
    }
}
