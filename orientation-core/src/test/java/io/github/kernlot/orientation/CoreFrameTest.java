package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CoreFrameTest {

    private static final HoleDirection HOLE = HoleDirection.ofDip(-60, 90);

    @Test
    void anglesAreCountedClockwiseLookingDownTheHole() {
        // in a hole to the east, a quarter clockwise of the low side lies to the north
        CoreLine quarter = CoreLine.ofAxisAngleAndDelta(90, 90);
        LineOrientation found = CoreFrame.at(HOLE, 0).toGeographic(quarter);
        assertEquals(0, found.plunge(), 1e-13);
        assertEquals(0, Math.IEEEremainder(found.trend(), 180), 1e-13);
        CoreLine steep = CoreLine.ofAxisAngleAndDelta(45, 90);
        assertTrue(CoreFrame.at(HOLE, 0).toGeographic(steep).trend() < 90, "leans to the north-east, not south-east");
    }

    @Test
    void theLowSideIsTheLowestLineOnTheWall() {
        CoreLine lowSide = CoreLine.ofAxisAngleAndDelta(90, 0);
        LineOrientation found = CoreFrame.at(HOLE, 0).toGeographic(lowSide);
        assertEquals(30, found.plunge(), 1e-13);
        assertEquals(270, found.trend(), 1e-13);
    }

    @Test
    void theSideNearestToNorthIsReadInADippingHole() {
        // horizontal north lies across a hole to the east: a quarter clockwise of the low side
        assertEquals(90, CoreFrame.at(HOLE, WallReference.north(), 0).lineAngle(), 1e-13);
        assertEquals(270, CoreFrame.at(HOLE, WallReference.azimuth(180), 0).lineAngle(), 1e-13);
        assertEquals(180, CoreFrame.at(HOLE, WallReference.azimuth(90), 0).lineAngle(), 1e-13);
        assertEquals(0, CoreFrame.at(HOLE, WallReference.azimuth(270), 0).lineAngle(), 1e-13);
    }

    @Test
    void betaIsNoughtWhereThereIsNone() {
        CoreFrame frame = CoreFrame.at(HOLE, 77);
        assertEquals(CorePlane.perpendicular(), frame.toCore(PlaneOrientation.ofDipAndDirection(30, 270)));
        assertEquals(CorePlane.perpendicular(), CorePlane.of(90, 360));
        assertFalse(CorePlane.perpendicular().hasBeta());
        assertEquals(CoreLine.ofAxisAngleAndDelta(0, 0), frame.toCore(LineOrientation.ofPlungeAndTrend(60, 90)));
    }

    @Test
    void whatHasTwoAnglesRoundTheCoreIsNamedByTheLesser() {
        // a line or plane along or across the core, seen from a reference line on the high side
        CoreFrame frame = CoreFrame.at(HOLE, 180);
        CoreLine lowSide = frame.toCore(LineOrientation.ofPlungeAndTrend(30, 270));
        assertEquals(90, lowSide.axisAngle());
        assertEquals(0, Math.IEEEremainder(lowSide.delta(), 180), 1e-13);
        assertTrue(lowSide.delta() < 180);
        CoreLine north = frame.toCore(LineOrientation.ofPlungeAndTrend(0, 0));
        assertEquals(90, north.axisAngle());
        assertEquals(90, north.delta(), 1e-13);
        CorePlane upright = frame.toCore(PlaneOrientation.ofDipAndDirection(90, 0));
        assertEquals(0, upright.alpha());
        assertEquals(90, upright.beta(), 1e-13);
    }

    @Test
    void anAngleOfManyTurnsIsThatAngle() {
        CoreFrame frame = CoreFrame.at(HOLE, 25);
        assertEquals(25, CoreFrame.at(HOLE, 25 + 3600).lineAngle(), 1e-12);
        assertEquals(25, CoreFrame.at(HOLE, 25 - 3600).lineAngle(), 1e-12);
        assertEquals(frame, CoreFrame.at(HOLE, 385));
    }

    @Test
    void framesAreEqualByTheirAxisAndLine() {
        CoreFrame frame = CoreFrame.at(HOLE, 25);
        assertEquals(frame, CoreFrame.at(HOLE, 25));
        assertEquals(frame.hashCode(), CoreFrame.at(HOLE, 25).hashCode());
        assertNotEquals(frame, CoreFrame.at(HOLE, 26));
        assertNotEquals(frame, CoreFrame.at(HoleDirection.ofDip(-61, 90), 25));
        assertNotEquals(frame, (Object) HOLE);
    }

    @Test
    void linesOfDifferentHolesHaveNoTurnBetweenThem() {
        CoreFrame frame = CoreFrame.at(HOLE, 25);
        assertEquals(25, frame.turnFrom(CoreFrame.at(HoleDirection.ofDip(-60.0005, 90), 0)), 1e-9);
        Exception refused = assertThrows(
                IllegalArgumentException.class, () -> frame.turnFrom(CoreFrame.at(HoleDirection.ofDip(-60.25, 90), 0)));
        assertTrue(String.valueOf(refused.getMessage()).startsWith("angle between the axes is 0.25"));
        assertTrue(String.valueOf(refused.getMessage()).endsWith("degrees; expected within [0, 0.001]"));
    }

    @Test
    void aFrameKnowsItsDirection() {
        HoleDirection found = CoreFrame.at(HOLE, 25).direction();
        assertEquals(HOLE.inclination(), found.inclination(), 1e-13);
        assertEquals(HOLE.azimuth(), found.azimuth(), 1e-13);
    }
}
