package io.github.kernlot.survey.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.survey.uncertainty.Covariance;
import io.github.kernlot.survey.uncertainty.EarthReference;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.RotationOrder;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

class SensorProperties {

    private static final double GRAVITY = 9.79;
    private static final double FIELD = 52_000;

    private static double apart(double one, double other) {
        return Math.abs(Math.IEEEremainder(one - other, 360));
    }

    private static SensorReading simulated(double inclination, double azimuth, double roll, double dip) {
        return SensorReading.simulated(
                HoleDirection.ofInclination(inclination, azimuth), roll, new EarthReference(GRAVITY, FIELD, dip));
    }

    @Property
    void whatASoundToolReadsLeadsBack(
            @ForAll @DoubleRange(min = 0, max = 180) double inclination,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
            @ForAll @DoubleRange(min = 0, max = 360) double roll,
            @ForAll @DoubleRange(min = -85, max = 85) double dip) {
        SensorReading reading = simulated(inclination, azimuth, roll, dip);
        HoleDirection direction = HoleDirection.ofInclination(inclination, azimuth);

        double rounding = 1e-12 / Math.cos(Math.toRadians(dip));
        assertEquals(0, direction.angleTo(reading.direction()), rounding);
        assertEquals(GRAVITY, reading.gravity().total(), 1e-12);
        assertEquals(FIELD, reading.field().total(), 1e-8);
        assertEquals(dip, reading.dip(), 1e-12);
        assertEquals(inclination, reading.gravity().inclination(), 1e-12);
        if (!direction.isVertical() && Math.sin(Math.toRadians(inclination)) > 1e-9) {
            double swing = Math.sin(Math.toRadians(inclination));
            assertEquals(0, apart(roll, reading.roll()) * swing, 1e-12);
            assertEquals(0, apart(roll + 180, reading.rollFromLowSide()) * swing, 1e-12);
            assertEquals(0, apart(azimuth, reading.direction().azimuth()) * swing, rounding);
        }
    }

    /** A rotation of Hipparchus 4.0.3: azimuth about down, inclination about the new east, roll about the axis of the hole. */
    @Property
    void whatASoundToolReadsIsARotationOfGravityAndField(
            @ForAll @DoubleRange(min = 0, max = 180) double inclination,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
            @ForAll @DoubleRange(min = 0, max = 360) double roll,
            @ForAll @DoubleRange(min = -85, max = 85) double dip) {
        SensorReading reading = simulated(inclination, azimuth, roll, dip);

        // y lies towards the high side, then turns with the roll: x is 90 degrees before it
        Rotation toGround = new Rotation(
                RotationOrder.ZYZ,
                RotationConvention.VECTOR_OPERATOR,
                Math.toRadians(azimuth),
                Math.toRadians(inclination),
                Math.toRadians(roll - 90));
        Vector3D gravity = toGround.applyInverseTo(new Vector3D(0, 0, GRAVITY));
        Vector3D field = toGround.applyInverseTo(
                new Vector3D(FIELD * Math.cos(Math.toRadians(dip)), 0, FIELD * Math.sin(Math.toRadians(dip))));
        assertEquals(gravity.getX(), reading.gravity().x(), 1e-12);
        assertEquals(gravity.getY(), reading.gravity().y(), 1e-12);
        assertEquals(gravity.getZ(), reading.gravity().z(), 1e-12);
        assertEquals(field.getX(), reading.field().x(), 1e-7);
        assertEquals(field.getY(), reading.field().y(), 1e-7);
        assertEquals(field.getZ(), reading.field().z(), 1e-7);
    }

    /** The sensor equations that error models of magnetic tools are written with, from memory. */
    @Property
    void whatASoundToolReadsIsWhatThePublishedEquationsSay(
            @ForAll @DoubleRange(min = 0, max = 180) double inclination,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
            @ForAll @DoubleRange(min = 0, max = 360) double roll,
            @ForAll @DoubleRange(min = -85, max = 85) double dip) {
        SensorReading reading = simulated(inclination, azimuth, roll, dip);
        double sI = Math.sin(Math.toRadians(inclination));
        double cI = Math.cos(Math.toRadians(inclination));
        double sA = Math.sin(Math.toRadians(azimuth));
        double cA = Math.cos(Math.toRadians(azimuth));
        double sR = Math.sin(Math.toRadians(roll));
        double cR = Math.cos(Math.toRadians(roll));
        double sD = Math.sin(Math.toRadians(dip));
        double cD = Math.cos(Math.toRadians(dip));

        assertEquals(-GRAVITY * sI * sR, reading.gravity().x(), 1e-12);
        assertEquals(-GRAVITY * sI * cR, reading.gravity().y(), 1e-12);
        assertEquals(GRAVITY * cI, reading.gravity().z(), 1e-12);
        assertEquals(
                FIELD * (cD * cI * cA * sR - sD * sI * sR + cD * sA * cR),
                reading.field().x(),
                1e-7);
        assertEquals(
                FIELD * (cD * cI * cA * cR - sD * sI * cR - cD * sA * sR),
                reading.field().y(),
                1e-7);
        assertEquals(FIELD * (cD * sI * cA + sD * cI), reading.field().z(), 1e-7);
    }

