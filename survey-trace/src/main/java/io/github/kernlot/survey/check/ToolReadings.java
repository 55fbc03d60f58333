package io.github.kernlot.survey.check;

import io.github.kernlot.orientation.internal.Require;
import java.util.OptionalDouble;

/**
 * What a tool reads beside the direction of the hole, or what it should read at a place. Each is empty where it is not known.
 *
 * @param gravityTotal total gravity in g (9.80665 m/s2), above 0
 * @param fieldTotal total magnetic field in nT, above 0
 * @param fieldDip dip of the magnetic field below the horizontal, degrees in [-90, 90], positive down
 */
public record ToolReadings(OptionalDouble gravityTotal, OptionalDouble fieldTotal, OptionalDouble fieldDip) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one lies outside its range
     */
    public ToolReadings {
        gravityTotal.ifPresent(value -> Require.positive("total gravity", value, "g"));
        fieldTotal.ifPresent(value -> Require.positive("total field", value, "nT"));
        fieldDip.ifPresent(value -> Require.inRange("dip of the field", value, -90, 90, "degrees"));
    }

    /**
     * Nothing is known.
     *
     * @return no reading
     */
    public static ToolReadings none() {
        return new ToolReadings(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * Gravity alone.
     *
     * @param gravityTotal total gravity in g, above 0
     * @return the reading
     * @throws IllegalArgumentException if it is not a finite number above 0
     */
    public static ToolReadings ofGravity(double gravityTotal) {
        return new ToolReadings(OptionalDouble.of(gravityTotal), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * Gravity and the magnetic field.
     *
     * @param gravityTotal total gravity in g, above 0
     * @param fieldTotal total magnetic field in nT, above 0
     * @param fieldDip dip of the field below the horizontal, degrees in [-90, 90], positive down
     * @return the readings
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static ToolReadings of(double gravityTotal, double fieldTotal, double fieldDip) {
        return new ToolReadings(
                OptionalDouble.of(gravityTotal), OptionalDouble.of(fieldTotal), OptionalDouble.of(fieldDip));
    }
}
