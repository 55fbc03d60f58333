package io.github.kernlot.orientation.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.solve.PlaneEstimate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ThicknessTest {

    private static final PlaneOrientation CONTACTS = PlaneOrientation.ofDipAndDirection(40, 15);

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "true-thickness.csv", useHeadersInDisplayName = true)
    void theThicknessOfTheWorkedExample(
            String id,
            double azimuth,
            double plunge,
            double dip,
            double dipDirection,
            double coreLength,
            double trueThickness,
            double alpha,
            double lengthTolerance,
            double alphaTolerance) {
        HoleDirection hole = HoleDirection.ofPlunge(plunge, azimuth);
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(dip, dipDirection);
        assertEquals(alpha, Ways.alpha(hole, plane), alphaTolerance);
        HoleIntercept inHole = HoleIntercept.of(HolePath.straight(hole), 10, 10 + coreLength);
        assertEquals(trueThickness, inHole.trueThickness(plane).metres(), lengthTolerance);
        assertEquals(
                trueThickness,
                CoreIntercept.of(coreLength, Ways.alpha(hole, plane))
                        .trueThickness()
                        .metres(),
                lengthTolerance);
        assertEquals(
                coreLength,
                CoreIntercept.across(trueThickness, Ways.alpha(hole, plane)).length(),
                lengthTolerance * coreLength / trueThickness);
    }

    @Test
    void theSeamOfTheExampleHasItsGradientAndItsPlumbLine() {
        // source: thecivilengineer.org calculation example: seam thickness and gradient: dip 43, 2 m in a vertical
        // hole, gradient 1 in 1.072
        HoleIntercept seam = HoleIntercept.of(HolePath.straight(HoleDirection.ofPlunge(90, 0)), 50, 52);
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(43, 120);
        assertEquals(2, seam.verticalThickness(plane).orElseThrow().metres(), 1e-12);
        assertEquals(2 * 1.072, seam.horizontalThickness(plane).orElseThrow().metres(), 0.001);
    }

    @ParameterizedTest
    @CsvSource({"45, 1.7", "26.6, 3.5", "10, 9.9"})
    void aDegreeOfAlphaCountsAsTheCotangent(double alpha, double percent) {
        // source: derived: relative error cot(alpha) d(alpha): 1.7 % a degree at 45, 3.5 % at 26.6, 9.9 % at 10
        Thickness thickness = CoreIntercept.of(10, alpha).withAlphaSigma(1).trueThickness();
        assertEquals(percent, 100 * thickness.sigma() / thickness.metres(), 0.05);
    }

    @Test
    void theSigmaOfAStraightCoreIsThatOfSimulation() {
        CoreIntercept intercept = CoreIntercept.of(12, 35).withAlphaSigma(2).withLengthSigma(0.1);
        Random random = new Random(1);
        double squares = 0;
        int runs = 100_000;
        for (int i = 0; i < runs; i++) {
            double alpha = 35 + 2 * random.nextGaussian();
            double length = 12 + 0.1 * random.nextGaussian();
            squares += Math.pow(
                            length * Math.sin(Math.toRadians(alpha))
                                    - intercept.trueThickness().metres(),
                            2)
                    / runs;
        }
        assertEquals(Math.sqrt(squares), intercept.trueThickness().sigma(), 0.01 * Math.sqrt(squares));
    }

    @Test
    void theSigmasOfAllThicknessesAreThoseOfSimulation() {
        HoleDirection hole = HoleDirection.ofPlunge(55, 160);
        PlaneEstimate estimate = new PlaneEstimate(CONTACTS, 1.5, 2.5, 0.4);
        HoleIntercept intercept =
                HoleIntercept.of(HolePath.straight(hole), 100, 130).withDepthSigma(0.15);
        LineOrientation line = LineOrientation.ofPlungeAndTrend(20, 200);
        PlaneOrientation section = PlaneOrientation.ofDipAndDirection(90, 80);
        Thickness[] first = {
            intercept.trueThickness(estimate),
            intercept.verticalThickness(estimate).orElseThrow(),
            intercept.horizontalThickness(estimate).orElseThrow(),
            intercept.thicknessAlong(estimate, line).orElseThrow(),
            intercept.thicknessOnSection(estimate, section).orElseThrow()
        };
        Random random = new Random(3);
        double[] squares = new double[first.length];
        int runs = 20_000;
        for (int i = 0; i < runs; i++) {
            double one = random.nextGaussian();
            double other = 0.4 * one + Math.sqrt(1 - 0.16) * random.nextGaussian();
            PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(
                    40 + 1.5 * one, (375 + 2.5 * other / Math.sin(Math.toRadians(40))) % 360);
            HoleIntercept noisy = HoleIntercept.of(
                    HolePath.straight(hole), 100 + 0.15 * random.nextGaussian(), 130 + 0.15 * random.nextGaussian());
            double[] found = {
                noisy.trueThickness(plane).metres(),
                noisy.verticalThickness(plane).orElseThrow().metres(),
                noisy.horizontalThickness(plane).orElseThrow().metres(),
                noisy.thicknessAlong(plane, line).orElseThrow().metres(),
                noisy.thicknessOnSection(plane, section).orElseThrow().metres()
            };
            for (int k = 0; k < first.length; k++) {
                squares[k] += Math.pow(found[k] - first[k].metres(), 2) / runs;
            }
        }
        for (int k = 0; k < first.length; k++) {
            assertEquals(Math.sqrt(squares[k]), first[k].sigma(), 0.05 * first[k].sigma(), "kind " + k);
        }
    }

    @Test
    void alongThePoleTheThicknessIsTheTrueOneAndAlongTheHoleItsLength() {
        HoleDirection hole = HoleDirection.ofPlunge(55, 160);
        HoleIntercept intercept = HoleIntercept.of(HolePath.straight(hole), 100, 130);
        assertEquals(
                intercept.trueThickness(CONTACTS).metres(),
                intercept
                        .thicknessAlong(CONTACTS, CONTACTS.pole())
                        .orElseThrow()
                        .metres(),
                1e-12);
        assertEquals(
                30,
                intercept
                        .thicknessAlong(CONTACTS, LineOrientation.ofPlungeAndTrend(55, 160))
                        .orElseThrow()
                        .metres(),
                1e-12);
    }

    @Test
    void uncertainDepthsAloneTouchEveryThicknessByTheSameShare() {
        // square through the contacts: the thickness is the difference of two depths
        HoleIntercept intercept = HoleIntercept.of(HolePath.straight(HoleDirection.ofPlunge(50, 195)), 100, 130)
                .withDepthSigma(0.15);
        Thickness truth = intercept.trueThickness(CONTACTS);
        assertEquals(30, truth.metres(), 1e-12);
        assertEquals(0.15 * Math.sqrt(2), truth.sigma(), 1e-12);
        PlaneOrientation oblique = PlaneOrientation.ofDipAndDirection(90, 50);
        for (Thickness other : List.of(
                intercept.verticalThickness(CONTACTS).orElseThrow(),
                intercept.horizontalThickness(CONTACTS).orElseThrow(),
                intercept
                        .thicknessAlong(CONTACTS, LineOrientation.ofPlungeAndTrend(20, 200))
                        .orElseThrow(),
                intercept.thicknessOnSection(CONTACTS, oblique).orElseThrow())) {
            assertTrue(other.metres() > 31);
            assertEquals(truth.sigma() / truth.metres(), other.sigma() / other.metres(), 1e-12);
        }
    }

    @Test
    void aLevelAndAnUprightLayerMissOneThickness() {
        HoleIntercept intercept = HoleIntercept.of(HolePath.straight(HoleDirection.ofPlunge(45, 0)), 0, 10);
        PlaneOrientation level = PlaneOrientation.ofDipAndDirection(0, 0);
        PlaneOrientation upright = PlaneOrientation.ofDipAndDirection(90, 0);
        double half = 10 * Math.sqrt(0.5);
        assertTrue(intercept.horizontalThickness(level).isEmpty());
        assertEquals(half, intercept.verticalThickness(level).orElseThrow().metres(), 1e-12);
        assertTrue(intercept.verticalThickness(upright).isEmpty());
        assertEquals(half, intercept.horizontalThickness(upright).orElseThrow().metres(), 1e-12);
        assertTrue(intercept
                .thicknessAlong(upright, LineOrientation.ofPlungeAndTrend(30, 90))
                .isEmpty());
    }

    @Test
    void aSectionAcrossStrikeShowsTheTrueThicknessAndAnObliqueOneMore() {
        HoleIntercept intercept = HoleIntercept.of(HolePath.straight(HoleDirection.ofPlunge(60, 195)), 0, 10);
        double truth = intercept.trueThickness(CONTACTS).metres();
        PlaneOrientation acrossStrike = PlaneOrientation.ofDipAndDirection(90, 105);
        PlaneOrientation alongStrike = PlaneOrientation.ofDipAndDirection(90, 15);
        assertEquals(
                truth,
                intercept
                        .thicknessOnSection(CONTACTS, acrossStrike)
                        .orElseThrow()
                        .metres(),
                1e-12);
        // along strike the traces are level, a plumb line apart
        assertEquals(
                intercept.verticalThickness(CONTACTS).orElseThrow().metres(),
                intercept
                        .thicknessOnSection(CONTACTS, alongStrike)
                        .orElseThrow()
                        .metres(),
                1e-12);
        assertTrue(intercept.thicknessOnSection(CONTACTS, CONTACTS).isEmpty());
    }

    @Test
    void contactsThatAreNotParallelHaveSeveralThicknesses() {
        // by hand: the first contact level at 0, the second falls 30 to the east; a vertical hole meets it 10 m below
        HoleIntercept intercept = HoleIntercept.of(HolePath.straight(HoleDirection.ofPlunge(90, 0)), 5, 15);
        WedgeThickness wedge = intercept.betweenContacts(
                PlaneOrientation.ofDipAndDirection(0, 0), PlaneOrientation.ofDipAndDirection(30, 90));
        assertEquals(10, wedge.atFirst().orElseThrow(), 1e-12);
        assertEquals(10 / Math.cos(Math.toRadians(30)), wedge.atSecond().orElseThrow(), 1e-12);
        assertEquals(10 * Math.cos(Math.toRadians(15)), wedge.bisecting(), 1e-12);
        assertEquals(30, wedge.angle(), 1e-12);
        WedgeThickness square = intercept.betweenContacts(
                PlaneOrientation.ofDipAndDirection(0, 0), PlaneOrientation.ofDipAndDirection(90, 90));
        assertTrue(square.atFirst().isEmpty() && square.atSecond().isEmpty());
        assertEquals(
                "none at the first contact, none at the second, 7.07 m bisecting, 90.0 degrees apart",
                square.toString());
    }

    @Test
    void parallelContactsHaveOne() {
        HoleIntercept intercept = HoleIntercept.of(HolePath.straight(HoleDirection.ofPlunge(-35, 70)), 5, 15);
        WedgeThickness wedge = intercept.betweenContacts(CONTACTS, CONTACTS);
        double truth = intercept.trueThickness(CONTACTS).metres();
        assertEquals(truth, wedge.atFirst().orElseThrow(), 1e-12);
        assertEquals(truth, wedge.atSecond().orElseThrow(), 1e-12);
        assertEquals(truth, wedge.bisecting(), 1e-12);
    }

    @Test
    void alphaZeroAndNinety() {
        assertEquals(0, CoreIntercept.of(10, 0).trueThickness().metres());
        assertEquals(10, CoreIntercept.of(10, 90).trueThickness().metres());
        assertEquals(
                0, CoreIntercept.of(10, 90).withAlphaSigma(5).trueThickness().sigma());
        assertThrows(IllegalArgumentException.class, () -> CoreIntercept.across(5, 0));
    }

    @Test
    void badNumbersAreRefused() {
        HolePath path = HolePath.straight(HoleDirection.ofPlunge(45, 0));
        assertThrows(IllegalArgumentException.class, () -> CoreIntercept.of(-1, 40));
        assertThrows(IllegalArgumentException.class, () -> CoreIntercept.of(1, Double.NaN));
        assertThrows(
                IllegalArgumentException.class, () -> CoreIntercept.of(1, 40).withAlphaSigma(-1));
        assertThrows(IllegalArgumentException.class, () -> HoleIntercept.of(path, 10, 9));
        assertThrows(IllegalArgumentException.class, () -> HoleIntercept.of(path, 10, Double.NaN));
        assertThrows(
                IllegalArgumentException.class,
                () -> HoleIntercept.of(path, 1, 9).withDepthSigma(-1));
    }

    @Test
    void readsWithItsUnit() {
        assertEquals("5.00 +- 0.10 m", new Thickness(5, 0.1).toString());
        assertEquals("30.34 m at alpha 55.5", CoreIntercept.across(25, 55.498).toString());
        assertEquals(
                "5.00 to 15.00 m, 10.00 m apart",
                HoleIntercept.of(HolePath.straight(HoleDirection.ofPlunge(45, 0)), 5, 15)
                        .toString());
    }
}
