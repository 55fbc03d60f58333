package io.github.kernlot.orientation;

import static io.github.kernlot.orientation.Rotations.apart;
import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

@Domain(CoreDomain.class)
class RoundTripProperties {

    /** Degrees in space: twice what one conversion may lose, and the rounding of the judge. */
    private static final double CLOSE = 2e-12;

    @Property(tries = 1000)
    void aPlaneOnCoreComesBackFromTheGround(@ForAll CoreFrame frame, @ForAll CorePlane plane) {
        CorePlane back = frame.toCore(frame.toGeographic(plane));
        assertEquals(0, apart(plane, back), CLOSE, () -> plane + " came back as " + back);
    }

    @Property(tries = 1000)
    void aPlaneInTheGroundComesBackFromTheCore(@ForAll CoreFrame frame, @ForAll PlaneOrientation plane) {
        PlaneOrientation back = frame.toGeographic(frame.toCore(plane));
        assertEquals(0, apart(plane, back), CLOSE, () -> plane + " came back as " + back);
    }

    @Property(tries = 1000)
    void aLineOnCoreComesBackFromTheGround(@ForAll CoreFrame frame, @ForAll CoreLine line) {
        CoreLine back = frame.toCore(frame.toGeographic(line));
        assertEquals(0, apart(line, back), CLOSE, () -> line + " came back as " + back);
    }

    @Property(tries = 1000)
    void aLineInTheGroundComesBackFromTheCore(@ForAll CoreFrame frame, @ForAll LineOrientation line) {
        LineOrientation back = frame.toGeographic(frame.toCore(line));
        assertEquals(0, apart(line, back), CLOSE, () -> line + " came back as " + back);
    }

    @Property(tries = 1000)
    void aLineInAPlaneComesBackFromTheGround(@ForAll CoreFrame frame, @ForAll LineInPlane line) {
        CoreLine back = frame.toCore(frame.toGeographic(line));
        LineInPlane found = LineInPlane.nearest(line.plane(), back);
        double turn = Math.IEEEremainder(found.gamma() - line.gamma(), 180);
        assertEquals(0, turn, CLOSE, () -> line + " came back as " + found);
    }

    @Property
    void awayFromItsEdgesAPlaneOnCoreComesBackAngleByAngle(@ForAll CoreFrame frame, @ForAll CorePlane plane) {
        Assume.that(plane.alpha() > 1e-9 && plane.alpha() < 89);
        CorePlane back = frame.toCore(frame.toGeographic(plane));
        assertEquals(plane.alpha(), back.alpha(), CLOSE);
        assertEquals(0, Math.IEEEremainder(plane.beta() - back.beta(), 360), CLOSE * 60);
    }

    @Property
    void awayFromItsEdgesAPlaneInTheGroundComesBackAngleByAngle(
            @ForAll CoreFrame frame, @ForAll PlaneOrientation plane) {
        Assume.that(plane.dip() > 1 && plane.dip() < 90 - 1e-9);
        PlaneOrientation back = frame.toGeographic(frame.toCore(plane));
        assertEquals(plane.dip(), back.dip(), CLOSE);
        assertEquals(0, Math.IEEEremainder(plane.dipDirection() - back.dipDirection(), 360), CLOSE * 60);
    }

    @Property
    void theDirectionOfAHoleComesBackFromItsVector(@ForAll HoleDirection hole) {
        HoleDirection back = HoleDirection.ofVector(hole.north(), hole.east(), hole.down());
        assertEquals(0, hole.angleTo(back), CLOSE);
        assertEquals(hole.inclination(), back.inclination(), 2e-13);
    }

    @Property
    void theFrameKeepsTheLineAngleThatItWasGiven(
            @ForAll HoleDirection hole, @ForAll WallReference reference, @ForAll double lineAngle) {
        Assume.that(reference.existsIn(hole));
        double found = CoreFrame.at(hole, reference, lineAngle).lineAngle(reference);
        assertEquals(0, Math.IEEEremainder(found - lineAngle, 360), 1e-12);
    }
}
