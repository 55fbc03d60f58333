package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Domain(CoreDomain.class)
class SlipTest {

    /**
     * The slip vector of Aki and Richards, Quantitative Seismology (1980; equation from memory), north, east, down, for strike 000:
     * (cos rake, -cos dip sin rake, -sin dip sin rake).
     */
    @ParameterizedTest
    @CsvSource({
        "60, 0, 0, false, false, true, false",
        "60, 90, 0, true, false, false, false",
        "60, 180, 0, false, false, false, true",
        "60, -90, 0, false, true, false, false",
        "30, 45, 70, true, false, true, false",
        "30, 135, 70, true, false, false, true",
        "30, -45, 250, false, true, true, false",
        "90, -135, 250, false, true, false, true"
    })
    void theRakeNamesTheSlip(
            double dip,
            double rake,
            double strike,
            boolean reverse,
            boolean normal,
            boolean sinistral,
            boolean dextral) {
        Slip slip = new Slip(PlaneOrientation.ofStrikeRightHand(strike, dip), rake);
        assertEquals(reverse, slip.isReverse());
        assertEquals(normal, slip.isNormal());
        assertEquals(sinistral, slip.isSinistral());
        assertEquals(dextral, slip.isDextral());
        DirectedLine moved = slip.hangingWall().withAzimuthTurned(-strike);
        double r = Math.toRadians(rake);
        double d = Math.toRadians(dip);
        assertEquals(Math.cos(r), moved.north(), 1e-14);
        assertEquals(-Math.cos(d) * Math.sin(r), moved.east(), 1e-14);
        assertEquals(-Math.sin(d) * Math.sin(r), moved.down(), 1e-14);
        assertEquals(180, slip.footwall().angleTo(slip.hangingWall()), 1e-12);
    }

    @Property
    void theMovementComesBack(@ForAll PlaneOrientation plane, @ForAll double turn) {
        Slip slip = new Slip(plane, turn - 180);
        Slip back = Slip.ofHangingWall(plane, slip.hangingWall());
        assertEquals(0, Math.IEEEremainder(slip.rake() - back.rake(), 360), 3e-12);
        Slip other = Slip.ofFootwall(plane, slip.footwall());
        assertEquals(0, Math.IEEEremainder(slip.rake() - other.rake(), 360), 3e-12);
    }

    @Property
    void aSlipsRakeIsTheLinesRakeCountedUpwards(@ForAll PlaneOrientation plane, @ForAll double turn) {
        Slip slip = new Slip(plane, turn - 180);
        double downwards = plane.rake(slip.hangingWall().withoutArrow());
        assertEquals(0, Math.IEEEremainder(downwards + slip.rake(), 180), 3e-12);
    }

    /** The blocks are told apart by where they lie: the one above the plane is the hanging wall. */
    @Property
    void whicheverBlockWasMeantTheHangingWallMovesTheSame(
            @ForAll CoreFrame frame, @ForAll LineInPlane axial, @ForAll HoleSense block) {
        DirectedLineInPlane arrow = axial.plane().directedLine(axial.gamma());
        PlaneOrientation plane = frame.toGeographic(axial.plane());
        Assume.that(plane.dip() > 1e-9 && plane.dip() < 90 - 1e-9);
        Slip slip = frame.toGeographic(arrow.slipOf(block));
        assertEquals(plane, slip.plane());

        DirectedLine moved = frame.toGeographic(arrow);
        double downOfBlock = frame.toGeographic(axial.plane().facing(block)).down();
        DirectedLine hangingWall = downOfBlock < 0 ? moved : moved.reversed();
        assertEquals(0, slip.hangingWall().angleTo(hangingWall), 3e-12);

        HoleSense other = block == HoleSense.DOWN_HOLE ? HoleSense.UP_HOLE : HoleSense.DOWN_HOLE;
        Slip same = frame.toGeographic(arrow.reversed().slipOf(other));
        assertEquals(0, Math.IEEEremainder(slip.rake() - same.rake(), 360), 3e-12);
    }

