package io.github.kernlot.survey.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.HoleDirection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The weights of sensor errors against numeric differentiation of the sensor equations of the published framework (Williamson 2000,
 * from memory), forward and inverse, where they are regular.
 */
class SensorTermsProperties {

    private static final double DECLINATION_ON_GRID = 9;

    private record Attitude(double inclination, double azimuth, double toolface, EarthReference earth) {

        SurveyedPoint point() {
            return new SurveyedPoint(
                    100,
                    HoleDirection.ofInclination(inclination, (azimuth + DECLINATION_ON_GRID) % 360),
                    90,
                    OptionalDouble.empty(),
                    OptionalDouble.of(azimuth),
                    OptionalDouble.of(toolface),
                    Optional.of(earth));
        }

        /** Gx, Gy, Gz, Bx, By, Bz. */
        double[] sensors() {
            double sinI = Math.sin(Math.toRadians(inclination));
            double cosI = Math.cos(Math.toRadians(inclination));
            double sinA = Math.sin(Math.toRadians(azimuth));
            double cosA = Math.cos(Math.toRadians(azimuth));
            double sinT = Math.sin(Math.toRadians(toolface));
            double cosT = Math.cos(Math.toRadians(toolface));
            double sinDip = Math.sin(Math.toRadians(earth.dip()));
            double cosDip = Math.cos(Math.toRadians(earth.dip()));
            double g = earth.gravity();
            double b = earth.field();
            return new double[] {
                -g * sinI * sinT,
                -g * sinI * cosT,
                g * cosI,
                b * (cosDip * cosI * cosA * sinT - sinDip * sinI * sinT + cosDip * sinA * cosT),
                b * (cosDip * cosI * cosA * cosT - sinDip * sinI * cosT - cosDip * sinA * sinT),
                b * (cosDip * sinI * cosA + sinDip * cosI)
            };
        }
    }

    /** The unit vector on the grid that a tool computes from its sensors. */
    private static Vector3D computed(double[] s) {
        double across = Math.hypot(s[0], s[1]);
        double total = Math.hypot(across, s[2]);
        double inclination = Math.atan2(across, s[2]);
        double azimuth = Math.atan2(
                        (s[0] * s[4] - s[1] * s[3]) * total,
                        s[5] * (s[0] * s[0] + s[1] * s[1]) - s[2] * (s[0] * s[3] + s[1] * s[4]))
                + Math.toRadians(DECLINATION_ON_GRID);
        return new Vector3D(
                Math.sin(inclination) * Math.cos(azimuth),
                Math.sin(inclination) * Math.sin(azimuth),
                Math.cos(inclination));
    }

    private static Vector3D slope(double[] sensors, int which, double step) {
        double[] plus = sensors.clone();
        double[] minus = sensors.clone();
        plus[which] += step;
        minus[which] -= step;
        return computed(plus).subtract(computed(minus)).scalarMultiply(1 / (2 * step));
    }

    /** The derivative by one sensor, by Richardson's extrapolation. */
    private static Vector3D derivative(Attitude attitude, int which) {
        double[] sensors = attitude.sensors();
        double step = 1e-3
                * (which < 3 ? attitude.earth().gravity() : attitude.earth().field());
        Vector3D wide = slope(sensors, which, step);
        Vector3D narrow = slope(sensors, which, step / 2);
        return narrow.scalarMultiply(4).subtract(wide).scalarMultiply(1.0 / 3);
    }

    private static Attitude attitude(Random random) {
        return new Attitude(
                15 + 150 * random.nextDouble(),
                360 * random.nextDouble(),
                360 * random.nextDouble(),
                new EarthReference(
                        9.7 + 0.15 * random.nextDouble(),
                        25000 + 40000 * random.nextDouble(),
                        160 * random.nextDouble() - 80));
    }

    private static void assertShift(Vector3D expected, UnitShift found, double scale) {
        assertEquals(0, found.depth());
        assertEquals(expected.getX() * scale, found.north() * scale, 1e-7);
        assertEquals(expected.getY() * scale, found.east() * scale, 1e-7);
        assertEquals(expected.getZ() * scale, found.down() * scale, 1e-7);
    }

    @Property
    void theWeightsAreTheSlopesOfTheSensorEquations(@ForAll long seed) {
        Attitude attitude = attitude(new Random(seed));
        SurveyedPoint point = attitude.point();
        double[] sensors = attitude.sensors();
        for (ToolAxis axis : ToolAxis.values()) {
            int g = axis.ordinal();
            int b = 3 + g;
            Vector3D byGravity = derivative(attitude, g);
            Vector3D byField = derivative(attitude, b);
            assertShift(
                    byGravity,
                    SurveyErrorTerms.accelerometerBias(axis, 1).weighting().at(point),
                    attitude.earth().gravity());
            assertShift(
                    byGravity.scalarMultiply(sensors[g]),
                    SurveyErrorTerms.accelerometerScale(axis, 1).weighting().at(point),
                    1);
            assertShift(
                    byField,
                    SurveyErrorTerms.magnetometerBias(axis, 1).weighting().at(point),
                    attitude.earth().field());
            assertShift(
                    byField.scalarMultiply(sensors[b]),
                    SurveyErrorTerms.magnetometerScale(axis, 1).weighting().at(point),
                    1);
        }
    }

