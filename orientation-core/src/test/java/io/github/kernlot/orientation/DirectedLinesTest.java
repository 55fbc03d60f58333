package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** The arrow of a line is never lost on the way from the core to the ground and back. */
@Domain(CoreDomain.class)
class DirectedLinesTest {

    private static final double CLOSE = 2e-12;

    @Property
    void anArrowInTheGroundComesBackFromTheCore(@ForAll CoreFrame frame, @ForAll DirectedLine line) {
        DirectedLine back = frame.toGeographic(frame.toCore(line));
        assertEquals(0, line.angleTo(back), CLOSE, () -> line + " came back as " + back);
    }

    @Property
    void anArrowOnCoreIsTurnedIntoTheGroundAsVectorsAre(
            @ForAll HoleDirection hole, @ForAll double lineAngle, @ForAll DirectedCoreLine line) {
        Assume.that(hole.inclination() > 0 && hole.inclination() < 180);
        // another route: rotations of a general-purpose library, Hipparchus 4.0.3
        Vector3D expected = Rotations.intoHole(hole.inclination(), hole.azimuth())
                .applyTo(Rotations.standing(line.axisAngle(), line.delta() + lineAngle));
        DirectedLine found = CoreFrame.at(hole, lineAngle).toGeographic(line);
        assertEquals(0, Math.toDegrees(Vector3D.angle(expected, vector(found))), CLOSE);
    }

    @Property
    void anArrowLessItsArrowIsTheLineThatItWas(@ForAll CoreFrame frame, @ForAll DirectedCoreLine line) {
        LineOrientation expected = frame.toGeographic(line.withoutArrow());
        assertEquals(0, Rotations.apart(expected, frame.toGeographic(line).withoutArrow()), CLOSE);
        assertEquals(0, Rotations.apart(line.withoutArrow(), line.reversed().withoutArrow()), CLOSE);
        assertTrue(line.withoutArrow().axisAngle() <= 90);
    }

    @Property
    void reversingTurnsAnArrowHalfRound(@ForAll CoreFrame frame, @ForAll DirectedCoreLine line) {
        DirectedLine inGround = frame.toGeographic(line);
        assertEquals(180, inGround.angleTo(frame.toGeographic(line.reversed())), CLOSE);
        assertEquals(180, inGround.angleTo(inGround.reversed()), CLOSE);
        assertEquals(0, inGround.angleTo(inGround.reversed().reversed()), CLOSE);
    }

    @Property
    void anArrowInAPlaneGoesWhereItsGammaGoes(@ForAll CoreFrame frame, @ForAll LineInPlane axial) {
        DirectedLineInPlane line = axial.plane().directedLine(axial.gamma());
        DirectedLine inGround = frame.toGeographic(line);
        assertEquals(0, inGround.angleTo(frame.toGeographic(line.toCoreLine())), CLOSE);
        assertEquals(180, inGround.angleTo(frame.toGeographic(line.reversed())), CLOSE);
        assertEquals(0, Rotations.apart(frame.toGeographic(axial), inGround.withoutArrow()), CLOSE);
        assertEquals(0, Rotations.apart(frame.toGeographic(line.withoutArrow()), inGround.withoutArrow()), CLOSE);
        assertTrue(line.withoutArrow().gamma() < 180);
        DirectedLineInPlane back = DirectedLineInPlane.nearest(line.plane(), line.toCoreLine());
        assertEquals(0, Math.IEEEremainder(line.gamma() - back.gamma(), 360), CLOSE);
    }

