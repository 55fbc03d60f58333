package io.github.kernlot.orientation;

import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;
import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

@Domain(CoreDomain.class)
class CarriedFrameProperties {

    private static final CoreLine SCRIBE = CoreLine.ofAxisAngleAndDelta(90, 0);

    @Property(tries = 1000)
    void theLineIsCarriedByTheSmallestRotation(@ForAll CoreFrame frame, @ForAll HoleDirection to) {
        double dogleg = frame.direction().angleTo(to);
        Assume.that(dogleg < 179.8);
        Vector3D from = Rotations.direction(frame.direction());
        Vector3D line = Rotations.direction(frame.toGeographic(SCRIBE));
        Vector3D expected =
                new Rotation(from, Rotations.direction(to)).applyTo(line); // Hipparchus 4.0.3: the smallest rotation
        Vector3D found = Rotations.direction(frame.carriedAlong(to).toGeographic(SCRIBE));
        assertEquals(0, Rotations.apart(expected, found), 2e-12 / cos(toRadians(dogleg / 2)));
    }

    @Property
    void aCarriedFrameKeepsTheAnglesToTheAxisOfTheTurn(@ForAll CoreFrame frame, @ForAll HoleDirection to) {
        double dogleg = frame.direction().angleTo(to);
        Assume.that(dogleg > 1e-3 && dogleg < 179);
        Vector3D hinge = Rotations.direction(frame.direction()).crossProduct(Rotations.direction(to));
        Vector3D before = Rotations.direction(frame.toGeographic(SCRIBE));
        Vector3D after = Rotations.direction(frame.carriedAlong(to).toGeographic(SCRIBE));
        assertEquals(Rotations.apart(hinge, before), Rotations.apart(hinge, after), 1e-8);
    }

    @Property
    void carryingIsAdditiveAlongOneGreatCircle(
            @ForAll CoreFrame frame, @ForAll HoleDirection to, @ForAll double share, @ForAll CorePlane plane) {
        double dogleg = frame.direction().angleTo(to);
        Assume.that(dogleg < 170);
        CoreFrame between = frame.carriedAlong(onTheWay(frame.direction(), to, share / 360));
        assertEquals(
                0,
                Rotations.apart(
                        frame.carriedAlong(to).toGeographic(plane),
                        between.carriedAlong(to).toGeographic(plane)),
                1e-11);
    }

    @Property
    void carryingThereAndBackChangesNothing(
            @ForAll CoreFrame frame, @ForAll HoleDirection to, @ForAll CorePlane plane) {
        Assume.that(frame.direction().angleTo(to) < 170);
        CoreFrame back = frame.carriedAlong(to).carriedAlong(frame.direction());
        assertEquals(0, Rotations.apart(frame.toGeographic(plane), back.toGeographic(plane)), 1e-11);
    }

    @Property
    void turningTheLineAndCarryingItCanBeExchanged(
            @ForAll CoreFrame frame, @ForAll HoleDirection to, @ForAll double turn, @ForAll CorePlane plane) {
        Assume.that(frame.direction().angleTo(to) < 170);
        assertEquals(
                0,
                Rotations.apart(
                        frame.turned(turn).carriedAlong(to).toGeographic(plane),
                        frame.carriedAlong(to).turned(turn).toGeographic(plane)),
                1e-11);
    }

    /** -2 atan2(sin(dA/2) cos((I1+I2)/2), cos(dA/2) cos((I2-I1)/2)): Napier's analogy, derived for this project. */
    @Property(tries = 1000)
    void theTurnFromTheLowSideHasAClosedForm(@ForAll HoleDirection from, @ForAll HoleDirection to) {
        Assume.that(sin(toRadians(from.inclination())) > 1e-3 && sin(toRadians(to.inclination())) > 1e-3);
        Assume.that(from.angleTo(to) < 170);
        double half = toRadians(Math.IEEEremainder(to.azimuth() - from.azimuth(), 360) / 2);
        double mean = toRadians((from.inclination() + to.inclination()) / 2);
        double bend = toRadians((to.inclination() - from.inclination()) / 2);
        double turn = -2 * toDegrees(Math.atan2(sin(half) * cos(mean), cos(half) * cos(bend)));
        double found = CoreFrame.at(from, 0).carriedAlong(to).lineAngle();
        assertEquals(0, Math.IEEEremainder(found - turn, 360), 1e-9);
    }

    @Property
    void aHoleThatKeepsItsAzimuthKeepsTheLineOnItsSide(
            @ForAll double fromTwice, @ForAll double toTwice, @ForAll double azimuth, @ForAll double lineAngle) {
        HoleDirection from = HoleDirection.ofInclination(fromTwice / 2, azimuth);
        HoleDirection to = HoleDirection.ofInclination(toTwice / 2, azimuth);
        Assume.that(!from.isVertical() && !to.isVertical() && from.angleTo(to) < 170);
        double found = CoreFrame.at(from, lineAngle).carriedAlong(to).lineAngle();
        // beside the vertical the side itself is only as good as 1e-16 over the sine of the inclination
        double sharpness =
                WallReference.lowSide().sharpness(to) * WallReference.lowSide().sharpness(from);
        Assume.that(sharpness > 1e-6);
        assertEquals(0, Math.IEEEremainder(found - lineAngle, 360), 1e-12 / sharpness);
    }

    @Property
    void theFrameCarriedFromTheVerticalIsAFrameInEveryHole(@ForAll HoleDirection hole, @ForAll CorePlane plane) {
        CoreFrame frame = CoreFrame.carriedTo(hole);
        assertEquals(0, frame.direction().angleTo(hole), 2e-12);
        assertEquals(
                0, Rotations.apart(plane, frame.toCore(frame.toGeographic(plane))), 2e-12, () -> plane + " in " + hole);
    }

    @Property
    void theFrameCarriedFromTheVerticalIsTheOneCarriedAlong(@ForAll HoleDirection hole, @ForAll CorePlane plane) {
        HoleDirection vertical = HoleDirection.ofInclination(hole.inclination() <= 90 ? 0 : 180, 0);
        CoreFrame carried = CoreFrame.at(vertical, WallReference.north(), 0).carriedAlong(hole);
        assertEquals(
                0,
                Rotations.apart(
                        carried.toGeographic(plane), CoreFrame.carriedTo(hole).toGeographic(plane)),
                1e-12);
    }

    private static HoleDirection onTheWay(HoleDirection from, HoleDirection to, double share) {
        Vector3D start = Rotations.direction(from);
        Vector3D end = Rotations.direction(to);
        Vector3D hinge = start.crossProduct(end);
        if (hinge.getNorm() < 1e-9) {
            return to;
        }
        Vector3D point = new Rotation(hinge, share * Vector3D.angle(start, end), RotationConvention.VECTOR_OPERATOR)
                .applyTo(start);
        return HoleDirection.ofVector(point.getX(), point.getY(), point.getZ());
    }
}
