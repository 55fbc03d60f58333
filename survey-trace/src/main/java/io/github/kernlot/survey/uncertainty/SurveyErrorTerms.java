package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import java.util.List;
import java.util.Locale;

/**
 * The standard terms of the published framework for survey errors, without magnitudes. Their weights are from memory (H. S.
 * Williamson, Accuracy prediction for directional measurement while drilling, SPE Drilling and Completion 15, 2000); those of
 * sensors are derived in docs/survey-uncertainty.md and checked against numeric differentiation of the sensor equations.
 *
 * <p>Each method throws an {@code IllegalArgumentException} for a sigma that is negative or not finite.
 */
public final class SurveyErrorTerms {

    private static final String DEGREES = "deg";
    private static final String GRAVITY = "m/s2";
    private static final String FIELD = "nT";

    private SurveyErrorTerms() {}

    private static SurveyErrorSource of(
            String name, double sigma, String unit, PropagationMode mode, ErrorWeighting weighting) {
        return new SurveyErrorSource(name, sigma, unit, mode, weighting);
    }

    private static SurveyErrorSource systematic(String name, double sigma, String unit, ErrorWeighting weighting) {
        return of(name, sigma, unit, PropagationMode.SYSTEMATIC, weighting);
    }

    /**
     * The depth of each station by itself (DREF, random).
     *
     * @param sigma metres
     * @return the source
     */
    public static SurveyErrorSource depthRandom(double sigma) {
        return of("depth, random", sigma, "m", PropagationMode.RANDOM, point -> UnitShift.ofDepth(1));
    }

    /**
     * Depths that are off in proportion (DSF).
     *
     * @param sigma metres a metre
     * @return the source, systematic
     */
    public static SurveyErrorSource depthScale(double sigma) {
        return systematic("depth scale", sigma, "", point -> UnitShift.ofDepth(point.depth()));
    }

    /**
     * Stretch of what depth is measured with (DST): depth times vertical depth.
     *
     * @param sigma per metre
     * @return the source, global
     */
    public static SurveyErrorSource depthStretch(double sigma) {
        return of(
                "depth stretch",
                sigma,
                "1/m",
                PropagationMode.GLOBAL,
                point -> UnitShift.ofDepth(point.depth() * point.verticalDepth()));
    }

    /**
     * A bias of one accelerometer (ABX, ABY, ABZ).
     *
     * @param axis the axis of the accelerometer
     * @param sigma metres per second squared
     * @return the source, systematic
     */
    public static SurveyErrorSource accelerometerBias(ToolAxis axis, double sigma) {
        return systematic(
                name("accelerometer bias", axis),
                sigma,
                GRAVITY,
                point -> SensorErrors.ofGravity(point, axis.at(point)));
    }

    /**
     * A scale error of one accelerometer (ASX, ASY, ASZ).
     *
     * @param axis the axis of the accelerometer
     * @param sigma a ratio
     * @return the source, systematic
     */
    public static SurveyErrorSource accelerometerScale(ToolAxis axis, double sigma) {
        return systematic(
                name("accelerometer scale", axis),
                sigma,
                "",
                point -> SensorErrors.ofGravity(point, along(axis.at(point), SensorErrors.gravity(point))));
    }

    /**
     * A bias of one magnetometer (MBX, MBY, MBZ).
     *
     * @param axis the axis of the magnetometer
     * @param sigma nanotesla
     * @return the source, systematic
     */
    public static SurveyErrorSource magnetometerBias(ToolAxis axis, double sigma) {
        return systematic(
                name("magnetometer bias", axis), sigma, FIELD, point -> SensorErrors.ofField(point, axis.at(point)));
    }

    /**
     * A scale error of one magnetometer (MSX, MSY, MSZ).
     *
     * @param axis the axis of the magnetometer
     * @param sigma a ratio
     * @return the source, systematic
     */
    public static SurveyErrorSource magnetometerScale(ToolAxis axis, double sigma) {
        return systematic(
                name("magnetometer scale", axis),
                sigma,
                "",
                point -> SensorErrors.ofField(point, along(axis.at(point), SensorErrors.field(point))));
    }

    private static String name(String what, ToolAxis axis) {
        return what + " " + axis.name().toLowerCase(Locale.ROOT);
    }

    private static Vector along(Vector axis, Vector measured) {
        return axis.times(axis.dot(measured));
    }