    @Property
    void theFrameHoldsTheRollFromEverySide(
            @ForAll @DoubleRange(min = 0, max = 180) double inclination,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
            @ForAll @DoubleRange(min = 0, max = 360) double roll) {
        SensorReading reading = simulated(inclination, azimuth, roll, 60);
        HoleDirection direction = reading.direction();
        double low = WallReference.lowSide().sharpness(direction);
        double north = WallReference.north().sharpness(direction);
        Assume.that(low > 1e-6 && north > 1e-6);

        CoreFrame frame = reading.frame();

        assertEquals(0, direction.angleTo(frame.direction()), 1e-11);
        assertEquals(0, apart(reading.rollFromLowSide(), frame.lineAngle()) * low, 1e-11);
        assertEquals(0, apart(reading.rollFromNorth(), frame.lineAngle(WallReference.north())) * north, 1e-11);
    }

    private static SensorReading moved(SensorReading reading, int sensor, double step) {
        double[] read = {
            reading.gravity().x(),
            reading.gravity().y(),
            reading.gravity().z(),
            reading.field().x(),
            reading.field().y(),
            reading.field().z()
        };
        read[sensor] += step;
        return SensorReading.of(
                GravityReading.of(read[0], read[1], read[2]), FieldReading.of(read[3], read[4], read[5]));
    }

    /** Inclination, azimuth, roll, roll from north, and the unit vector, of a reading. */
    private static double[] told(SensorReading reading) {
        HoleDirection direction = reading.direction();
        return new double[] {
            direction.inclination(),
            direction.azimuth(),
            reading.roll(),
            reading.rollFromNorth(),
            direction.north(),
            direction.east(),
            direction.down()
        };
    }

    @Property
    void sigmasAreThoseOfTheDerivativesByDifferences(
            @ForAll @DoubleRange(min = 2, max = 178) double inclination,
            @ForAll @DoubleRange(min = 5, max = 175) double azimuth,
            @ForAll @DoubleRange(min = 0, max = 360) double roll,
            @ForAll @DoubleRange(min = -80, max = 80) double dip) {
        SensorReading reading = simulated(inclination, azimuth, roll, dip);
        SensorSigmas sigmas = new SensorSigmas(0.003, 0.005, 40, 90);
        double[] sigma = {0.003, 0.003, 0.005, 40, 40, 90};
        double[] variance = new double[4];
        double[][] tangent = new double[3][3];
        for (int sensor = 0; sensor < 6; sensor++) {
            double step = sensor < 3 ? 1e-5 : 0.05;
            double[] after = told(moved(reading, sensor, step));
            double[] before = told(moved(reading, sensor, -step));
            double[] slope = new double[7];
            for (int i = 0; i < 7; i++) {
                double change = i < 4 ? Math.IEEEremainder(after[i] - before[i], 360) : after[i] - before[i];
                slope[i] = change / (2 * step) * sigma[sensor];
            }
            for (int i = 0; i < 4; i++) {
                variance[i] += slope[i] * slope[i];
            }
            for (int i = 0; i < 9; i++) {
                tangent[i / 3][i % 3] += slope[4 + i / 3] * slope[4 + i % 3];
            }
        }

        AttitudeUncertainty uncertainty = reading.uncertainty(sigmas);

        assertClose(Math.sqrt(variance[0]), uncertainty.inclinationSigma());
        assertClose(Math.sqrt(variance[1]), uncertainty.azimuthSigma());
        assertClose(Math.sqrt(variance[2]), uncertainty.rollSigma());
        assertClose(Math.sqrt(variance[3]), uncertainty.rollFromNorthSigma());
        assertClose(Math.sqrt(variance[0]), reading.gravity().inclinationSigma(sigmas));
        assertClose(Math.sqrt(variance[2]), reading.gravity().rollSigma(sigmas));
        assertEquals(
                uncertainty.azimuthSigma() * Math.sin(Math.toRadians(inclination)), uncertainty.sidewaysSigma(), 1e-12);
        double[][] covariance = uncertainty.tangent().toArray();
        double scale = covariance[0][0] + covariance[1][1] + covariance[2][2];
        for (int i = 0; i < 9; i++) {
            assertEquals(tangent[i / 3][i % 3] / scale, covariance[i / 3][i % 3] / scale, 1e-5);
        }
    }

    private static void assertClose(double expected, double value) {
        assertEquals(1, value / expected, 1e-5);
    }

    /** By hand: sigma / G about north and east, and about down tan(dip) sigma / G joined with sigma / H. */
    @Property
    void alikeSensorsTurnTheAttitudeAlikeInEveryHole(
            @ForAll @DoubleRange(min = 0, max = 180) double inclination,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth,
            @ForAll @DoubleRange(min = 0, max = 360) double roll,
            @ForAll @DoubleRange(min = -80, max = 80) double dip) {
        Covariance rotation = simulated(inclination, azimuth, roll, dip)
                .uncertainty(SensorSigmas.of(0.004, 70))
                .rotation();

        double tilt = 0.004 / GRAVITY;
        double tangent = Math.tan(Math.toRadians(dip));
        double swing = Math.hypot(tangent * tilt, 70 / (FIELD * Math.cos(Math.toRadians(dip))));
        assertEquals(tilt * tilt, rotation.northNorth(), 1e-17);
        assertEquals(tilt * tilt, rotation.eastEast(), 1e-17);
        assertEquals(swing * swing, rotation.downDown(), 1e-15);
        assertEquals(tangent * tilt * tilt, rotation.northDown(), 1e-16);
        assertEquals(0, rotation.northEast(), 1e-17);
        assertEquals(0, rotation.eastDown(), 1e-17);
        assertTrue(rotation.downDown() > 0);
    }
}
