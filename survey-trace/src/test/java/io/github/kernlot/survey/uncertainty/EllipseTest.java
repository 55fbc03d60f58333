package io.github.kernlot.survey.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.LineOrientation;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Ellipses of a covariance, and the quantiles behind them. */
class EllipseTest {

    private static final Covariance UPRIGHT = new Covariance(9, 4, 1, 0, 0, 0);

    /**
     * 95 % in one, two and three dimensions as the published framework gives them; 19.9 % for one sigma in three dimensions (ISCWSA,
     * Introduction to Wellbore Positioning). The rest by the closed forms: one dimension the normal distribution's table, two
     * {@code sqrt(-2 ln(1 - p))}.
     */
    @ParameterizedTest
    @CsvSource({
        "0.95, 1, 1.960, 0.0005",
        "0.95, 2, 2.448, 0.0005",
        "0.95, 3, 2.796, 0.0006",
        "0.199, 3, 1.000, 0.001",
        "0.6826894921370859, 1, 1, 1e-9",
        "0.3934693402873666, 2, 1, 1e-9",
        "0.99, 2, 3.034854258770293, 1e-9"
    })
    void theRadiusOfAShareIsThatOfChiSquare(double share, int dimensions, double expected, double tolerance) {
        assertEquals(expected, Quantiles.radius(share, dimensions), tolerance);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.1, Double.NaN, 95})
    void aShareThatIsNoneIsRefused(double share) {
        assertThrows(IllegalArgumentException.class, () -> UPRIGHT.horizontalEllipse(share));
        assertThrows(IllegalArgumentException.class, () -> UPRIGHT.ellipsoid(share));
        assertThrows(IllegalArgumentException.class, () -> UPRIGHT.verticalInterval(share));
    }

    @Test
    void anUprightCovarianceHasItsAxesInTheFrame() {
        ErrorEllipse ellipse = UPRIGHT.horizontalEllipse(0.95);
        assertEquals(3 * 2.4477, ellipse.semiMajor(), 1e-3);
        assertEquals(2 * 2.4477, ellipse.semiMinor(), 1e-3);
        assertEquals(0, ellipse.angle());
        assertEquals(1.960, UPRIGHT.verticalInterval(0.95), 5e-4);
        assertEquals(Math.sqrt(13), UPRIGHT.horizontalSigma());
        ErrorEllipsoid ellipsoid = UPRIGHT.ellipsoid(0.95);
        assertEquals(3 * 2.7955, ellipsoid.axes().get(0).semiLength(), 1e-3);
        assertEquals(2.7955, ellipsoid.axes().get(2).semiLength(), 1e-3);
        assertEquals(0, ellipsoid.axes().get(0).orientation().angleTo(LineOrientation.ofPlungeAndTrend(0, 0)), 1e-9);
        assertEquals(0, ellipsoid.axes().get(2).orientation().angleTo(LineOrientation.ofPlungeAndTrend(90, 0)), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 20, 89, 90, 135, 179})
    void theBearingOfTheLongAxisIsFound(double bearing) {
        double c = Math.cos(Math.toRadians(bearing));
        double s = Math.sin(Math.toRadians(bearing));
        Covariance turned = new Covariance(9 * c * c + s * s, 9 * s * s + c * c, 1, 8 * s * c, 0, 0);
        ErrorEllipse ellipse = turned.horizontalEllipse(0.3934693402873666);
        assertEquals(3, ellipse.semiMajor(), 1e-9);
        assertEquals(1, ellipse.semiMinor(), 1e-9);
        assertEquals(0, Math.IEEEremainder(bearing - ellipse.angle(), 180), 1e-9);
        assertTrue(ellipse.angle() >= 0 && ellipse.angle() < 180);
    }

    @Test
    void aSectionSeesTheVerticalAndItsOwnAzimuth() {
        ErrorEllipse section = UPRIGHT.sectionEllipse(90, 0.3934693402873666);
        assertEquals(2, section.semiMajor(), 1e-9);
        assertEquals(1, section.semiMinor(), 1e-9);
        assertEquals(0, section.angle());
        Covariance deep = new Covariance(1, 1, 16, 0, 0, 0);
        assertEquals(90, deep.sectionEllipse(45, 0.95).angle(), 1e-9);
        // down along the azimuth of the section
        Covariance plunging = new Covariance(1, 1, 1, 0, 0.5, 0);
        assertEquals(45, plunging.sectionEllipse(0, 0.95).angle(), 1e-9);
        assertEquals(135, plunging.sectionEllipse(180, 0.95).angle(), 1e-9);
    }

    @Test
    void acrossAHoleTheAngleIsClockwiseFromTheHighSide() {
        HoleDirection east = HoleDirection.ofInclination(90, 90);
        // of a hole due east the high side is up and the right is south
        Covariance southward = new Covariance(4, 0, 1, 0, 0, 0);
        assertEquals(90, southward.ellipseAcross(east, 0.95).angle(), 1e-9);
        HoleFrameSigmas sigmas = southward.inHole(east);
        assertEquals(1, sigmas.high(), 1e-12);
        assertEquals(2, sigmas.right(), 1e-12);
        assertEquals(0, sigmas.along(), 1e-12);
        assertEquals(0, sigmas.highAlong());
        assertEquals(2, southward.sigmaAlong(HoleDirection.ofInclination(90, 180)), 1e-12);
    }

    @Property
    void theEllipsoidHoldsTheCovariance(@ForAll long seed) {
        Random random = new Random(seed);
        double[][] matrix = new double[3][3];
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            Outer.add(matrix, new double[] {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()});
        }
        Covariance covariance = Covariance.corner(matrix, 0);
        double radius = Quantiles.radius(0.9, 3);
        double[][] rebuilt = new double[3][3];
        for (ErrorEllipsoid.Axis axis : covariance.ellipsoid(0.9).axes()) {
            double length = axis.semiLength() / radius;
            double plunge = Math.toRadians(axis.orientation().plunge());
            double trend = Math.toRadians(axis.orientation().trend());
            Outer.add(rebuilt, new double[] {
                length * Math.cos(plunge) * Math.cos(trend),
                length * Math.cos(plunge) * Math.sin(trend),
                length * Math.sin(plunge)
            });
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                assertEquals(matrix[i][j], rebuilt[i][j], 1e-9);
            }
        }
    }

    @Property
    void theHoleFrameKeepsTheTrace(@ForAll long seed) {
        Random random = new Random(seed);
        double[][] matrix = new double[3][3];
        for (int i = 0; i < 4; i++) {
            Outer.add(matrix, new double[] {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()});
        }
        HoleFrameSigmas sigmas = Covariance.corner(matrix, 0)
                .inHole(HoleDirection.ofInclination(180 * random.nextDouble(), 360 * random.nextDouble()));
        assertEquals(
                matrix[0][0] + matrix[1][1] + matrix[2][2],
                sigmas.high() * sigmas.high() + sigmas.right() * sigmas.right() + sigmas.along() * sigmas.along(),
                1e-9);
    }

    @Test
    void noUncertaintyHasNoAxes() {
        assertEquals(0, Covariance.ZERO.horizontalEllipse(0.95).semiMajor());
        assertEquals(0, Covariance.ZERO.ellipsoid(0.95).axes().get(0).semiLength());
        assertEquals(UPRIGHT, UPRIGHT.plus(Covariance.ZERO));
    }

    @Test
    void aVarianceBelowZeroIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Covariance(-1, 1, 1, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Covariance(1, 1, 1, Double.NaN, 0, 0));
    }

    @Test
    void ellipsesSayWhatTheyAre() {
        assertEquals(
                "7.34 by 4.90, long axis at 000.0 (95 %)",
                UPRIGHT.horizontalEllipse(0.95).toString());
        assertEquals("sigma north 3.000, east 2.000, down 1.000", UPRIGHT.toString());
        assertTrue(UPRIGHT.ellipsoid(0.95).toString().startsWith("8.39 along "));
        assertEquals(
                "high side 1.000, right 2.000, along 3.000 (sigma)", new HoleFrameSigmas(1, 2, 3, 0, 0, 0).toString());
    }
}
