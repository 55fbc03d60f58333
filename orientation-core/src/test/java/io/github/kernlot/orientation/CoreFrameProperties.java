package io.github.kernlot.orientation;

import static io.github.kernlot.orientation.Rotations.apart;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.hipparchus.geometry.euclidean.threed.Rotation;

@Domain(CoreDomain.class)
class CoreFrameProperties {

    private static final double CLOSE = 2e-12;

    @Property(tries = 1000)
    void theFrameIsThreeRotations(
            @ForAll HoleDirection hole, @ForAll double lineAngle, @ForAll CorePlane plane, @ForAll CoreLine line) {
        Assume.that(!hole.isVertical());
        CoreFrame frame = CoreFrame.at(hole, lineAngle);
        Rotation rotation = Rotations.intoHole(hole.inclination(), hole.azimuth());
        assertEquals(
                0,
                apart(
                        rotation.applyTo(Rotations.normal(plane, lineAngle)),
                        Rotations.normal(frame.toGeographic(plane))),
                CLOSE);
        assertEquals(
                0,
                apart(
                        rotation.applyTo(Rotations.direction(line, lineAngle)),
                        Rotations.direction(frame.toGeographic(line))),
                CLOSE);
    }

    @Property
    void turningTheAzimuthOfTheHoleTurnsTheAnswerByTheSame(
            @ForAll HoleDirection hole, @ForAll double turn, @ForAll double lineAngle, @ForAll CorePlane plane) {
        Assume.that(!hole.isVertical());
        PlaneOrientation here = CoreFrame.at(hole, lineAngle).toGeographic(plane);
        PlaneOrientation there =
                CoreFrame.at(hole.withAzimuthTurned(turn), lineAngle).toGeographic(plane);
        assertEquals(0, apart(here.withAzimuthTurned(turn), there), CLOSE);
    }

    @Property
    void turningTheAzimuthOfTheHoleTurnsALineByTheSame(
            @ForAll HoleDirection hole, @ForAll double turn, @ForAll double lineAngle, @ForAll CoreLine line) {
        Assume.that(!hole.isVertical());
        LineOrientation here = CoreFrame.at(hole, lineAngle).toGeographic(line);
        LineOrientation there =
                CoreFrame.at(hole.withAzimuthTurned(turn), lineAngle).toGeographic(line);
        assertEquals(0, apart(here.withAzimuthTurned(turn), there), CLOSE);
    }

    @Property
    void alphaDoesNotDependOnWhereTheLineIsDrawn(
            @ForAll CoreFrame frame, @ForAll double turn, @ForAll PlaneOrientation plane) {
        assertEquals(
                frame.toCore(plane).alpha(), frame.turned(turn).toCore(plane).alpha(), 1e-12);
    }

    @Property
    void spinningTheCoreMovesBetaAndLeavesAlpha(@ForAll CoreFrame frame, @ForAll double spin, @ForAll CorePlane plane) {
        PlaneOrientation spun = frame.turned(spin).toGeographic(plane);
        CorePlane seen = frame.toCore(spun);
        CorePlane expected = CorePlane.of(plane.alpha(), (plane.beta() + spin) % 360);
        assertEquals(plane.alpha(), seen.alpha(), CLOSE);
        assertEquals(0, apart(expected, seen), CLOSE);
    }

    @Property
    void theTurnFromAnotherFrameIsHowFarTheLineWasMoved(@ForAll CoreFrame frame, @ForAll double turn) {
        double found = frame.turned(turn).turnFrom(frame);
        assertTrue(found >= 0 && found < 360);
        assertEquals(0, Math.IEEEremainder(found - turn, 360), 1e-12);
        assertEquals(0, Math.IEEEremainder(frame.turnFrom(frame.turned(turn)) + turn, 360), 1e-12);
    }

    @Property
    void aThousandSmallTurnsAreOneTurn(@ForAll CoreFrame frame, @ForAll CorePlane plane) {
        CoreFrame turned = frame;
        for (int i = 0; i < 1000; i++) {
            turned = turned.turned(0.12);
        }
        assertEquals(0, apart(frame.turned(120).toGeographic(plane), turned.toGeographic(plane)), 1e-10);
    }

