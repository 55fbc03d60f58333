package io.github.kernlot.survey;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The north of a set of azimuths, with what is known of the way to the other norths: {@code true = magnetic + declination},
 * {@code grid = true - convergence}. What was not given is never taken as 0.
 *
 * @param north the north that azimuths are counted from
 * @param declination where magnetic north lies from true north, degrees, east positive; empty where it was not given
 * @param convergence where grid north lies from true north, degrees, east positive; empty where it was not given
 */
public record NorthReference(North north, OptionalDouble declination, OptionalDouble convergence) {

    /**
     * Checks the angles.
     *
     * @throws IllegalArgumentException if one lies outside [-180, 180]
     */
    public NorthReference {
        declination = checked("declination", declination);
        convergence = checked("grid convergence", convergence);
    }

    private static OptionalDouble checked(String name, OptionalDouble angle) {
        return angle.isPresent()
                ? OptionalDouble.of(Require.inRange(name, angle.getAsDouble(), -180, 180, "degrees"))
                : angle;
    }

    /**
     * Azimuths from grid north, with no way known to another north.
     *
     * @return the reference
     */
    public static NorthReference grid() {
        return new NorthReference(North.GRID, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * Azimuths from true north.
     *
     * @param convergence where grid north lies from true north, degrees, east positive
     * @return the reference
     * @throws IllegalArgumentException if the angle lies outside [-180, 180]
     */
    public static NorthReference trueNorth(double convergence) {
        return new NorthReference(North.TRUE, OptionalDouble.empty(), OptionalDouble.of(convergence));
    }

    /**
     * Azimuths from magnetic north.
     *
     * @param declination where magnetic north lies from true north, degrees, east positive
     * @param convergence where grid north lies from true north, degrees, east positive
     * @return the reference
     * @throws IllegalArgumentException if an angle lies outside [-180, 180]
     */
    public static NorthReference magnetic(double declination, double convergence) {
        return new NorthReference(North.MAGNETIC, OptionalDouble.of(declination), OptionalDouble.of(convergence));
    }

    /**
     * The same place with azimuths counted from another north.
     *
     * @param other the other north
     * @return the reference
     */
    public NorthReference with(North other) {
        return new NorthReference(other, declination, convergence);
    }

    /**
     * What is added to an azimuth of this reference to count it from another north.
     *
     * @param other the north to count from
     * @return degrees, any finite number
     * @throws IllegalArgumentException if the conversion needs a declination or a convergence that was not given
     */
    public double toAdd(North other) {
        return other == north ? 0 : fromTrue(north) - fromTrue(other);
    }

    /** Where a north lies from true north, east positive. */
    private double fromTrue(North which) {
        return switch (which) {
            case TRUE -> 0;
            case MAGNETIC -> given(declination, "declination", which);
            case GRID -> given(convergence, "grid convergence", which);
        };
    }

    private double given(OptionalDouble angle, String name, North which) {
        return angle.orElseThrow(() -> new IllegalArgumentException("azimuths from " + text(north)
                + " north cannot be converted: no " + name + " was given, and " + text(which)
                + " north cannot be found without it"));
    }

    private static String text(North which) {
        return which.name().toLowerCase(Locale.ROOT);
    }

    /** The north and the angles: {@code magnetic north (declination 3.2, convergence -1.1)}. */
    @Override
    public String toString() {
        String known = (declination.isPresent() ? "declination " + Degrees.text(declination.getAsDouble()) : "")
                + (declination.isPresent() && convergence.isPresent() ? ", " : "")
                + (convergence.isPresent() ? "convergence " + Degrees.text(convergence.getAsDouble()) : "");
        return text(north) + " north" + (known.isEmpty() ? "" : " (" + known + ")");
    }
}
