package io.github.kernlot.orientation;

import static java.lang.Math.atan2;
import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.toDegrees;
import static java.lang.Math.toRadians;
import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

/**
 * Closed forms for the same angles, derived and checked numerically for this project; no publication. P is the plunge of the hole,
 * A its azimuth, the line lies on the low side.
 */
@Domain(CoreDomain.class)
class ClosedFormProperties {

    private static final double CLOSE = 2e-12;

    @Property(tries = 1000)
    void dipAndDipDirectionHaveAClosedForm(@ForAll HoleDirection hole, @ForAll CorePlane plane) {
        Assume.that(!hole.isVertical());
        double p = toRadians(hole.plunge());
        double alpha = toRadians(plane.alpha());
        double beta = toRadians(plane.beta());
        // upward component of the normal on the down-hole side, and its parts along and across the azimuth of the hole
        double up = cos(alpha) * cos(beta) * cos(p) - sin(alpha) * sin(p);
        double along = sin(alpha) * cos(p) + cos(alpha) * cos(beta) * sin(p);
        double across = cos(alpha) * sin(beta);
        double dip = toDegrees(atan2(Math.hypot(along, across), Math.abs(up)));
        double dipDirection = hole.azimuth() + toDegrees(atan2(across, along)) + (up < 0 ? 180 : 0);

        PlaneOrientation found = CoreFrame.at(hole, 0).toGeographic(plane);
        assertEquals(dip, found.dip(), CLOSE);
        boolean axial = Math.abs(up) < 1e-13;
        double apart = Math.IEEEremainder(found.dipDirection() - dipDirection, axial ? 180 : 360);
        assertEquals(0, apart * sin(toRadians(dip)), CLOSE);
    }

    @Property(tries = 1000)
    void aLineInAPlaneHasItsAngleToTheAxisAndItsDeltaInClosedForm(@ForAll LineInPlane line) {
        double alpha = toRadians(line.plane().alpha());
        double gamma = toRadians(line.gamma());
        // cos(axis angle) = cos(gamma) cos(alpha), tan(delta - beta) = tan(gamma) / sin(alpha)
        double along = cos(gamma) * cos(alpha);
        double axisAngle = toDegrees(atan2(Math.hypot(cos(gamma) * sin(alpha), sin(gamma)), Math.abs(along)));
        double delta =
                line.plane().beta() + toDegrees(atan2(sin(gamma), cos(gamma) * sin(alpha))) + (along < 0 ? 180 : 0);

        CoreLine found = line.toCoreLine();
        assertEquals(axisAngle, found.axisAngle(), CLOSE);
        boolean axial = Math.abs(along) < 1e-13;
        double apart = Math.IEEEremainder(found.delta() - delta, axial ? 180 : 360);
        assertEquals(0, apart * sin(toRadians(axisAngle)), CLOSE);
    }

    @Property(tries = 1000)
    void theRakeOfALineMovesWithItsGamma(@ForAll CoreFrame frame, @ForAll LineInPlane line) {
        PlaneOrientation plane = frame.toGeographic(line.plane());
        Assume.that(plane.dip() > 1e-3 && plane.dip() < 90 - 1e-9);
        // at alpha 0 the plane has no side that faces down-hole
        Assume.that(line.plane().alpha() > 1e-9);
        // gamma is clockwise looking down-hole, rake clockwise looking at the plane from above
        double rake = rake(plane, frame.toGeographic(line));
        double ofLongAxis = rake(plane, frame.toGeographic(line.plane().line(0)));
        double sense = facesDown(frame, line.plane()) ? 1 : -1;
        assertEquals(0, Math.IEEEremainder(rake - ofLongAxis - sense * line.gamma(), 180), 1e-8);
    }

    /** Whether the normal on the down-hole side points downwards. */
    private static boolean facesDown(CoreFrame frame, CorePlane plane) {
        HoleDirection axis = frame.direction();
        PlaneOrientation ground = frame.toGeographic(plane);
        return Rotations.normal(ground).dotProduct(Rotations.direction(axis)) > 0;
    }

    /** Down from the right-hand strike, [0, 180], from the components of the line along strike and down dip. */
    private static double rake(PlaneOrientation plane, LineOrientation line) {
        double trend = toRadians(line.trend() - plane.strike());
        double plunge = toRadians(line.plunge());
        double along = cos(plunge) * cos(trend);
        double downDip =
                cos(plunge) * sin(trend) * cos(toRadians(plane.dip())) + sin(plunge) * sin(toRadians(plane.dip()));
        return toDegrees(atan2(downDip, along));
    }
}
