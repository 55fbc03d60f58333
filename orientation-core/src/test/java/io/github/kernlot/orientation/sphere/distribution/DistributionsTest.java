package io.github.kernlot.orientation.sphere.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class DistributionsTest {

    private static final DirectedLine MEAN = DirectedLine.ofPlungeAndTrend(35, 140);
    private static final LineOrientation ALONG = LineOrientation.ofPlungeAndTrend(0, 50);
    private static final LineOrientation AXIS = LineOrientation.ofPlungeAndTrend(35, 140);

    @ParameterizedTest
    @CsvFileSource(resources = "bessel.csv", numLinesToSkip = 1)
    void besselFunctionsAreThoseOfTheLibrary(int order, double x, double scaled, double shortfall, String source) {
        assertEquals(scaled, ScaledBessel.of(order, x), 1e-14 * scaled, source);
        assertEquals(shortfall, ScaledBessel.shortfall(x), 1e-13 * shortfall, source);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "fisher-concentration.csv", numLinesToSkip = 1)
    void theConcentrationIsTheExactRoot(double kappa, double spread, String source) {
        // near uniform 1 - spread has lost digits
        double lost = 1e-13 + 1e-16 * 3 / kappa;
        assertEquals(1, FisherDistribution.concentrationOfSpread(spread) / kappa, lost, source);
        assertEquals(1 - spread, FisherDistribution.of(MEAN, kappa).meanLength(), 1e-15, source);
    }

    @Test
    void theConcentrationEndsAtZeroAndInfinity() {
        assertEquals(0, FisherDistribution.concentrationOfSpread(1));
        assertEquals(Double.POSITIVE_INFINITY, FisherDistribution.concentrationOfSpread(0));
        assertEquals(0, FisherDistribution.of(MEAN, 0).meanLength());
        assertThrows(IllegalArgumentException.class, () -> FisherDistribution.concentrationOfSpread(1.1));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "fisher-density.csv", numLinesToSkip = 1)
    void fishersDensityIsThatInPrint(
            double x,
            double y,
            double z,
            double mx,
            double my,
            double mz,
            double kappa,
            double density,
            String source) {
        FisherDistribution fisher = FisherDistribution.of(DirectedLine.ofVector(mx, my, mz), kappa);
        // the sine of a right angle in degrees is exact, a direction kept in degrees is not
        assertEquals(1, fisher.density(DirectedLine.ofVector(x, y, z)) / density, 1e-11, source);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "fisher-angles.csv", numLinesToSkip = 1)
    void theAnglesThatHoldAShare(double kappa, double share, double angle, double angle95, String source) {
        FisherDistribution fisher = FisherDistribution.of(MEAN, kappa);
        assertEquals(1, fisher.angleHolding(share) / angle, 5e-6, source);
        assertEquals(1, fisher.angleHolding(0.95) / angle95, 5e-6, source);
        assertEquals(share, fisher.probabilityWithin(fisher.angleHolding(share)), 1e-12);
    }

    @Test
    void ofAUniformSphereHalfLiesWithinARightAngle() {
        FisherDistribution even = FisherDistribution.of(MEAN, 0);
        assertEquals(90, even.angleHolding(0.5), 1e-12);
        assertEquals(0.5, even.probabilityWithin(90), 1e-15);
        assertEquals(180, even.angleHolding(1));
        assertEquals(180, FisherDistribution.of(MEAN, 500).angleHolding(1), 1e-5);
        assertEquals(1 / (4 * Math.PI), even.density(MEAN), 1e-16);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "constants.csv", numLinesToSkip = 1)
    void theConstantsAreThoseOfSeriesAndIntegrals(String family, double p, double q, double value, String source) {
        double constant = family.equals("kent")
                ? new KentDistribution(MEAN, ALONG, p, q).logConstant()
                : new BinghamDistribution(AXIS, ALONG, p, q).logConstant();
        assertEquals(value, constant, 1e-12 + 4e-16 * p, source);
    }

    /** A sum over a fine net of the sphere, by equal steps of cosine and azimuth. */
    private static double integral(ToDoubleFunction<Vector> density) {
        int steps = 700;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double down = -1 + (2 * i + 1.0) / steps;
            for (int j = 0; j < steps; j++) {
                double across = Math.sqrt(1 - down * down);
                double turn = 2 * Math.PI * j / steps;
                sum += density.applyAsDouble(new Vector(across * Math.cos(turn), across * Math.sin(turn), down));
            }
        }
        return sum * 4 * Math.PI / steps / steps;
    }

    @Test
    void densitiesSumToOneAndHaveTheirMoments() {
        FisherDistribution fisher = FisherDistribution.of(MEAN, 7);
        assertEquals(1, integral(v -> fisher.density(Frame.direction(v))), 1e-4);
        assertEquals(
                fisher.meanLength(),
                integral(v -> v.dot(Frame.vector(MEAN)) * fisher.density(Frame.direction(v))),
                1e-4);

        // one density by the product of its parts, so that the constant is worked out once
        KentDistribution kent = new KentDistribution(MEAN, ALONG, 9, 3.5);
        double kentScale = kent.density(MEAN) / Math.exp(9);
        Frame frame = Frame.of(Frame.vector(MEAN), Frame.vector(ALONG));
        ToDoubleFunction<Vector> oval = v -> Math.pow(v.dot(frame.second()), 2) - Math.pow(v.dot(frame.third()), 2);
        ToDoubleFunction<Vector> density =
                v -> kentScale * Math.exp(9 * v.dot(frame.first()) + 3.5 * oval.applyAsDouble(v));
        assertEquals(1, integral(density), 1e-4);
        ExponentialFamily.Point point = KentDistribution.point(9, 3.5);
        assertEquals(point.s(), integral(v -> (v.dot(frame.first()) - 1) * density.applyAsDouble(v)), 1e-4);
        assertEquals(point.t(), integral(v -> oval.applyAsDouble(v) * density.applyAsDouble(v)), 1e-4);
        assertEquals(
                point.tt() + point.t() * point.t(),
                integral(v -> Math.pow(oval.applyAsDouble(v), 2) * density.applyAsDouble(v)),
                1e-4);

        BinghamDistribution bingham = new BinghamDistribution(AXIS, ALONG, 2, 6);
        double scale = bingham.density(AXIS);
        ToDoubleFunction<Vector> axes =
                v -> scale * Math.exp(-2 * Math.pow(v.dot(frame.second()), 2) - 6 * Math.pow(v.dot(frame.third()), 2));
        assertEquals(1, integral(axes), 1e-4);
        ExponentialFamily.Point moments = BinghamDistribution.point(2, 6);
        assertEquals(-moments.s(), integral(v -> Math.pow(v.dot(frame.second()), 2) * axes.applyAsDouble(v)), 1e-4);
        assertEquals(-moments.t(), integral(v -> Math.pow(v.dot(frame.third()), 2) * axes.applyAsDouble(v)), 1e-4);
    }

    /** By hand: along the long axis, along the other and opposite to the mean, from the exponents of both families. */
    @Test
    void densitiesFallAsTheirExponents() {
        KentDistribution kent = new KentDistribution(MEAN, ALONG, 3, 1);
        double most = kent.density(MEAN);
        assertEquals(Math.exp(-3 + 1), kent.density(DirectedLine.ofPlungeAndTrend(0, 50)) / most, 1e-12);
        assertEquals(Math.exp(-3 + 1), kent.density(DirectedLine.ofPlungeAndTrend(0, 230)) / most, 1e-12);
        assertEquals(Math.exp(-3 - 1), kent.density(DirectedLine.ofPlungeAndTrend(55, 320)) / most, 1e-12);
        assertEquals(Math.exp(-2 * 3), kent.density(DirectedLine.ofPlungeAndTrend(-35, 320)) / most, 1e-12);
        BinghamDistribution bingham = new BinghamDistribution(AXIS, ALONG, 2, 6);
        assertEquals(Math.exp(-2), bingham.density(ALONG) / bingham.density(AXIS), 1e-12);
        assertEquals(
                Math.exp(-6),
                bingham.density(LineOrientation.ofPlungeAndTrend(55, 320)) / bingham.density(AXIS),
                1e-12);
    }

    /** By hand: 2 x 0.1 - 0.05 and 2 x 0.1 + 0.05 are 3 / 20 and 1 / 4; kappa is the sum of 20 / 3 and 4, beta half the difference. */
    @Test
    void kentsMomentsGiveBothParameters() {
        KentDistribution kent =
                KentDistribution.ofMoments(MEAN, ALONG, 0.1, 0.05).orElseThrow();
        assertEquals(32 / 3.0, kent.concentration(), 1e-12);
        assertEquals(4 / 3.0, kent.ovalness(), 1e-12);
        // no unit vectors have these
        assertTrue(KentDistribution.ofMoments(MEAN, ALONG, 0.05, 0.2).isEmpty());
        assertTrue(KentDistribution.ofLikelihood(MEAN, ALONG, 0.05, 0.2).isEmpty());
    }

    /** The second derivatives against differences of the first. */
    @Test
    void theCurvatureIsThatOfTheConstant() {
        double h = 1e-5;
        for (double[] at : new double[][] {{3, 8}, {8, 3}, {0.2, 0.2}, {40, 41}, {100, 5000}}) {
            ExponentialFamily.Point here = BinghamDistribution.point(at[0], at[1]);
            ExponentialFamily.Point there = BinghamDistribution.point(at[0], at[1] + h);
            assertEquals(here.t(), (there.logConstant() - here.logConstant()) / h, 1e-5);
            assertEquals(here.tt(), (there.t() - here.t()) / h, 1e-5 * Math.max(here.tt(), 1e-3));
            assertEquals(here.st(), (there.s() - here.s()) / h, 1e-5);
        }
        ExponentialFamily.Point here = KentDistribution.point(12, 4);
        ExponentialFamily.Point there = KentDistribution.point(12 + h, 4);
        assertEquals(here.ss(), (there.s() - here.s()) / h, 1e-6);
        assertEquals(here.st(), (there.t() - here.t()) / h, 1e-6);
    }

    @Property(tries = 60)
    void binghamIsFoundFromItsSquares(
            @ForAll @DoubleRange(min = -2, max = 6) double middle, @ForAll @DoubleRange(min = 0, max = 3) double more) {
        double a = Math.pow(10, middle);
        double b = Math.min(1e7, a * Math.pow(10, more));
        ExponentialFamily.Point point = BinghamDistribution.point(a, b);
        BinghamDistribution found = BinghamDistribution.ofSquares(AXIS, ALONG, -point.s(), -point.t())
                .orElseThrow();

        assertEquals(a, found.middleConcentration(), 1e-7 * (1 + a));
        assertEquals(b, found.leastConcentration(), 1e-7 * (1 + b));
    }

    @Property(tries = 60)
    void kentIsFoundFromItsMoments(
            @ForAll @DoubleRange(min = -1, max = 6) double exponent,
            @ForAll @DoubleRange(min = 0, max = 0.49) double share) {
        double kappa = Math.pow(10, exponent);
        ExponentialFamily.Point point = KentDistribution.point(kappa, share * kappa);
        Optional<KentDistribution> found = KentDistribution.ofLikelihood(MEAN, ALONG, -point.s(), point.t());

        assertEquals(kappa, found.orElseThrow().concentration(), 1e-7 * (1 + kappa));
        assertEquals(share * kappa, found.orElseThrow().ovalness(), 1e-7 * (1 + kappa));
        if (kappa > 100 && share < 0.4) {
            KentDistribution moments = KentDistribution.ofMoments(MEAN, ALONG, -point.s(), point.t())
                    .orElseThrow();
            assertEquals(1, moments.concentration() / kappa, 10 / (kappa * (1 - 2 * share) * (1 - 2 * share)));
        }
    }

    @Test
    void watsonIsFoundFromItsSquare() {
        for (double kappa : new double[] {-1e6, -300, -4, -0.01, 0.01, 1, 30, 1e6}) {
            WatsonDistribution watson = new WatsonDistribution(AXIS, kappa);
            BinghamDistribution bingham = watson.bingham();
            ExponentialFamily.Point point =
                    BinghamDistribution.point(bingham.middleConcentration(), bingham.leastConcentration());
            double square = kappa > 0 ? 1 + point.s() + point.t() : -point.t();
            double found =
                    WatsonDistribution.ofSquare(AXIS, square).orElseThrow().concentration();
            assertEquals(kappa, found, 1e-9 * (1 + kappa * kappa * 1e-3 * (kappa > 0 ? 1 : 0)) * (1 + Math.abs(kappa)));
            assertEquals(watson.density(AXIS), bingham.density(AXIS));
        }
        assertEquals(0, WatsonDistribution.ofSquare(AXIS, 1.0 / 3).orElseThrow().concentration(), 1e-12);
        assertTrue(WatsonDistribution.ofSquare(AXIS, 0).isEmpty());
        assertTrue(WatsonDistribution.ofSquare(AXIS, 1).isEmpty());
    }

    @Test
    void evenSquaresAreUniform() {
        BinghamDistribution even =
                BinghamDistribution.ofSquares(AXIS, ALONG, 1.0 / 3, 1.0 / 3).orElseThrow();
        assertEquals(0, even.middleConcentration(), 1e-9);
        assertEquals(0, even.leastConcentration(), 1e-9);
        assertTrue(BinghamDistribution.ofSquares(AXIS, ALONG, 0.3, 0).isEmpty());
        assertTrue(KentDistribution.ofMoments(MEAN, ALONG, 0.1, 0.2).isEmpty());
        assertTrue(KentDistribution.ofLikelihood(MEAN, ALONG, 0.1, 0.2).isEmpty());
    }

    @Test
    void refusesWhatIsNoDistribution() {
        assertThrows(IllegalArgumentException.class, () -> new KentDistribution(MEAN, ALONG, 4, 2.1));
        assertThrows(IllegalArgumentException.class, () -> new KentDistribution(MEAN, AXIS, 4, 1));
        assertThrows(IllegalArgumentException.class, () -> new BinghamDistribution(AXIS, ALONG, 4, 3));
        assertThrows(IllegalArgumentException.class, () -> new BinghamDistribution(AXIS, AXIS, 3, 4));
        assertThrows(IllegalArgumentException.class, () -> BinghamDistribution.ofSquares(AXIS, ALONG, 0.2, 0.3));
        // a greatest eigenvalue of 0.25 would be less than the middle one
        assertThrows(IllegalArgumentException.class, () -> BinghamDistribution.ofSquares(AXIS, ALONG, 0.45, 0.3));
        assertThrows(IllegalArgumentException.class, () -> new WatsonDistribution(AXIS, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> FisherDistribution.of(MEAN, -1));
        assertThrows(
                IllegalArgumentException.class,
                () -> FisherDistribution.of(MEAN, 3).draw(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> new VonMisesDistribution(400, 3));
    }

    @Test
    void printTheirParameters() {
        assertEquals("Fisher about arrow 35.0/140.0 (plunge/trend), kappa 7.000", FisherDistribution.of(MEAN, 7) + "");
        assertEquals(
                "Kent about arrow 35.0/140.0 (plunge/trend), long axis 0.0/050.0 (plunge/trend), kappa 7.000, beta 2.000",
                new KentDistribution(MEAN, ALONG, 7, 2) + "");
        assertEquals(
                "Bingham about 35.0/140.0 (plunge/trend), middle axis 0.0/050.0 (plunge/trend), 2.000 and 6.000",
                new BinghamDistribution(AXIS, ALONG, 2, 6) + "");
        assertEquals("Watson about 35.0/140.0 (plunge/trend), kappa -3.000", new WatsonDistribution(AXIS, -3) + "");
        assertEquals("von Mises about 010.0, kappa 3.000", new VonMisesDistribution(10, 3) + "");
    }
}
