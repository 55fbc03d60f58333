package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A station as an error sees it. What was not given is absent, and an error that depends on it says so.
 *
 * @param depth metres along the hole, 0 or more
 * @param direction the direction there, from grid north
 * @param verticalDepth metres below the collar
 * @param trueAzimuth the azimuth from true north, degrees in [0, 360); empty where the way from grid to true north is not known
 * @param magneticAzimuth the azimuth from magnetic north, degrees in [0, 360); empty where the declination is not known
 * @param toolface how the tool lay in the hole, clockwise from the high side looking down-hole, degrees; empty where not known
 * @param earth gravity and magnetic field; empty where not given
 */
public record SurveyedPoint(
        double depth,
        HoleDirection direction,
        double verticalDepth,
        OptionalDouble trueAzimuth,
        OptionalDouble magneticAzimuth,
        OptionalDouble toolface,
        Optional<EarthReference> earth) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is not finite or lies outside its range
     */
    public SurveyedPoint {
        depth = Require.notNegative("depth", depth, "m");
        verticalDepth = Require.finite("vertical depth", verticalDepth, "m");
        trueAzimuth = azimuth("true azimuth", trueAzimuth);
        magneticAzimuth = azimuth("magnetic azimuth", magneticAzimuth);
        if (toolface.isPresent()) {
            toolface = OptionalDouble.of(Require.finite("toolface", toolface.getAsDouble(), "degrees"));
        }
    }

    private static OptionalDouble azimuth(String name, OptionalDouble degrees) {
        return degrees.isPresent() ? OptionalDouble.of(Require.azimuth(name, degrees.getAsDouble())) : degrees;
    }

    /**
     * The azimuth from magnetic north, for an error that depends on it.
     *
     * @return degrees in [0, 360)
     * @throws IllegalArgumentException if it is not known
     */
    public double neededMagneticAzimuth() {
        return magneticAzimuth.orElseThrow(() -> lacking(
                "its azimuth from magnetic north", "a survey whose north reference has declination and convergence"));
    }

    /**
     * The azimuth from true north, for an error that depends on it.
     *
     * @return degrees in [0, 360)
     * @throws IllegalArgumentException if it is not known
     */
    public double neededTrueAzimuth() {
        return trueAzimuth.orElseThrow(
                () -> lacking("its azimuth from true north", "a survey whose north reference has a convergence"));
    }

    /**
     * The toolface, for an error that depends on it.
     *
     * @return degrees
     * @throws IllegalArgumentException if it is not known
     */
    public double neededToolface() {
        return toolface.orElseThrow(() -> lacking("its toolface", "toolfaces, or terms that do not depend on them"));
    }

    /**
     * Gravity and magnetic field, for an error that depends on them.
     *
     * @return the reference
     * @throws IllegalArgumentException if it is not known
     */
    public EarthReference neededEarth() {
        return earth.orElseThrow(() -> lacking("gravity and magnetic field", "an EarthReference"));
    }

    private IllegalArgumentException lacking(String what, String wayOut) {
        return new IllegalArgumentException(String.format(
                Locale.ROOT, "an error at %.2f m depends on %s, which is not known; expected %s", depth, what, wayOut));
    }

    /**
     * The shift of a point whose inclination is off.
     *
     * @param degrees towards more inclination
     * @return the shift, defined in a vertical hole too (towards its recorded azimuth)
     * @throws IllegalArgumentException if the angle is not finite
     */
    public UnitShift inclined(double degrees) {
        return shift(highSide().times(Math.toRadians(degrees)));
    }

    /**
     * The shift of a point that is turned sideways, to the right of the high side.
     *
     * @param degrees the angle in the ground, which is the error of the azimuth by sin I
     * @return the shift, defined in a vertical hole too (to the right of its recorded azimuth)
     * @throws IllegalArgumentException if the angle is not finite
     */
    public UnitShift turned(double degrees) {
        return shift(right().times(Math.toRadians(degrees)));
    }

    /**
     * The shift of a point whose azimuth is off.
     *
     * @param degrees clockwise
     * @return the shift, none in a vertical hole
     * @throws IllegalArgumentException if the angle is not finite
     */
    public UnitShift swung(double degrees) {
        return turned(degrees * Degrees.sin(direction.inclination()));
    }

    private static UnitShift shift(Vector tangent) {
        return new UnitShift(0, tangent.north(), tangent.east(), tangent.down());
    }

    Vector tangent() {
        return Vector.ofInclination(direction.inclination(), direction.azimuth());
    }

    Vector highSide() {
        return Vector.ofInclination(direction.inclination() + 90, direction.azimuth());
    }

    Vector right() {
        return Vector.ofAzimuth(direction.azimuth() + 90);
    }
}
