package io.github.kernlot.orientation.line;

import static io.github.kernlot.orientation.line.Marks.mark;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Marks, joins and line angles as values: what they accept, refuse and print. */
class OrientationMarkTest {

    @Test
    void anOffsetOf360IsZero() {
        assertEquals(0, mark(10, 360).offset());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 360.001, Double.NaN, Double.NEGATIVE_INFINITY})
    void anOffsetOutsideACircleIsRefused(double offset) {
        assertRefused("offset is ", "[0, 360]", () -> mark(10, offset));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, Double.NaN, Double.POSITIVE_INFINITY})
    void aDepthAboveTheCollarIsRefused(double depth) {
        assertRefused("depth is ", "0 or above", () -> mark(depth, 10));
        assertRefused("depth is ", "0 or above", () -> new Join(depth, JoinFit.LOCKED));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aSigmaThatIsNotAboveZeroIsRefused(double sigma) {
        assertRefused("mark sigma is ", "above 0", () -> mark(10, 10).withSigma(sigma));
    }

    @Test
    void aMarkKeepsItsSigmaWhenItIsLeftOut() {
        OrientationMark mark = mark(27.3, 338).withSigma(3).leftOutFor("slipped");

        assertEquals(OptionalDouble.of(3), mark.sigma());
        assertEquals(Optional.of("slipped"), mark.leftOut());
        assertEquals(mark, mark(27.3, 338).leftOutFor("slipped").withSigma(3));
    }

    @Test
    void aMarkPrintsAsItIsWrittenInALog() {
        assertEquals("mark at 27.30 m, offset 338.0", mark(27.3, 338).toString());
        assertEquals(
                "mark at 27.30 m, offset 008.0, left out (slipped)",
                mark(27.3, 8).leftOutFor("slipped").toString());
    }

    @Test
    void theFrameByAMarkPutsItsSideWhereTheMarkStands() {
        HoleDirection direction = HoleDirection.ofDip(-60, 90);
        HolePath path = HolePath.straight(direction);

        for (WallReference side : List.of(WallReference.lowSide(), WallReference.north())) {
            assertEquals(360 - 338, mark(27.3, 338).frameBy(path, side).lineAngle(side), 1e-12);
            assertEquals(-60, mark(27.3, 338).frameBy(path, side).direction().dip(), 1e-12);
        }
    }

    @Test
    void aVerticalHoleHasNoFrameByAMarkOfTheLowSide() {
        HolePath path = HolePath.straight(HoleDirection.ofDip(-90, 0));

        assertRefused(
                "mark at 27.30 m",
                "WallReference.north()",
                () -> mark(27.3, 338).frameBy(path, WallReference.lowSide()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN})
    void aLineSigmaBelowZeroIsRefused(double sigma) {
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(-60, 90), 25);

        assertRefused("line sigma is ", "[0, ", () -> new LineAngle(frame, WallReference.lowSide(), sigma));
    }

    @Test
    void aLineAnglePrintsWithItsSideAndSigma() {
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(-60, 90), 25);

        assertEquals("025.0 from low side, sigma 2.1", new LineAngle(frame, WallReference.lowSide(), 2.1).toString());
    }

    @Test
    void aLineAngleIsShownOnlyWhereItsSideIsSharp() {
        // the limit of the sine is 1e-6, which is an inclination of 5.73e-5 degrees
        assertFalse(hasMean(HoleDirection.ofInclination(5.7e-5, 90)));
        assertTrue(hasMean(HoleDirection.ofInclination(5.8e-5, 90)));
        assertFalse(hasMean(HoleDirection.ofInclination(180 - 5.7e-5, 90)));
    }

    private static boolean hasMean(HoleDirection direction) {
        return new LineAngle(CoreFrame.carriedTo(direction), WallReference.lowSide(), 1).hasMean();
    }

    private static void assertRefused(String start, String range, Runnable call) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, call::run);
        assertTrue(refused.getMessage().startsWith(start), refused.getMessage());
        assertTrue(refused.getMessage().contains(range), refused.getMessage());
    }
}