    @Property
    void theSenseAlongTheHoleChoosesTheEnd(
            @ForAll CoreFrame frame, @ForAll LineInPlane axial, @ForAll CoreLine through) {
        DirectedLine axis = DirectedLine.from(frame.direction());
        if (Math.abs(Math.cos(Math.toRadians(axial.gamma()))) > 1e-9) {
            double down =
                    frame.toGeographic(axial.pointing(HoleSense.DOWN_HOLE)).angleTo(axis);
            double up = frame.toGeographic(axial.pointing(HoleSense.UP_HOLE)).angleTo(axis);
            assertTrue(down <= 90 + CLOSE);
            assertEquals(180, down + up, CLOSE);
        }
        if (through.axisAngle() < 90) {
            double down =
                    frame.toGeographic(through.pointing(HoleSense.DOWN_HOLE)).angleTo(axis);
            assertEquals(through.axisAngle(), down, CLOSE);
            assertEquals(
                    180 - through.axisAngle(),
                    frame.toGeographic(through.pointing(HoleSense.UP_HOLE)).angleTo(axis),
                    CLOSE);
        }
    }

    @Property
    void aBedFacesSquareToItselfToTheSideThatWasSaid(@ForAll CoreFrame frame, @ForAll CorePlane bed) {
        DirectedLine facing = frame.toGeographic(bed.facing(HoleSense.DOWN_HOLE));
        assertEquals(0, Rotations.apart(frame.toGeographic(bed), facing.perpendicularPlane()), CLOSE);
        DirectedLine axis = DirectedLine.from(frame.direction());
        assertEquals(90 - bed.alpha(), facing.angleTo(axis), CLOSE);
        assertEquals(180, facing.angleTo(frame.toGeographic(bed.facing(HoleSense.UP_HOLE))), CLOSE);
    }

    @Property
    void anArrowOfItsLineIsTheLine(@ForAll LineOrientation line) {
        assertEquals(0, Rotations.apart(line, line.downward().withoutArrow()), CLOSE);
        assertTrue(line.downward().plunge() >= 0);
        assertEquals(0, Rotations.apart(line, line.downward().reversed().withoutArrow()), CLOSE);
    }

    @Property
    void aVectorOfAnyLengthKeepsItsArrow(@ForAll DirectedLine line) {
        for (double length : new double[] {1, 3e-300, 2e300}) {
            DirectedLine found =
                    DirectedLine.ofVector(length * line.north(), length * line.east(), length * line.down());
            assertEquals(0, line.angleTo(found), CLOSE);
        }
    }

    @Property
    void planesAndLinesOnCoreComeBackFromTheirVectors(
            @ForAll CorePlane plane, @ForAll CoreLine line, @ForAll DirectedCoreLine arrow) {
        for (double length : new double[] {1, 3e-300, 2e300}) {
            Vector3D normal = Rotations.normal(plane, 180).scalarMultiply(-length);
            CorePlane found = CorePlane.ofNormal(normal.getZ(), normal.getX(), normal.getY());
            assertEquals(0, Rotations.apart(plane, found), CLOSE);
            Vector3D axial = Rotations.direction(line, 180).scalarMultiply(-length);
            CoreLine through = CoreLine.ofVector(axial.getZ(), axial.getX(), axial.getY());
            assertEquals(0, Rotations.apart(line, through), CLOSE);
            Vector3D head =
                    Rotations.standing(arrow.axisAngle(), arrow.delta() + 180).scalarMultiply(length);
            DirectedCoreLine directed = DirectedCoreLine.ofVector(head.getZ(), head.getX(), head.getY());
            assertEquals(
                    0,
                    Math.toDegrees(Vector3D.angle(
                            Rotations.standing(arrow.axisAngle(), arrow.delta()),
                            Rotations.standing(directed.axisAngle(), directed.delta()))),
                    CLOSE);
        }
        assertThrows(IllegalArgumentException.class, () -> CorePlane.ofNormal(0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> CoreLine.ofVector(Double.NaN, 0, 1));
    }

    @Test
    void whatHasNoTrendOrDeltaIsNamedInOneWay() {
        assertEquals(new DirectedLine(90, 0), DirectedLine.ofVector(0, -0.0, 3));
        assertEquals(new DirectedLine(-90, 0), DirectedLine.ofVector(-0.0, 0, -3));
        assertEquals(new DirectedLine(-90, 0), DirectedLine.ofVector(-1e-15, 1e-15, -3));
        assertEquals(new DirectedCoreLine(180, 0), DirectedCoreLine.ofVector(-3, -1e-15, 1e-15));
        assertEquals(new DirectedLine(0, 225), DirectedLine.ofVector(-1, -1, 0));
        assertEquals(new LineOrientation(0, 45), new DirectedLine(0, 225).withoutArrow());
        assertEquals(new LineOrientation(30, 45), new DirectedLine(-30, 225).withoutArrow());
        assertEquals(new CoreLine(90, 20), new DirectedCoreLine(90, 200).withoutArrow());
        assertEquals(new CoreLine(70, 20), new DirectedCoreLine(110, 200).withoutArrow());
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(-60, 90), 0);
        assertEquals(new DirectedCoreLine(180, 0), frame.toCore(DirectedLine.ofPlungeAndTrend(-60, 270)));
        assertEquals(new DirectedCoreLine(0, 0), frame.toCore(DirectedLine.ofPlungeAndTrend(60, 90)));
        assertEquals(0.0, DirectedLine.ofVector(1, 0, -0.0).plunge());
    }

