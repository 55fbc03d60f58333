package io.github.kernlot.orientation.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.PlaneOrientation;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Thickness, spacing and expected angles along a hole that bends. */
class CurvedHoleTest {

    private static final CurvedPath PATH = new CurvedPath(20, 0.2, 75);
    private static final PlaneOrientation PLANE = PlaneOrientation.ofDipAndDirection(50, 240);

    @Test
    void theThicknessIsTheIntegralOfSineAlphaAlongTheHole() {
        // an independent way: small straight lengths, each L sin(alpha), while the hole does not turn back through the
        // plane
        double sum = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            double depth = 30 + 100 * (i + 0.5) / steps;
            sum += CoreIntercept.of(100.0 / steps, Ways.alpha(PATH.directionAt(depth), PLANE))
                    .trueThickness()
                    .metres();
        }
        HoleIntercept intercept = HoleIntercept.of(PATH, 30, 130);
        assertEquals(sum, intercept.trueThickness(PLANE).metres(), 1e-5);
        // the straight formula at either end is off by metres
        double atStart = CoreIntercept.of(100, Ways.alpha(PATH.directionAt(30), PLANE))
                .trueThickness()
                .metres();
        assertTrue(Math.abs(atStart - sum) > 1);
        assertEquals(100, intercept.length());
    }

    @Test
    void spacingsAddUpToTheThickness() {
        List<Double> depths = List.of(130.0, 30.0, 47.0, 90.0, 91.0);
        SetSpacing spacing = SetSpacing.of(PATH, depths, PLANE);
        assertEquals(4, spacing.spacings().size());
        assertEquals(
                HoleIntercept.of(PATH, 30, 130).trueThickness(PLANE).metres(),
                spacing.spacings().stream().mapToDouble(Double::doubleValue).sum(),
                1e-9);
        assertEquals(
                HoleIntercept.of(PATH, 30, 47).trueThickness(PLANE).metres(),
                spacing.spacings().get(0),
                1e-12);
    }

    @Test
    void expectedAnglesAreThoseOfThePlaneOnTheCore() {
        for (double depth = 0; depth <= 300; depth += 25) {
            ExpectedAngles expected = ExpectedAngles.at(PATH, depth, PLANE, 0);
            CoreFrame frame = CoreFrame.at(PATH.directionAt(depth), 0);
            assertEquals(frame.toCore(PLANE).alpha(), expected.alpha(), 1e-12);
            assertEquals(frame.toCore(PLANE).beta(), expected.beta().orElseThrow(), 1e-12);
            assertEquals(expected.alpha(), expected.leastAlpha());
            assertEquals(expected.alpha(), expected.greatestAlpha());
            assertEquals(0, expected.betaHalfRange());
        }
    }

    @Test
    void theRangesHoldAllPlanesWithinTheScatterAndAreReached() {
        Random random = new Random(4);
        for (double depth : new double[] {0, 80, 160, 260}) {
            for (double scatter : new double[] {5, 20}) {
                ExpectedAngles expected = ExpectedAngles.at(PATH, depth, PLANE, scatter);
                CoreFrame frame = CoreFrame.at(PATH.directionAt(depth), 0);
                double least = 90;
                double greatest = 0;
                double farthest = 0;
                for (int i = 0; i < 40_000; i++) {
                    double turn = 2 * Math.PI * random.nextDouble();
                    PlaneOrientation near = tilted(scatter * 0.9999, turn);
                    double alpha = frame.toCore(near).alpha();
                    least = Math.min(least, alpha);
                    greatest = Math.max(greatest, alpha);
                    double off = frame.toCore(near).beta() - expected.beta().orElseThrow();
                    farthest = Math.max(farthest, Math.abs(Math.IEEEremainder(off, 360)));
                }
                if (!expected.foldsOver()) {
                    assertEquals(expected.leastAlpha(), least, 0.02);
                    assertEquals(expected.betaHalfRange(), farthest, 0.1);
                }
                if (expected.alpha() + scatter < 90) {
                    assertEquals(expected.greatestAlpha(), greatest, 0.02);
                }
            }
        }
    }

    /** The plane whose pole lies so far from that of the plane, in a direction. */
    private static PlaneOrientation tilted(double angle, double turn) {
        double dip = Math.toRadians(PLANE.dip());
        double direction = Math.toRadians(PLANE.dipDirection() + 180);
        double[] pole = {Math.sin(dip) * Math.cos(direction), Math.sin(dip) * Math.sin(direction), Math.cos(dip)};
        double[] one = {Math.cos(dip) * Math.cos(direction), Math.cos(dip) * Math.sin(direction), -Math.sin(dip)};
        double[] two = {-Math.sin(direction), Math.cos(direction), 0};
        double[] tilted = new double[3];
        for (int i = 0; i < 3; i++) {
            tilted[i] = Math.cos(Math.toRadians(angle)) * pole[i]
                    + Math.sin(Math.toRadians(angle)) * (Math.cos(turn) * one[i] + Math.sin(turn) * two[i]);
        }
        return PlaneOrientation.ofNormal(tilted[0], tilted[1], tilted[2]);
    }

    @Test
    void scatterPastAlphaZeroFoldsOver() {
        HolePath along = HolePath.straight(HoleDirection.ofPlunge(50, 240));
        ExpectedAngles expected = ExpectedAngles.at(along, 10, PLANE, 8);
        assertTrue(expected.alpha() < 1e-9);
        assertEquals(0, expected.leastAlpha());
        assertEquals(8, expected.greatestAlpha(), 1e-9);
        assertTrue(expected.foldsOver());
        assertEquals(8, expected.betaHalfRange(), 1e-9);
    }

    @Test
    void scatterRoundAlphaNinetyShowsAnyBeta() {
        HolePath across = HolePath.straight(HoleDirection.ofPlunge(40, 60));
        ExpectedAngles expected = ExpectedAngles.at(across, 10, PLANE, 3);
        assertEquals(90, expected.alpha(), 1e-9);
        assertEquals(180, expected.betaHalfRange());
        assertEquals(87, expected.leastAlpha(), 1e-9);
    }

    @Test
    void aVerticalHoleHasAlphaAndNoBeta() {
        ExpectedAngles expected = ExpectedAngles.at(HolePath.straight(HoleDirection.ofPlunge(90, 12)), 5, PLANE, 5);
        assertEquals(40, expected.alpha(), 1e-9);
        assertTrue(expected.beta().isEmpty());
        assertEquals("5.00 m: alpha 40.0 (35.0 to 45.0), no beta", expected.toString());
    }

    @Test
    void withoutScatterNothingFoldsOverAndNoRangeIsPrinted() {
        HolePath vertical = HolePath.straight(HoleDirection.ofPlunge(90, 0));
        ExpectedAngles along = ExpectedAngles.at(vertical, 5, PlaneOrientation.ofDipAndDirection(90, 0), 0);
        assertFalse(along.foldsOver());
        assertEquals("5.00 m: alpha 0.0, no beta", along.toString());
    }

    @Test
    void aRowPrintsItsBetaAndHowFarItScatters() {
        HoleDirection hole = HoleDirection.ofPlunge(60, 90);
        OptionalDouble beta = OptionalDouble.of(51.2);
        assertEquals(
                "120.00 m: alpha 41.6 (36.6 to 46.6), beta 051.2 (044.5 to 057.9)",
                new ExpectedAngles(120, hole, 41.6, 36.6, 46.6, beta, 6.7, false).toString());
        assertEquals(
                "120.00 m: alpha 4.0 (0.0 to 9.0), beta 051.2 (351.2 to 111.2) or opposite",
                new ExpectedAngles(120, hole, 4, 0, 9, beta, 60, true).toString());
        assertEquals(
                "120.00 m: alpha 41.6, beta 051.2",
                new ExpectedAngles(120, hole, 41.6, 41.6, 41.6, beta, 0, false).toString());
        assertEquals(
                "5.00 m: alpha 85.0 (75.0 to 90.0), beta 180.0 (any)",
                ExpectedAngles.at(
                                HolePath.straight(HoleDirection.ofPlunge(85, 90)),
                                5,
                                PlaneOrientation.ofDipAndDirection(0, 0),
                                10)
                        .toString());
    }

    @Test
    void theTableHasARowAtEachStepAndAtTheEnd() {
        List<ExpectedAngles> table = ExpectedAngles.along(PATH, 100, 130, 7, PLANE, 2);
        assertEquals(
                List.of(100.0, 107.0, 114.0, 121.0, 128.0, 130.0),
                table.stream().map(ExpectedAngles::depth).toList());
        assertEquals(4, ExpectedAngles.along(PATH, 0, 0.3, 0.1, PLANE, 2).size());
        assertEquals(1, ExpectedAngles.along(PATH, 5, 5, 1, PLANE, 0).size());
        // 278.0 + 284 x 0.7 is 476.79999999999995 in binary
        assertEquals(
                285, ExpectedAngles.along(PATH, 278.0, 476.8, 0.7, PLANE, 2).size());
        assertThrows(IllegalArgumentException.class, () -> ExpectedAngles.along(PATH, 5, 4, 1, PLANE, 0));
        assertThrows(IllegalArgumentException.class, () -> ExpectedAngles.along(PATH, 0, 9, 0, PLANE, 0));
        assertThrows(IllegalArgumentException.class, () -> ExpectedAngles.along(PATH, 0, 1e9, 1e-3, PLANE, 0));
        assertThrows(IllegalArgumentException.class, () -> ExpectedAngles.at(PATH, 0, PLANE, Double.NaN));
    }
}