    /** Of an upright plane either block may be called the hanging wall, so that the movement of one block is compared. */
    @Property
    void aSlipGoesToCoreAndBack(@ForAll CoreFrame frame, @ForAll PlaneOrientation plane, @ForAll double turn) {
        Slip slip = new Slip(plane, turn - 180);
        CoreSlip shown = frame.toCore(slip);
        DirectedLine inward = frame.toGeographic(shown.plane().facing(shown.block()));
        Vector3D side = new Vector3D(inward.north(), inward.east(), inward.down());
        assertTrue(side.dotProduct(Rotations.normal(plane)) < 0, "the block lies on the side of the dip direction");
        assertEquals(0, frame.toGeographic(shown.movement()).angleTo(slip.hangingWall()), 3e-12);
        Slip back = frame.toGeographic(shown);
        assertEquals(0, plane.angleTo(back.plane()), 3e-12);
        Assume.that(plane.dip() > 1e-9 && plane.dip() < 90 - 1e-9);
        assertEquals(0, back.hangingWall().angleTo(slip.hangingWall()), 3e-12);
    }

    @Property
    void onlyThePartOfAMovementInThePlaneCounts(@ForAll PlaneOrientation plane, @ForAll DirectedLine movement) {
        Assume.that(plane.pole().angleTo(movement.withoutArrow()) > 0.1);
        DirectedLine slid = Slip.ofHangingWall(plane, movement).hangingWall();
        Vector3D normal = Rotations.normal(plane);
        Vector3D given = new Vector3D(movement.north(), movement.east(), movement.down());
        Vector3D inPlane = given.subtract(normal.scalarMultiply(normal.dotProduct(given)));
        Vector3D found = new Vector3D(slid.north(), slid.east(), slid.down());
        assertEquals(0, Math.toDegrees(Vector3D.angle(inPlane, found)), 1e-9);
    }

    @Test
    void aVerticalFaultHasItsHangingWallOnTheSideOfItsDipDirection() {
        PlaneOrientation fault = PlaneOrientation.ofDipAndDirection(90, 90);
        // strike 000; the eastern block moved north: who looks across to it sees it move to the left
        Slip slip = Slip.ofHangingWall(fault, DirectedLine.ofPlungeAndTrend(0, 0));
        assertEquals(0.0, slip.rake());
        assertTrue(slip.isSinistral());
        assertEquals("90.0/090.0 (dip/dip direction), slip rake 0.0, sinistral", slip.toString());
        // a hole to the east crosses it: the down-hole block is the eastern one
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(0, 90), 0);
        CorePlane onCore = frame.toCore(fault);
        CoreSlip read = new CoreSlip(onCore, frame.toCore(DirectedLine.ofPlungeAndTrend(0, 0)), HoleSense.DOWN_HOLE);
        assertEquals(slip, frame.toGeographic(read));
        assertEquals(
                "alpha 90.0, no beta, down-hole block moved along axis angle 90.0, delta 090.0",
                new CoreSlip(onCore, DirectedCoreLine.ofAxisAngleAndDelta(90, 90), HoleSense.DOWN_HOLE).toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-80  | slip rake -80.0, normal, sinistral",
                "-100 | slip rake -100.0, normal, dextral",
                "80   | slip rake 80.0, reverse, sinistral",
                "90   | slip rake 90.0, reverse",
                "180  | slip rake 180.0, dextral"
            })
    void aSlipPrintsWhatItsRakeMeans(double rake, String text) {
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(60, 90);
        assertEquals("60.0/090.0 (dip/dip direction), " + text, new Slip(plane, rake).toString());
    }

    @Test
    void aMovementSquareToThePlaneIsNoSlip() {
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(50, 90);
        DirectedLine square = plane.pole().downward();
        assertThrows(IllegalArgumentException.class, () -> Slip.ofHangingWall(plane, square));
        CorePlane onCore = CorePlane.of(40, 30);
        assertThrows(
                IllegalArgumentException.class,
                () -> new CoreSlip(onCore, onCore.facing(HoleSense.UP_HOLE), HoleSense.UP_HOLE));
        assertThrows(IllegalArgumentException.class, () -> new Slip(plane, 181));
        assertEquals(180, new Slip(plane, -180).rake());
    }
}