    /** North-north, and so on, of what sources do to one direction. */
    private static double[] square(List<SurveyErrorSource> sources, SurveyedPoint point) {
        double[] sum = new double[6];
        for (SurveyErrorSource source : sources) {
            UnitShift shift = source.weighting().at(point).times(source.sigma());
            double[] v = {shift.north(), shift.east(), shift.down()};
            int at = 0;
            for (int i = 0; i < 3; i++) {
                for (int j = i; j < 3; j++) {
                    sum[at++] += v[i] * v[j];
                }
            }
        }
        return sum;
    }

    private static SurveyedPoint turnedTool(SurveyedPoint point, double toolface) {
        return new SurveyedPoint(
                point.depth(),
                point.direction(),
                point.verticalDepth(),
                point.trueAzimuth(),
                point.magneticAzimuth(),
                OptionalDouble.of(toolface),
                point.earth());
    }

    private static void assertMeanOverToolfaces(
            List<SurveyErrorSource> freed, List<SurveyErrorSource> turning, SurveyedPoint point) {
        double[] mean = new double[6];
        int turns = 8;
        for (int i = 0; i < turns; i++) {
            double[] one = square(turning, turnedTool(point, 360.0 * i / turns));
            for (int j = 0; j < mean.length; j++) {
                mean[j] += one[j] / turns;
            }
        }
        double[] found = square(freed, point);
        for (int j = 0; j < mean.length; j++) {
            assertEquals(mean[j], found[j], 1e-12);
        }
    }

    @Property
    void termsFreedOfToolfacesAreTheMeanOverAllToolfaces(@ForAll long seed) {
        SurveyedPoint point = attitude(new Random(seed)).point();
        assertMeanOverToolfaces(
                SurveyErrorTerms.accelerometerBiasAcross(0.01),
                List.of(
                        SurveyErrorTerms.accelerometerBias(ToolAxis.X, 0.01),
                        SurveyErrorTerms.accelerometerBias(ToolAxis.Y, 0.01)),
                point);
        assertMeanOverToolfaces(
                SurveyErrorTerms.accelerometerScaleAcross(0.01),
                List.of(
                        SurveyErrorTerms.accelerometerScale(ToolAxis.X, 0.01),
                        SurveyErrorTerms.accelerometerScale(ToolAxis.Y, 0.01)),
                point);
        assertMeanOverToolfaces(
                SurveyErrorTerms.magnetometerBiasAcross(100),
                List.of(
                        SurveyErrorTerms.magnetometerBias(ToolAxis.X, 100),
                        SurveyErrorTerms.magnetometerBias(ToolAxis.Y, 100)),
                point);
        assertMeanOverToolfaces(
                SurveyErrorTerms.magnetometerScaleAcross(0.01),
                List.of(
                        SurveyErrorTerms.magnetometerScale(ToolAxis.X, 0.01),
                        SurveyErrorTerms.magnetometerScale(ToolAxis.Y, 0.01)),
                point);
        assertMeanOverToolfaces(
                SurveyErrorTerms.misalignmentAcross(0.1),
                List.of(SurveyErrorTerms.misalignment(ToolAxis.X, 0.1), SurveyErrorTerms.misalignment(ToolAxis.Y, 0.1)),
                point);
    }

    @Property
    void weightsNearVerticalAreThoseOfTheVertical(@ForAll long seed) {
        Random random = new Random(seed);
        Attitude any = attitude(random);
        double vertical = random.nextBoolean() ? 0 : 180;
        Attitude exact = new Attitude(vertical, any.azimuth(), any.toolface(), any.earth());
        Attitude near = new Attitude(Math.abs(vertical - 1e-7), any.azimuth(), any.toolface(), any.earth());
        for (SurveyErrorSource source : SurveyErrorModel.basicMagneticTool().sources()) {
            UnitShift one = source.weighting().at(exact.point()).times(source.sigma());
            UnitShift other = source.weighting().at(near.point()).times(source.sigma());
            assertEquals(one.north(), other.north(), 1e-9, source.name());
            assertEquals(one.east(), other.east(), 1e-9, source.name());
            assertEquals(one.down(), other.down(), 1e-9, source.name());
        }
    }
}