    @Test
    void aLineAcrossTheCoreHasNoEndDownHole() {
        assertThrows(
                IllegalArgumentException.class,
                () -> CoreLine.ofAxisAngleAndDelta(90, 20).pointing(HoleSense.DOWN_HOLE));
        for (double gamma : new double[] {90, Math.nextUp(90.0), Math.nextDown(270.0), 270}) {
            LineInPlane line = CorePlane.of(40, 20).line(gamma);
            String message = assertThrows(IllegalArgumentException.class, () -> line.pointing(HoleSense.UP_HOLE))
                    .getMessage();
            assertTrue(String.valueOf(message).contains("points neither down-hole nor up-hole"));
        }
        assertThrows(IllegalArgumentException.class, () -> CorePlane.of(90, 0).directedLine(10));
    }

    @Test
    void aSignedGammaCountsBothWays() {
        CorePlane plane = CorePlane.of(40, 120);
        assertEquals(plane.line(325), LineInPlane.ofSignedGamma(plane, -35));
        assertEquals(plane.line(35), LineInPlane.ofSignedGamma(plane, 35));
        assertEquals(plane.line(180), LineInPlane.ofSignedGamma(plane, -180));
        assertThrows(IllegalArgumentException.class, () -> LineInPlane.ofSignedGamma(plane, 181));
        assertEquals(plane.directedLine(325), DirectedLineInPlane.ofSignedGamma(plane, -35));
        assertEquals(plane.directedLine(180), DirectedLineInPlane.ofSignedGamma(plane, -180));
        assertThrows(IllegalArgumentException.class, () -> DirectedLineInPlane.ofSignedGamma(plane, -181));
        assertEquals(CorePlane.of(40, 120), CorePlane.ofPoleAngle(50, 120));
        assertThrows(IllegalArgumentException.class, () -> CorePlane.ofPoleAngle(-1, 120));
    }

    @Test
    void theFacingOfOverturnedBedsPointsDown() {
        // a vertical hole down through beds at alpha 60 that are younger down-hole: they lie upside down
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(-90, 0), WallReference.north(), 0);
        DirectedLine facing = frame.toGeographic(CorePlane.of(60, 30).facing(HoleSense.DOWN_HOLE));
        assertEquals(60, facing.plunge(), 1e-12);
        assertEquals(210, facing.trend(), 1e-12);
        assertEquals(new PlaneOrientation(30, 30), facing.perpendicularPlane());
    }

    @Test
    void arrowsTurnWithTheirAzimuthAndDiffer() {
        assertEquals(new DirectedLine(-20, 10), new DirectedLine(-20, 350).withAzimuthTurned(20));
        assertNotEquals(new DirectedLine(0, 20), new DirectedLine(0, 200));
        assertEquals(180, new DirectedLine(0, 20).angleTo(new DirectedLine(0, 200)));
    }

    private static Vector3D vector(DirectedLine line) {
        return new Vector3D(line.north(), line.east(), line.down());
    }
}
