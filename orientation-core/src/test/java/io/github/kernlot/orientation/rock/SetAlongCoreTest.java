package io.github.kernlot.orientation.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.PlaneOrientation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SetAlongCoreTest {

    private static final OrientationBias NONE = new OrientationBias(1);
    private static final OrientationBias WIDE = new OrientationBias(10);

    private static List<PlaneOrientation> planes(String text) {
        return List.of(text.split(" ")).stream()
                .map(each -> each.split("/"))
                .map(parts ->
                        PlaneOrientation.ofDipAndDirection(Double.parseDouble(parts[0]), Double.parseDouble(parts[1])))
                .toList();
    }

    @ParameterizedTest(name = "{0} weighted {5}")
    @CsvFileSource(resources = "weighted-mean.csv", useHeadersInDisplayName = true)
    void theWeightedMeanIsThatOfTheWorkedExample(
            String id,
            double trend,
            double plunge,
            String planes,
            String alphas,
            boolean weighted,
            double dip,
            double dipDirection) {
        HoleDirection hole = HoleDirection.ofPlunge(plunge, trend);
        String[] expected = alphas.split(" ");
        for (int i = 0; i < expected.length; i++) {
            assertEquals(
                    Double.parseDouble(expected[i]),
                    Ways.alpha(hole, planes(planes).get(i)),
                    0.0006);
        }
        PlaneOrientation mean = (weighted ? WIDE : NONE).weightedMean(hole, planes(planes));
        assertEquals(dip, mean.dip(), 0.0006);
        assertEquals(dipDirection, mean.dipDirection(), 0.0006);
    }

    @Test
    void theMeanDoesNotCareForTheOrderOfAWideSet() {
        HoleDirection hole = HoleDirection.ofPlunge(40, 70);
        Random random = new Random(4);
        for (int run = 0; run < 300; run++) {
            List<PlaneOrientation> wide = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                wide.add(PlaneOrientation.ofNormal(
                        1 + 0.4 * random.nextGaussian(), 0.4 * random.nextGaussian(), 0.4 * random.nextGaussian()));
            }
            PlaneOrientation mean = WIDE.weightedMean(hole, wide);
            for (int i = 0; i < 8; i++) {
                Collections.rotate(wide, 1);
                assertEquals(0, mean.angleTo(WIDE.weightedMean(hole, wide)), 1e-9);
            }
        }
    }

    @Test
    void theMeanDoesNotCareForTheSideOfAPole() {
        // planes to both sides of vertical: their downward poles point apart
        List<PlaneOrientation> steep = List.of(
                PlaneOrientation.ofDipAndDirection(88, 90),
                PlaneOrientation.ofDipAndDirection(86, 270),
                PlaneOrientation.ofDipAndDirection(88, 90));
        PlaneOrientation mean = NONE.weightedMean(HoleDirection.ofPlunge(20, 90), steep);
        assertEquals(90, mean.dip(), 0.01);
        PlaneOrientation level = PlaneOrientation.ofDipAndDirection(0, 0);
        assertEquals(level, NONE.weightedMean(HoleDirection.ofPlunge(20, 90), List.of(level)));
        assertEquals(
                "there is no plane; expected one or more",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> NONE.weightedMean(HoleDirection.ofPlunge(20, 90), List.of()))
                        .getMessage());
    }

    @Test
    void theMeanOfFourPolesRoundAnAxisIsThatAxis() {
        // whichever axis it is: begun from another, half of the poles would be turned to the wrong side
        double[][] axes = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        for (double[] axis : axes) {
            List<PlaneOrientation> four = new ArrayList<>();
            for (double one : new double[] {-0.1, 0.1}) {
                for (double other : new double[] {-0.1, 0.1}) {
                    four.add(PlaneOrientation.ofNormal(
                            axis[0] + one * axis[1] + one * axis[2],
                            axis[1] + one * axis[0] + other * axis[2],
                            axis[2] + other * axis[0] + other * axis[1]));
                }
            }
            PlaneOrientation expected = PlaneOrientation.ofNormal(axis[0], axis[1], axis[2]);
            assertEquals(0, expected.angleTo(NONE.weightedMean(HoleDirection.ofPlunge(20, 90), four)), 1e-12);
        }
    }

    @Test
    void theWeightIsTheInverseSineUpToItsCap() {
        assertEquals(1, WIDE.weight(90));
        assertEquals(2, WIDE.weight(30), 1e-12);
        assertEquals(10, WIDE.weight(0));
        assertEquals(10, WIDE.weight(1));
        assertTrue(WIDE.isCapped(5));
        assertFalse(WIDE.isCapped(6));
        assertFalse(new OrientationBias(2).isCapped(30));
        assertEquals(Math.toDegrees(Math.asin(0.1)), WIDE.blindAlpha(), 1e-12);
        assertEquals(90, NONE.blindAlpha());
        // sin x is x pi / 180 there
        assertEquals(1e-200, OrientationBias.ofBlindAlpha(1e-200).blindAlpha(), 1e-214);
        assertEquals(
                4, OrientationBias.ofBlindAlpha(Math.toDegrees(Math.asin(0.25))).cap(), 1e-12);
        assertEquals("weights up to 4.0, blind below alpha 14.5", OrientationBias.ASSUMED.toString());
    }

    @Test
    void theBlindZoneIsWhereNoHoleLooks() {
        HoleDirection down = HoleDirection.ofPlunge(90, 0);
        HoleDirection east = HoleDirection.ofPlunge(0, 90);
        PlaneOrientation upright = PlaneOrientation.ofDipAndDirection(90, 90);
        OrientationBias bias = OrientationBias.ofBlindAlpha(15);
        assertTrue(bias.isBlindTo(List.of(down), upright));
        assertFalse(bias.isBlindTo(List.of(down, east), upright));
        assertTrue(bias.isBlindTo(List.of(down, east), PlaneOrientation.ofDipAndDirection(90, 0)));
        assertEquals(Math.sin(Math.toRadians(15)), bias.blindShare(List.of(down)), 1e-12);
        assertEquals(Math.sin(Math.toRadians(15)), bias.blindShare(List.of(down, down)), 0.002);
        // two bands of a sphere at right angles: |x| and |y| below s; by simulation
        Random random = new Random(1);
        int blind = 0;
        int runs = 400_000;
        for (int i = 0; i < runs; i++) {
            double x = random.nextGaussian();
            double y = random.nextGaussian();
            double z = random.nextGaussian();
            double limit = Math.sin(Math.toRadians(15)) * Math.sqrt(x * x + y * y + z * z);
            blind += Math.abs(x) < limit && Math.abs(y) < limit ? 1 : 0;
        }
        assertEquals(blind / (double) runs, bias.blindShare(List.of(down, east)), 0.003);
        assertThrows(IllegalArgumentException.class, () -> bias.blindShare(List.of()));
        assertThrows(IllegalArgumentException.class, () -> bias.isBlindTo(List.of(), upright));
    }

    @Test
    void membersOfOneAlphaAreSpacedBySineAlpha() {
        SetAlongCore set = SetAlongCore.of(30, Collections.nCopies(12, 30.0), WIDE);
        assertEquals(12, set.count());
        assertEquals(0.4, set.linearFrequency(), 1e-12);
        assertEquals(2.5, set.apparentSpacing().orElseThrow(), 1e-12);
        assertEquals(0.8, set.frequency(), 1e-12);
        assertEquals(1.25, set.spacing().orElseThrow(), 1e-12);
        assertEquals(2 * Math.sqrt(12) / 30, set.frequencySigma(), 1e-12);
        assertEquals(0, set.cappedCount());
        assertEquals("12 in 30.00 m: 0.40 a metre of core, 0.80 +- 0.23 across the set", set.toString());
    }

    @Test
    void aHoleThroughAKnownSetFindsItsFrequency() {
        // planes that scatter 10 degrees, 2 a metre along their own normals; a hole meets each in proportion to
        // sin(alpha). By simulation
        Random random = new Random(5);
        PlaneOrientation mean = PlaneOrientation.ofDipAndDirection(50, 120);
        HoleDirection hole = HoleDirection.ofPlunge(70, 160);
        double length = 20_000;
        List<Double> alphas = new ArrayList<>();
        for (int i = 0; i < 2 * length; i++) {
            PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(
                    Math.max(0, Math.min(90, mean.dip() + 10 * random.nextGaussian())),
                    mean.dipDirection() + 10 * random.nextGaussian());
            double alpha = Ways.alpha(hole, plane);
            if (random.nextDouble() < Math.sin(Math.toRadians(alpha))) {
                alphas.add(alpha);
            }
        }
        SetAlongCore set = SetAlongCore.of(length, alphas, new OrientationBias(50));
        assertEquals(2, set.frequency(), 3 * set.frequencySigma() + 0.002);
        assertTrue(set.linearFrequency() < 1.9);
    }

    @Test
    void whatIsHeldByTheCapIsTold() {
        SetAlongCore set = SetAlongCore.of(10, List.of(40.0, 3.0, 0.0), OrientationBias.ASSUMED);
        assertEquals(2, set.cappedCount());
        assertTrue(set.toString().endsWith("2 held by the cap (alpha below 14.5): a lower bound"), set.toString());
    }

    @Test
    void anEmptySetHasNoSpacing() {
        SetAlongCore set = SetAlongCore.of(10, List.of(), WIDE);
        assertEquals(0, set.frequency());
        assertEquals(0, set.frequencySigma());
        assertTrue(set.spacing().isEmpty());
        assertTrue(set.apparentSpacing().isEmpty());
    }

    @Test
    void spacingsHaveTheirStatistics() {
        // plane level, hole vertical: depths are spacings; by hand
        SetSpacing spacing = SetSpacing.of(
                HolePath.straight(HoleDirection.ofPlunge(90, 0)),
                List.of(0.0, 1.0, 3.0, 6.0, 10.0),
                PlaneOrientation.ofDipAndDirection(0, 0));
        assertEquals(2.5, spacing.mean(), 1e-12);
        assertEquals(2.5, spacing.median(), 1e-12);
        assertEquals(Math.sqrt(5 / 3.0) / 2.5, spacing.variation().orElseThrow(), 1e-12);
        assertEquals("4 spacings, mean 2.50 m, median 2.50 m", spacing.toString());
        assertEquals(0.5, new SetSpacing(List.of(1.0, 2.0, 3.0)).variation().orElseThrow(), 1e-12);
        assertTrue(new SetSpacing(List.of(1.0, 2.0)).variation().isEmpty());
        assertTrue(new SetSpacing(List.of(0.0, 0.0, 0.0)).variation().isEmpty());
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> new SetSpacing(List.of(1.0, bad)));
        }
        assertThrows(IllegalArgumentException.class, () -> new SetSpacing(List.of()));
    }

    @Test
    void noMemberIsNoProofOfNone() {
        assertEquals(
                "0 in 10.00 m, which does not mean that there is none",
                SetAlongCore.of(10, List.of(), WIDE).toString());
    }

    @Test
    void badNumbersAreRefused() {
        HolePath path = HolePath.straight(HoleDirection.ofPlunge(90, 0));
        assertThrows(IllegalArgumentException.class, () -> new OrientationBias(0.5));
        assertThrows(IllegalArgumentException.class, () -> new OrientationBias(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> OrientationBias.ofBlindAlpha(0));
        assertThrows(IllegalArgumentException.class, () -> WIDE.weight(-1));
        assertThrows(IllegalArgumentException.class, () -> SetAlongCore.of(0, List.of(), WIDE));
        assertThrows(IllegalArgumentException.class, () -> SetAlongCore.of(1, List.of(91.0), WIDE));
        PlaneOrientation level = PlaneOrientation.ofDipAndDirection(0, 0);
        assertEquals(List.of(2.0), SetSpacing.of(path, List.of(1.0, 3.0), level).spacings());
        assertEquals(
                "number of depths is 1; expected 2 or above",
                assertThrows(IllegalArgumentException.class, () -> SetSpacing.of(path, List.of(1.0), level))
                        .getMessage());
    }
}
