package io.github.kernlot.orientation.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Domain(SolveDomain.class)
@Domain(DomainContext.Global.class)
class PoleConeProperties {

    private static final PlaneOrientation LEVEL = PlaneOrientation.ofDipAndDirection(0, 0);

    private static double alpha(PlaneOrientation plane, HoleDirection hole) {
        return Poles.alpha(Poles.normal(plane), Poles.axis(hole));
    }

    /** Where cones touch, rounding of 1e-14 in an angle moves the plane by its square root. */
    private static boolean isAmong(PlaneOrientation plane, ConeMeeting meeting) {
        return meeting.planes().stream().anyMatch(found -> found.angleTo(plane) < 2e-5);
    }

    @Property
    void thePlaneIsAmongThoseOfTwoHoles(
            @ForAll PlaneOrientation plane, @ForAll HoleDirection first, @ForAll HoleDirection second) {
        double apart = first.angleTo(second);
        Assume.that(apart > 0.1 && apart < 179.9);
        ConeMeeting meeting =
                PoleCone.of(first, alpha(plane, first)).meeting(PoleCone.of(second, alpha(plane, second)));
        assertTrue(isAmong(plane, meeting), meeting::toString);
        assertTrue(meeting.planes().size() <= 4);
        for (PlaneOrientation found : meeting.planes()) {
            assertEquals(alpha(plane, first), alpha(found, first), 1e-9);
            assertEquals(alpha(plane, second), alpha(found, second), 1e-9);
        }
    }

    @Property
    void thePlaneIsAmongThoseOfItsDipAndOfItsStrike(@ForAll PlaneOrientation plane, @ForAll HoleDirection hole) {
        PoleCone cone = PoleCone.of(hole, alpha(plane, hole));
        assertTrue(plane.dip() >= cone.leastDip() - 1e-9 && plane.dip() <= cone.greatestDip() + 1e-9);
        ConeMeeting atDip = cone.atDip(plane.dip());
        assertTrue(atDip.kind() == ConeMeeting.Kind.PARALLEL || isAmong(plane, atDip), atDip::toString);
        ConeMeeting withStrike = cone.withStrike(plane.strike());
        assertTrue(withStrike.kind() == ConeMeeting.Kind.PARALLEL || isAmong(plane, withStrike), withStrike::toString);
        assertTrue(withStrike.planes().size() <= 2);
    }

    @Property
    void turningTheNorthTurnsTheSolutions(
            @ForAll PlaneOrientation plane,
            @ForAll HoleDirection first,
            @ForAll HoleDirection second,
            @ForAll @DoubleRange(min = -360, max = 360) double turn) {
        double apart = first.angleTo(second);
        Assume.that(apart > 0.1 && apart < 179.9);
        ConeMeeting meeting =
                PoleCone.of(first, alpha(plane, first)).meeting(PoleCone.of(second, alpha(plane, second)));
        ConeMeeting turned = PoleCone.of(first.withAzimuthTurned(turn), alpha(plane, first))
                .meeting(PoleCone.of(second.withAzimuthTurned(turn), alpha(plane, second)));
        for (PlaneOrientation found : meeting.planes()) {
            assertTrue(isAmong(found.withAzimuthTurned(turn), turned));
        }
    }

    @Property
    void aHoleThatRisesSeesTheMirroredPlane(@ForAll PlaneOrientation plane, @ForAll HoleDirection hole) {
        HoleDirection up = HoleDirection.ofInclination(180 - hole.inclination(), hole.azimuth());
        PoleCone down = PoleCone.of(hole, alpha(plane, hole));
        PoleCone mirrored = PoleCone.of(up, down.alpha());
        assertEquals(down.leastDip(), mirrored.leastDip(), 1e-12);
        assertEquals(down.greatestDip(), mirrored.greatestDip(), 1e-12);
        assertEquals(
                down.atDip(plane.dip()).planes().size(),
                mirrored.atDip(plane.dip()).planes().size());
    }

    @Property
    void aLevelPlaneHasThePlungeForItsAlpha(@ForAll HoleDirection hole) {
        assertEquals(Math.abs(hole.plunge()), alpha(LEVEL, hole), 1e-9);
    }
}