    @Property
    void atAlphaNoughtBetaAndBetaPlusHalfATurnAreOnePlane(@ForAll CoreFrame frame, @ForAll double beta) {
        PlaneOrientation one = frame.toGeographic(CorePlane.of(0, beta));
        PlaneOrientation other = frame.toGeographic(CorePlane.of(0, (beta + 180) % 360));
        assertEquals(0, apart(one, other), CLOSE);
        CorePlane back = frame.toCore(one);
        assertTrue(back.alpha() > 0 || back.beta() < 180);
    }

    @Property
    void aPlaneAtRightAnglesToTheCoreHasNoBeta(@ForAll CoreFrame frame, @ForAll double beta) {
        PlaneOrientation plane = frame.toGeographic(CorePlane.of(90, beta));
        assertEquals(0, apart(frame.toGeographic(CorePlane.perpendicular()), plane), CLOSE);
        HoleDirection axis = frame.direction();
        assertEquals(0, apart(PlaneOrientation.ofNormal(axis.north(), axis.east(), axis.down()), plane), CLOSE);
    }

    @Property
    void alphaIsTheComplementOfTheAngleBetweenPoleAndHole(@ForAll CoreFrame frame, @ForAll PlaneOrientation plane) {
        double toPole = apart(Rotations.normal(plane), Rotations.direction(frame.direction()));
        assertEquals(90 - toPole, frame.toCore(plane).alpha(), CLOSE);
    }

    @Property
    void alphaAloneBoundsTheDip(@ForAll CoreFrame frame, @ForAll CorePlane plane) {
        double plunge = Math.abs(frame.direction().plunge());
        double dip = frame.toGeographic(plane).dip();
        assertTrue(dip >= Math.abs(plunge - plane.alpha()) - CLOSE);
        assertTrue(dip <= Math.min(90, 180 - plunge - plane.alpha()) + CLOSE);
    }

    @Property
    void theSidesOfTheWallAgreeWithEachOther(
            @ForAll HoleDirection hole,
            @ForAll WallReference one,
            @ForAll WallReference other,
            @ForAll double lineAngle,
            @ForAll CorePlane plane) {
        // where a side is poorly defined its line angle is still exact enough for the plane
        Assume.that(one.sharpness(hole) > 1e-3 && other.sharpness(hole) > 1e-3);
        CoreFrame frame = CoreFrame.at(hole, one, lineAngle);
        CoreFrame same = CoreFrame.at(hole, other, frame.lineAngle(other));
        assertEquals(0, apart(frame.toGeographic(plane), same.toGeographic(plane)), CLOSE);
    }

    @Property
    void theHighSideIsHalfATurnFromTheLowSide(
            @ForAll HoleDirection hole, @ForAll double lineAngle, @ForAll CorePlane plane) {
        Assume.that(!hole.isVertical());
        CoreFrame high = CoreFrame.at(hole, WallReference.highSide(), lineAngle);
        CoreFrame low = CoreFrame.at(hole, lineAngle + 180);
        assertEquals(0, apart(high.toGeographic(plane), low.toGeographic(plane)), CLOSE);
    }

    @Property
    void inAVerticalHoleAnAzimuthAddsToBeta(
            @ForAll double holeAzimuth, @ForAll double lineAzimuth, @ForAll CorePlane plane) {
        CoreFrame down =
                CoreFrame.at(HoleDirection.ofInclination(0, holeAzimuth), WallReference.azimuth(lineAzimuth), 0);
        PlaneOrientation expected =
                PlaneOrientation.ofDipAndDirection(90 - plane.alpha(), (lineAzimuth + plane.beta()) % 360);
        assertEquals(0, apart(expected, down.toGeographic(plane)), CLOSE);

        CoreFrame up =
                CoreFrame.at(HoleDirection.ofInclination(180, holeAzimuth), WallReference.azimuth(lineAzimuth), 0);
        PlaneOrientation mirrored =
                PlaneOrientation.ofDipAndDirection(90 - plane.alpha(), (lineAzimuth - plane.beta() + 180 + 360) % 360);
        assertEquals(0, apart(mirrored, up.toGeographic(plane)), CLOSE);
    }
}