    /**
     * Biases of the two accelerometers across the tool, whatever its toolface: one towards the high side, one to the right.
     *
     * @param sigma metres per second squared, of one accelerometer
     * @return two sources, systematic
     */
    public static List<SurveyErrorSource> accelerometerBiasAcross(double sigma) {
        return AcrossTool.bias("accelerometer bias", sigma, GRAVITY, SensorErrors::ofGravity);
    }

    /**
     * Scale errors of the two accelerometers across the tool, averaged over its toolfaces.
     *
     * @param sigma a ratio, of one accelerometer
     * @return three sources, systematic
     */
    public static List<SurveyErrorSource> accelerometerScaleAcross(double sigma) {
        return AcrossTool.scale("accelerometer scale", sigma, SensorErrors::gravity, SensorErrors::ofGravity);
    }

    /**
     * Biases of the two magnetometers across the tool, whatever its toolface: one towards the high side, one to the right.
     *
     * @param sigma nanotesla, of one magnetometer
     * @return two sources, systematic
     */
    public static List<SurveyErrorSource> magnetometerBiasAcross(double sigma) {
        return AcrossTool.bias("magnetometer bias", sigma, FIELD, SensorErrors::ofField);
    }

    /**
     * Scale errors of the two magnetometers across the tool, averaged over its toolfaces.
     *
     * @param sigma a ratio, of one magnetometer
     * @return three sources, systematic
     */
    public static List<SurveyErrorSource> magnetometerScaleAcross(double sigma) {
        return AcrossTool.scale("magnetometer scale", sigma, SensorErrors::field, SensorErrors::ofField);
    }

    /**
     * A tool that lies askew in the hole and turns with its toolface (MX, MY).
     *
     * @param axis the axis towards which it leans, x or y
     * @param sigma degrees
     * @return the source, systematic
     * @throws IllegalArgumentException if the axis is z
     */
    public static SurveyErrorSource misalignment(ToolAxis axis, double sigma) {
        if (axis == ToolAxis.Z) {
            throw new IllegalArgumentException("a tool cannot lean along its own axis Z; expected X or Y");
        }
        return systematic(
                name("misalignment", axis), sigma, DEGREES, point -> AcrossTool.shift(axis.at(point), Math.PI / 180));
    }

    /**
     * A tool that lies askew in the hole, whatever its toolface: towards the high side and to the right.
     *
     * @param sigma degrees, in one direction
     * @return two sources, systematic
     */
    public static List<SurveyErrorSource> misalignmentAcross(double sigma) {
        return List.of(
                systematic("misalignment, high side", sigma, DEGREES, point -> point.inclined(1)),
                systematic("misalignment, right", sigma, DEGREES, point -> point.turned(1)));
    }

    /**
     * Sag of the tool in an inclined hole (SAG): the inclination by sin I.
     *
     * @param sigma degrees in a horizontal hole
     * @return the source, systematic
     */
    public static SurveyErrorSource sag(double sigma) {
        return systematic(
                "sag",
                sigma,
                DEGREES,
                point -> point.inclined(Degrees.sin(point.direction().inclination())));
    }

    /**
     * Magnetism of the rods that turns every azimuth alike (AMIC).
     *
     * @param sigma degrees of azimuth
     * @return the source, systematic
     */
    public static SurveyErrorSource axialInterferenceConstant(double sigma) {
        return systematic("axial interference, constant", sigma, DEGREES, point -> point.swung(1));
    }

    /**
     * Magnetism of the rods along the hole (AMID): the azimuth by sin I sin Am, with Am the magnetic azimuth.
     *
     * @param sigma degrees of azimuth in a horizontal hole that runs magnetic east
     * @return the source, systematic
     */
    public static SurveyErrorSource axialInterferenceVariable(double sigma) {
        return systematic(
                "axial interference, variable",
                sigma,
                DEGREES,
                point -> point.swung(
                        Degrees.sin(point.direction().inclination()) * Degrees.sin(point.neededMagneticAzimuth())));
    }

    /**
     * A declination that is off everywhere alike (AZ).
     *
     * @param sigma degrees
     * @return the source, global
     */
    public static SurveyErrorSource declination(double sigma) {
        return of("declination", sigma, DEGREES, PropagationMode.GLOBAL, point -> point.swung(1));
    }

    /**
     * A declination that is off the more the weaker the horizontal field (DBH): the azimuth by 1/H.
     *
     * @param sigma degrees times nanotesla
     * @return the source, global
     */
    public static SurveyErrorSource declinationByField(double sigma) {
        return of(
                "declination, by horizontal field",
                sigma,
                "deg nT",
                PropagationMode.GLOBAL,
                point -> point.swung(1 / point.neededEarth().horizontalField()));
    }
}
