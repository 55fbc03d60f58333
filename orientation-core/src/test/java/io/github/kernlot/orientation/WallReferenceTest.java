package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WallReferenceTest {

    private static final HoleDirection DOWN = HoleDirection.ofInclination(0, 40);
    private static final HoleDirection UP = HoleDirection.ofInclination(180, 40);

    @Test
    void aVerticalHoleHasNoLowSideAndTheErrorNamesTheWayOut() {
        String expected = "a vertical hole has no low side; use a mark referred to north (WallReference.north())";
        CoreFrame vertical = CoreFrame.at(DOWN, WallReference.north(), 0);
        assertEquals(expected, refusal(() -> CoreFrame.at(DOWN, 0)));
        assertEquals(expected, refusal(() -> CoreFrame.at(UP, 0)));
        assertEquals(expected, refusal(vertical::lineAngle));
        assertEquals(expected.replace("low", "high"), refusal(() -> CoreFrame.at(DOWN, WallReference.highSide(), 0)));
        assertEquals(
                "a vertical hole has no low side from which a scribe could turn",
                refusal(() -> HolePath.straight(DOWN).scribeTurn(0, 10)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 12.3, 37.1, 30, 45, 123.456, 200, 359.9})
    void aHorizontalHoleAlongAnAzimuthHasNoSideNearestToIt(double azimuth) {
        HoleDirection along = HoleDirection.ofInclination(90, azimuth);
        WallReference reference = WallReference.azimuth(azimuth);
        assertFalse(reference.existsIn(along));
        assertEquals(0, reference.sharpness(along));
        assertEquals(
                "a horizontal hole along " + reference + " has no side nearest to it; use the low side",
                refusal(() -> CoreFrame.at(along, reference, 0)));
        assertTrue(WallReference.lowSide().existsIn(along));
        WallReference behind = WallReference.azimuth((azimuth + 180) % 360);
        assertFalse(behind.existsIn(along));
        assertEquals(0, behind.sharpness(along));
        assertThrows(IllegalArgumentException.class, () -> CoreFrame.at(along, behind, 0));
    }

    @Test
    void aHorizontalHoleToTheSouthHasNoNorthSide() {
        HoleDirection south = HoleDirection.ofInclination(90, 180);
        assertFalse(WallReference.north().existsIn(south));
        assertThrows(IllegalArgumentException.class, () -> CoreFrame.at(south, WallReference.north(), 0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1e-12, 1e-15, 1e-100, 1e-200, 1e-300})
    void besideTheVerticalTheLowSideExistsAndIsExact(double inclination) {
        HoleDirection hole = HoleDirection.ofInclination(inclination, 40);
        assertTrue(WallReference.lowSide().existsIn(hole));
        assertEquals(1, WallReference.lowSide().sharpness(hole) / Math.toRadians(inclination), 1e-12);
        assertEquals(0, CoreFrame.at(hole, 0).lineAngle(), 1e-13);
        // the low side of a hole that leans to 040 lies to the 220
        PlaneOrientation plane = CoreFrame.at(hole, 0).toGeographic(CorePlane.of(35, 0));
        assertEquals(220, plane.dipDirection(), 1e-6 + 2 * inclination);
        assertEquals(55, plane.dip(), 1e-12 + 2 * inclination);
    }

    @Domain(CoreDomain.class)
    @Property
    void aSideExistsOrAFrameIsRefused(@ForAll HoleDirection hole, @ForAll WallReference reference) {
        if (reference.existsIn(hole)) {
            CoreFrame.at(hole, reference, 0);
        } else {
            assertThrows(IllegalArgumentException.class, () -> CoreFrame.at(hole, reference, 0));
        }
    }

    @Test
    void sharpnessIsTheSineOfTheAngleToWhatNamesTheSide() {
        HoleDirection hole = HoleDirection.ofInclination(30, 0);
        assertEquals(0.5, WallReference.lowSide().sharpness(hole), 1e-15);
        assertEquals(0.5, WallReference.highSide().sharpness(hole), 1e-15);
        assertEquals(Math.cos(Math.toRadians(30)), WallReference.north().sharpness(hole), 1e-15);
        assertEquals(1, WallReference.azimuth(90).sharpness(hole), 1e-15);
        assertEquals(1, WallReference.north().sharpness(DOWN), 1e-15);
        assertEquals(0, WallReference.lowSide().sharpness(DOWN));
        assertEquals(0, WallReference.lowSide().sharpness(UP));
    }

    @Test
    void theLineOfMarksOfTheHighSideIsCountedFromTheLowSide() {
        assertEquals(WallReference.lowSide(), WallReference.highSide().countedFrom());
        assertEquals(WallReference.lowSide(), WallReference.lowSide().countedFrom());
        assertEquals(WallReference.azimuth(30), WallReference.azimuth(30).countedFrom());
    }

    @Test
    void sidesAreEqualByWhatTheyName() {
        assertEquals(WallReference.north(), WallReference.azimuth(360));
        assertEquals(WallReference.north().hashCode(), WallReference.azimuth(0).hashCode());
        assertEquals(WallReference.azimuth(30), WallReference.azimuth(30));
        assertNotEquals(WallReference.azimuth(30), WallReference.azimuth(31));
        assertNotEquals(WallReference.lowSide(), WallReference.highSide());
        assertNotEquals(WallReference.north(), WallReference.lowSide());
        assertNotEquals(WallReference.north(), (Object) "north");
    }

    private static String refusal(Runnable asked) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, asked::run).getMessage());
    }
}
