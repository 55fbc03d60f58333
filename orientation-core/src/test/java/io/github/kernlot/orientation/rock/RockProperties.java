package io.github.kernlot.orientation.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.solve.PlaneEstimate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class RockProperties {

    private static PlaneOrientation plane(double dip, double direction) {
        return PlaneOrientation.ofDipAndDirection(dip, direction);
    }

    @Property
    void theDisplacementAndTheSineOfAlphaAgreeInHolesThatFallAndRise(
            @ForAll @DoubleRange(max = 180) double inclination,
            @ForAll @DoubleRange(max = 360) double azimuth,
            @ForAll @DoubleRange(max = 90) double dip,
            @ForAll @DoubleRange(max = 360) double direction,
            @ForAll @DoubleRange(max = 500) double from,
            @ForAll @DoubleRange(max = 80) double length) {
        HoleDirection hole = HoleDirection.ofInclination(inclination, azimuth);
        HoleIntercept inHole = HoleIntercept.of(HolePath.straight(hole), from, from + length);
        double alpha = Ways.alpha(hole, plane(dip, direction));
        assertEquals(
                CoreIntercept.of(length, alpha).trueThickness().metres(),
                inHole.trueThickness(plane(dip, direction)).metres(),
                1e-9);
    }

    @Property
    void verticalAndHorizontalThicknessGoWithTheDip(
            @ForAll @DoubleRange(max = 180) double inclination,
            @ForAll @DoubleRange(max = 90) double dip,
            @ForAll @DoubleRange(max = 360) double direction,
            @ForAll @DoubleRange(max = 4) double sigma) {
        HoleIntercept inHole =
                HoleIntercept.of(HolePath.straight(HoleDirection.ofInclination(inclination, 77)), 10, 60);
        PlaneEstimate estimate = new PlaneEstimate(plane(dip, direction), sigma, sigma, 0);
        double truth = inHole.trueThickness(estimate).metres();
        inHole.verticalThickness(estimate).ifPresent(vertical -> {
            assertEquals(truth, vertical.metres() * Math.cos(Math.toRadians(dip)), 1e-6);
            assertTrue(vertical.metres() >= truth - 1e-9);
        });
        inHole.horizontalThickness(estimate)
                .ifPresent(level -> assertEquals(truth, level.metres() * Math.sin(Math.toRadians(dip)), 1e-6));
        assertFalse(Double.isNaN(inHole.trueThickness(estimate).sigma()));
    }

    @Property
    void thicknessOfAWedgeLiesBetweenItsEnds(
            @ForAll @DoubleRange(max = 90) double dip,
            @ForAll @DoubleRange(max = 360) double direction,
            @ForAll @DoubleRange(max = 90) double otherDip,
            @ForAll @DoubleRange(max = 360) double otherDirection) {
        HoleIntercept inHole = HoleIntercept.of(HolePath.straight(HoleDirection.ofInclination(40, 77)), 10, 60);
        WedgeThickness wedge = inHole.betweenContacts(plane(dip, direction), plane(otherDip, otherDirection));
        assertTrue(wedge.bisecting() <= 50 + 1e-9);
        assertEquals(plane(dip, direction).angleTo(plane(otherDip, otherDirection)), wedge.angle(), 1e-9);
        // the normal of one contact reaches the other no nearer than the foot of the perpendicular to it
        wedge.atFirst()
                .ifPresent(first -> assertTrue(first
                        >= inHole.trueThickness(plane(otherDip, otherDirection)).metres() - 1e-9));
    }

    @Property
    void expectedAnglesAreNumbersInTheirRanges(
            @ForAll @DoubleRange(max = 180) double inclination,
            @ForAll @DoubleRange(max = 90) double dip,
            @ForAll @DoubleRange(max = 360) double direction,
            @ForAll @DoubleRange(max = 90) double scatter) {
        ExpectedAngles expected = ExpectedAngles.at(
                HolePath.straight(HoleDirection.ofInclination(inclination, 210)), 5, plane(dip, direction), scatter);
        assertTrue(expected.leastAlpha() <= expected.alpha() && expected.alpha() <= expected.greatestAlpha());
        assertTrue(expected.leastAlpha() >= 0 && expected.greatestAlpha() <= 90);
        assertTrue(expected.betaHalfRange() >= 0 && expected.betaHalfRange() <= 180);
    }

    @Property
    void aSetSeenAlongItsNormalNeedsNoCorrection(@ForAll @DoubleRange(min = 1, max = 50) double cap) {
        OrientationBias bias = new OrientationBias(cap);
        assertEquals(1, bias.weight(90));
        assertEquals(cap, bias.weight(0));
        assertEquals(1 / cap, Math.sin(Math.toRadians(bias.blindAlpha())), 1e-12);
    }
}
