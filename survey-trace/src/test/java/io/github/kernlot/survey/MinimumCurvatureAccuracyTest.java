package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import ch.obermuhlner.math.big.BigDecimalMath;
import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleFunction;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How exact the arcs are: against integration of the tangent (Hipparchus 4.0.3) and against 50 digits (big-math 2.3.2). */
class MinimumCurvatureAccuracyTest {

    private static final MathContext DIGITS = new MathContext(50);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void positionsAreWithinANanometreOfTheIntegratedTangentOverThreeKilometres(long seed) {
        List<SurveyStation> stations = Traces.wandering(new Random(seed), 101);
        HoleTrace trace = Traces.of(stations);
        Vector3D end = Vector3D.ZERO;
        for (int i = 1; i < stations.size(); i++) {
            end = end.add(integrated(stations.get(i - 1), stations.get(i)));

            Vector3D found = Traces.vector(trace.displacementAt(stations.get(i).depth()));
            assertEquals(0, found.distance(end), 1e-9);
        }
    }

    /** The tangent turned about the normal of the arc's plane, integrated by Gauss and Legendre. */
    private static Vector3D integrated(SurveyStation upper, SurveyStation lower) {
        Vector3D from = Traces.vector(upper.direction());
        Vector3D to = Traces.vector(lower.direction());
        double length = lower.depth() - upper.depth();
        Vector3D normal = from.crossProduct(to);
        if (normal.getNorm() == 0) {
            return from.scalarMultiply(length);
        }
        double dogleg = Vector3D.angle(from, to);
        DoubleFunction<Vector3D> tangent =
                s -> new Rotation(normal, dogleg * s / length, RotationConvention.VECTOR_OPERATOR).applyTo(from);
        GaussIntegrator integrator = new GaussIntegratorFactory().legendre(24, 0, length);
        return new Vector3D(
                integrator.integrate(s -> tangent.apply(s).getX()),
                integrator.integrate(s -> tangent.apply(s).getY()),
                integrator.integrate(s -> tangent.apply(s).getZ()));
    }

    static List<HoleTrace> arcs() {
        List<HoleTrace> arcs = new ArrayList<>();
        for (double dogleg : new double[] {1e-12, 1e-9, 1e-6, 1e-3, 0.1, 3, 40, 89.5, 170, 179.8}) {
            arcs.add(Traces.of("0 0 0; 100 " + Math.min(180, dogleg) + " 77"));
            arcs.add(Traces.of("0 90 20; 100 90 " + (20 + dogleg)));
            arcs.add(Traces.of("0 3 15; 100 " + Math.min(180, 3 + dogleg) + " 15"));
            arcs.add(Traces.of("0 179.99 15; 100 179.99 " + (15 + dogleg)));
        }
        return arcs;
    }

    @ParameterizedTest
    @MethodSource("arcs")
    void anArcIsExactToRounding(HoleTrace trace) {
        BigDecimal[] from = tangent(trace.directionAt(0));
        BigDecimal[] to = tangent(trace.directionAt(100));
        BigDecimal cosine = dot(from, to);
        BigDecimal[] cross = cross(from, to);
        BigDecimal sine = BigDecimalMath.sqrt(dot(cross, cross), DIGITS);
        BigDecimal dogleg = BigDecimalMath.atan2(sine, cosine, DIGITS);
        for (double fraction : new double[] {0.001, 0.25, 0.5, 0.9, 1}) {
            BigDecimal angle = dogleg.multiply(new BigDecimal(fraction), DIGITS);
            // r(s) = (L/D) (sin(sD) t1 + (1 - cos(sD)) e), e = (t2 - cos D t1) / sin D
            BigDecimal along = BigDecimalMath.sin(angle, DIGITS);
            BigDecimal turned = BigDecimalMath.cos(angle, DIGITS);
            double[] way = new double[3];
            double[] tangent = new double[3];
            for (int i = 0; i < 3; i++) {
                BigDecimal across =
                        to[i].subtract(cosine.multiply(from[i], DIGITS)).divide(sine, DIGITS);
                way[i] = along.multiply(from[i], DIGITS)
                        .add(BigDecimal.ONE.subtract(turned).multiply(across, DIGITS))
                        .multiply(BigDecimal.valueOf(100))
                        .divide(dogleg, DIGITS)
                        .doubleValue();
                tangent[i] = turned.multiply(from[i], DIGITS)
                        .add(along.multiply(across, DIGITS))
                        .doubleValue();
            }
            Displacement found = trace.displacementAt(100 * fraction);
            assertEquals(0, Traces.vector(found).distance(new Vector3D(way)), 5e-12);
            HoleDirection direction = trace.directionAt(100 * fraction);
            assertEquals(0, direction.angleTo(Traces.direction(new Vector3D(tangent))), 5e-12);
        }
    }

    private static BigDecimal[] tangent(HoleDirection direction) {
        BigDecimal inclination = radians(direction.inclination());
        BigDecimal azimuth = radians(direction.azimuth());
        BigDecimal across = BigDecimalMath.sin(inclination, DIGITS);
        return new BigDecimal[] {
            across.multiply(BigDecimalMath.cos(azimuth, DIGITS), DIGITS),
            across.multiply(BigDecimalMath.sin(azimuth, DIGITS), DIGITS),
            BigDecimalMath.cos(inclination, DIGITS)
        };
    }

    private static BigDecimal radians(double degrees) {
        return new BigDecimal(degrees)
                .multiply(BigDecimalMath.pi(DIGITS), DIGITS)
                .divide(BigDecimal.valueOf(180), DIGITS);
    }

    private static BigDecimal dot(BigDecimal[] one, BigDecimal[] other) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < 3; i++) {
            sum = sum.add(one[i].multiply(other[i], DIGITS), DIGITS);
        }
        return sum;
    }

    private static BigDecimal[] cross(BigDecimal[] one, BigDecimal[] other) {
        BigDecimal[] cross = new BigDecimal[3];
        for (int i = 0; i < 3; i++) {
            int next = (i + 1) % 3;
            int last = (i + 2) % 3;
            cross[i] = one[next].multiply(other[last], DIGITS).subtract(one[last].multiply(other[next], DIGITS));
        }
        return cross;
    }

    @Test
    void aHoleThatKeepsItsDirectionIsStraight() {
        HoleTrace trace = Traces.of("0 60 90; 100 60 90; 3000 60 90");

        assertEquals(3000 * Math.sqrt(0.75), trace.displacementAt(3000).east(), 1e-9);
        assertEquals(777, trace.displacementAt(1554).down(), 1e-9);
        assertEquals(0, trace.displacementAt(1554).north());
    }
}
