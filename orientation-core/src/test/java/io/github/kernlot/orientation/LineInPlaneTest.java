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

@Domain(CoreDomain.class)
class LineInPlaneTest {

    @Property
    void aLineInAPlaneLiesInIt(@ForAll CoreFrame frame, @ForAll LineInPlane line) {
        Vector3D pole = Rotations.normal(frame.toGeographic(line.plane()));
        Vector3D inGround = Rotations.direction(frame.toGeographic(line));
        assertEquals(90, Rotations.apart(pole, inGround), 2e-12);
    }

    @Property
    void gammaAndGammaPlusHalfATurnAreOneLine(@ForAll CoreFrame frame, @ForAll LineInPlane line) {
        LineInPlane other = line.plane().line((line.gamma() + 180) % 360);
        assertEquals(0, Rotations.apart(frame.toGeographic(line), frame.toGeographic(other)), 2e-12);
        assertEquals(0, Rotations.apart(line.toCoreLine(), other.toCoreLine()), 2e-12);
    }

    @Property
    void atGammaNoughtTheLineIsTheLongAxis(@ForAll CorePlane plane) {
        Assume.that(plane.hasBeta());
        CoreLine axis = plane.line(0).toCoreLine();
        assertEquals(0, Rotations.apart(CoreLine.ofAxisAngleAndDelta(plane.alpha(), plane.beta()), axis), 2e-12);
    }

    @Property
    void atAlphaNoughtGammaTurnsRoundWithBeta(@ForAll double beta, @ForAll double gamma) {
        LineInPlane one = CorePlane.of(0, beta).line(gamma);
        LineInPlane other = CorePlane.of(0, (beta + 180) % 360).line((360 - gamma) % 360);
        assertEquals(0, Rotations.apart(one.toCoreLine(), other.toCoreLine()), 2e-12);
    }

    @Property
    void theNearestLineInThePlaneOfALineInThePlaneIsItself(@ForAll LineInPlane line) {
        LineInPlane found = LineInPlane.nearest(line.plane(), line.toCoreLine());
        assertTrue(found.gamma() >= 0 && found.gamma() < 180);
        assertEquals(0, Math.IEEEremainder(found.gamma() - line.gamma(), 180), 2e-12);
    }

    @Property
    void noLineInThePlaneIsNearerThanTheNearest(@ForAll CorePlane plane, @ForAll CoreLine line, @ForAll double gamma) {
        Assume.that(plane.hasBeta());
        double nearest = Rotations.apart(LineInPlane.nearest(plane, line).toCoreLine(), line);
        assertTrue(nearest <= Rotations.apart(plane.line(gamma).toCoreLine(), line) + 2e-12);
    }

    @Property
    void aLineAtRightAnglesToThePlaneGivesGammaNought(@ForAll CorePlane plane) {
        Assume.that(plane.hasBeta());
        CoreLine normal = CoreLine.ofAxisAngleAndDelta(90 - plane.alpha(), (plane.beta() + 180) % 360);
        assertEquals(0.0, LineInPlane.nearest(plane, normal).gamma());
    }

    @Test
    void aPlaneAtRightAnglesToTheCoreHasNoGammaAndTheErrorNamesTheWayOut() {
        String expected = "alpha is 90 degrees: the plane has no long axis from which gamma could be read;"
                + " give the line as CoreLine with its delta";
        CorePlane plane = CorePlane.of(90, 20);
        assertEquals(expected, refusal(() -> plane.line(10)));
        assertEquals(expected, refusal(() -> new LineInPlane(plane, 10)));
        assertEquals(expected, refusal(() -> LineInPlane.nearest(plane, CoreLine.ofAxisAngleAndDelta(80, 0))));
        CorePlane.of(Math.nextDown(90.0), 20).line(10);
    }

    private static String refusal(Runnable asked) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, asked::run).getMessage());
    }
}
