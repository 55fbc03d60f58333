package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthsAndPlacesTest {

    @Property
    void aLengthRoundTheCoreComesBackFromItsAngle(
            @ForAll @DoubleRange(min = 10, max = 500) double diameter,
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double length) {
        CoreDiameter core = CoreDiameter.ofMillimetres(diameter);
        assertEquals(length, core.toMillimetres(core.toDegrees(length)), 4 * Math.ulp(length));
    }

    /** The circumference is pi times the diameter: a whole one is a full turn. */
    @ParameterizedTest
    @CsvSource({"100, 314.1592653589793, 360", "63.5, 49.87278337573797, 90", "60.4, -0.5270894341022875, -1"})
    void aLengthRoundTheCoreIsAnAngle(double diameter, double length, double degrees) {
        assertEquals(degrees, CoreDiameter.ofMillimetres(diameter).toDegrees(length), 1e-8);
        assertEquals(length, CoreDiameter.ofMillimetres(diameter).toMillimetres(degrees), 1e-8);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, -63.5, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void aDiameterIsAboveNought(double diameter) {
        String message = refusal(() -> CoreDiameter.ofMillimetres(diameter));
        assertEquals("core diameter is ", message.substring(0, 17));
        assertEquals(" mm; expected a finite number above 0", message.substring(message.indexOf(" mm")));
    }

    @Test
    void anAngleThatOverflowsIsRefused() {
        assertEquals(
                "angle is Infinity degrees; expected a finite number",
                refusal(() -> CoreDiameter.ofMillimetres(1e-300).toDegrees(1e300)));
        assertEquals(
                "arc length is NaN mm; expected a finite number",
                refusal(() -> CoreDiameter.ofMillimetres(60).toDegrees(Double.NaN)));
        assertEquals(
                "arc length is Infinity mm; expected a finite number",
                refusal(() -> CoreDiameter.ofMillimetres(1e300).toMillimetres(1e300)));
    }

    @Test
    void aPlacePlusAWayIsAPlaceAndItsDifferenceIsTheWay() {
        Position collar = Position.ofEastingNorthingElevation(1000, 2000, 300);
        Displacement way = new Displacement(10, -20, 50);
        Position place = collar.plus(way);
        assertEquals(Position.ofEastingNorthingElevation(980, 2010, 250), place);
        assertEquals(way, place.minus(collar));
        assertEquals(Displacement.ZERO, place.minus(place));
    }

    @Test
    void waysAddUpAndHaveALength() {
        assertEquals(new Displacement(4, -2, 18), new Displacement(1, 2, 3).plus(new Displacement(3, -4, 15)));
        assertEquals(13, new Displacement(3, -4, 12).length(), 1e-14);
        assertEquals(0, Displacement.ZERO.length());
        assertEquals(5e200, new Displacement(3e200, 0, -4e200).length(), 1e185);
    }

    @Test
    void aPlaceIsFinite() {
        assertEquals(
                "easting is NaN m; expected a finite number",
                refusal(() -> Position.ofEastingNorthingElevation(Double.NaN, 0, 0)));
        assertEquals(
                "northing is Infinity m; expected a finite number",
                refusal(() -> Position.ofEastingNorthingElevation(0, Double.POSITIVE_INFINITY, 0)));
        assertEquals(
                "elevation is NaN m; expected a finite number",
                refusal(() -> Position.ofEastingNorthingElevation(0, 0, Double.NaN)));
        assertEquals("north is NaN m; expected a finite number", refusal(() -> new Displacement(Double.NaN, 0, 0)));
        assertEquals("east is NaN m; expected a finite number", refusal(() -> new Displacement(0, Double.NaN, 0)));
        assertEquals(
                "down is -Infinity m; expected a finite number",
                refusal(() -> new Displacement(0, 0, Double.NEGATIVE_INFINITY)));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Displacement(1e308, 0, 0).plus(new Displacement(1e308, 0, 0)));
    }

    @Test
    void aStraightHoleKeepsItsDirectionAndDoesNotTurnTheScribe() {
        HoleDirection direction = HoleDirection.ofDip(-30, 90);
        HolePath path = HolePath.straight(direction);
        assertEquals(direction, path.directionAt(0));
        assertEquals(direction, path.directionAt(1234.5));
        Displacement way = path.displacementAt(100);
        assertEquals(0, way.north(), 1e-13);
        assertEquals(86.60254037844386, way.east(), 1e-13);
        assertEquals(50, way.down(), 1e-13);
        assertEquals(Displacement.ZERO, path.displacementAt(0));
        assertEquals(0.0, path.scribeTurn(100, 20));
        assertEquals(CoreFrame.carriedTo(direction), path.carriedFrameAt(300));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-Double.MIN_VALUE, -5, Double.NaN, Double.POSITIVE_INFINITY})
    void aDepthAboveTheCollarIsRefused(double depth) {
        HolePath path = HolePath.straight(HoleDirection.ofDip(-30, 90));
        String text = depth == -5 ? "-5" : Double.toString(depth);
        String expected = "depth is " + text + " m; expected a finite number, 0 or above";
        assertEquals(expected, refusal(() -> path.directionAt(depth)));
        assertEquals(expected, refusal(() -> path.carriedFrameAt(depth)));
        assertEquals(expected, refusal(() -> path.displacementAt(depth)));
        assertEquals(expected, refusal(() -> path.scribeTurn(depth, 0)));
        assertEquals(expected, refusal(() -> path.scribeTurn(0, depth)));
    }

    private static String refusal(Runnable asked) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, asked::run).getMessage());
    }
}
