package io.github.kernlot.orientation;

import static io.github.kernlot.orientation.Rotations.apart;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@Domain(CoreDomain.class)
class PlanesAndLinesTest {

    @Property
    void theTwoHandsGiveStrikesHalfATurnApart(@ForAll PlaneOrientation plane) {
        double strike = plane.strike();
        assertTrue(strike >= 0 && strike < 360);
        assertEquals(0, apart(plane, PlaneOrientation.ofStrikeRightHand(strike, plane.dip())), 1e-12);
        assertEquals(0, apart(plane, PlaneOrientation.ofStrikeLeftHand((strike + 180) % 360, plane.dip())), 1e-12);
    }

    /** Common practice, no source: with the right hand the plane falls to the right of the strike. */
    @ParameterizedTest
    @CsvSource({"0, 90, 270", "30, 120, 300", "270, 0, 180", "359, 89, 269", "360, 90, 270"})
    void aPlaneFallsToTheSideOfItsHand(double strike, double rightHand, double leftHand) {
        assertEquals(rightHand, PlaneOrientation.ofStrikeRightHand(strike, 40).dipDirection());
        assertEquals(leftHand, PlaneOrientation.ofStrikeLeftHand(strike, 40).dipDirection());
    }

    @Property
    void thePoleIsThePerpendicular(@ForAll PlaneOrientation plane) {
        assertEquals(0, apart(Rotations.normal(plane), Rotations.direction(plane.pole())), 1e-12);
    }

    @Property
    void aNormalOfEitherSignAndAnyLengthIsTheSamePlane(@ForAll PlaneOrientation plane) {
        Vector3D normal = Rotations.normal(plane);
        for (double length : new double[] {1, -1, 3e-300, -2e300}) {
            Vector3D stretched = normal.scalarMultiply(length);
            assertEquals(
                    0,
                    apart(plane, PlaneOrientation.ofNormal(stretched.getX(), stretched.getY(), stretched.getZ())),
                    1e-12);
        }
    }

    @Property
    void aVectorOfEitherSignAndAnyLengthIsTheSameLine(@ForAll LineOrientation line) {
        Vector3D vector = Rotations.direction(line);
        for (double length : new double[] {1, -1, 3e-300, -2e300}) {
            Vector3D stretched = vector.scalarMultiply(length);
            assertEquals(
                    0,
                    apart(line, LineOrientation.ofVector(stretched.getX(), stretched.getY(), stretched.getZ())),
                    1e-12);
        }
    }

    @Property
    void theAngleBetweenLinesIsThatOfTheirVectors(@ForAll LineOrientation one, @ForAll LineOrientation other) {
        assertEquals(apart(one, other), one.angleTo(other), 1e-12);
        assertEquals(one.angleTo(other), other.angleTo(one), 1e-12);
    }

    @Property
    void theAngleBetweenPlanesIsThatOfTheirPoles(@ForAll PlaneOrientation one, @ForAll PlaneOrientation other) {
        assertEquals(apart(one, other), one.angleTo(other), 1e-12);
    }

    @Property
    void theAngleBetweenHolesIsThatOfTheirVectors(@ForAll HoleDirection one, @ForAll HoleDirection other) {
        double expected = Math.toDegrees(Vector3D.angle(Rotations.direction(one), Rotations.direction(other)));
        assertEquals(expected, one.angleTo(other), 1e-12);
    }

    /** An arc cosine of the scalar product would be off by 2e-9 degrees in the third row and say 0 in the last. */
    @ParameterizedTest
    @CsvFileSource(resources = "small-doglegs.csv", useHeadersInDisplayName = true)
    void aSmallDoglegKeepsItsDigits(double inclination, double azimuth, double dogleg) {
        HoleDirection from = HoleDirection.ofInclination(60, 359.9);
        HoleDirection to = HoleDirection.ofInclination(60 + inclination, (359.9 + azimuth) % 360);
        assertEquals(dogleg, from.angleTo(to), 1e-13);
    }

    @Test
    void whatHasNoAzimuthOrTwoIsNamedInOneWay() {
        assertEquals(new PlaneOrientation(0, 0), PlaneOrientation.ofNormal(0, 0, -3));
        assertEquals(new PlaneOrientation(90, 45), PlaneOrientation.ofNormal(1, 1, 0));
        assertEquals(new PlaneOrientation(90, 45), PlaneOrientation.ofNormal(-1, -1, -0.0));
        assertEquals(new LineOrientation(90, 0), LineOrientation.ofVector(0, -0.0, -3));
        assertEquals(new LineOrientation(0, 135), LineOrientation.ofVector(-1, 1, 0));
        assertEquals(new LineOrientation(0, 135), LineOrientation.ofVector(1, -1, 0));
        assertEquals(new LineOrientation(90, 0), new PlaneOrientation(0, 30).pole());
        assertEquals(new LineOrientation(0, 30), new PlaneOrientation(90, 30).pole());
        assertEquals(new LineOrientation(0, 30), new PlaneOrientation(90, 210).pole());
        assertEquals(new LineOrientation(50, 210), new PlaneOrientation(40, 30).pole());
    }

    @Test
    void aPlaneKnowsWhetherItsDipDirectionSpeaks() {
        assertTrue(new PlaneOrientation(0, 10).isHorizontal());
        assertFalse(new PlaneOrientation(Double.MIN_VALUE, 10).isHorizontal());
        assertTrue(new PlaneOrientation(90, 10).isVertical());
        assertFalse(new PlaneOrientation(Math.nextDown(90.0), 10).isVertical());
        assertTrue(HoleDirection.ofDip(-90, 0).isVertical());
        assertTrue(HoleDirection.ofDip(90, 0).isVertical());
        assertFalse(HoleDirection.ofInclination(1e-12, 0).isVertical());
    }

    @Test
    void turningTheAzimuthWrapsIt() {
        assertEquals(10, new PlaneOrientation(40, 350).withAzimuthTurned(20).dipDirection());
        assertEquals(350, new LineOrientation(40, 10).withAzimuthTurned(-20).trend());
        assertEquals(10, HoleDirection.ofDip(-60, 10).withAzimuthTurned(-720).azimuth());
        assertEquals(40, new PlaneOrientation(40, 350).withAzimuthTurned(20).dip());
    }

    @Test
    void aHoleIsOneDirectionByInclinationDipOrPlunge() {
        HoleDirection hole = HoleDirection.ofInclination(30, 90);
        assertEquals(hole, HoleDirection.ofDip(-60, 90));
        assertEquals(hole, HoleDirection.ofPlunge(60, 90));
        assertEquals(-60, hole.dip());
        assertEquals(60, hole.plunge());
        assertEquals(0, hole.north());
        assertEquals(0.5, hole.east());
        assertEquals(Math.sqrt(0.75), hole.down(), 1e-16);
    }
}
