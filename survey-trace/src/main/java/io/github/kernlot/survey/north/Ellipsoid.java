package io.github.kernlot.survey.north;

import io.github.kernlot.orientation.internal.Require;

/**
 * An ellipsoid of revolution, flattened at the poles, on which latitudes and grids are defined.
 *
 * @param name how it is called
 * @param equatorialRadius metres, above 0
 * @param flattening (a - b) / a, in [0, 0.02]
 */
public record Ellipsoid(String name, double equatorialRadius, double flattening) {

    /** The ellipsoid of the World Geodetic System 1984, by which satellite receivers and the magnetic model go. */
    public static final Ellipsoid WGS84 = new Ellipsoid("WGS84", 6_378_137, 1 / 298.257223563);

    /** The Geodetic Reference System 1980, under many national grids; its poles lie 0.1 mm from those of WGS84. */
    public static final Ellipsoid GRS80 = new Ellipsoid("GRS80", 6_378_137, 1 / 298.257222101);

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one lies outside its range
     */
    public Ellipsoid {
        equatorialRadius = Require.positive("equatorial radius", equatorialRadius, "m");
        flattening = Require.inRange("flattening", flattening, 0, 0.02, "");
    }

    /**
     * An ellipsoid from its two usual numbers.
     *
     * @param name how it is called
     * @param equatorialRadius metres, above 0
     * @param inverseFlattening a / (a - b), 50 or more
     * @return the ellipsoid
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static Ellipsoid ofInverseFlattening(String name, double equatorialRadius, double inverseFlattening) {
        double least = 50;
        return new Ellipsoid(
                name,
                equatorialRadius,
                1 / Require.inRange("inverse flattening", inverseFlattening, least, Double.MAX_VALUE, ""));
    }

    /** The square of the first eccentricity, f (2 - f). */
    double eccentricitySquared() {
        return flattening * (2 - flattening);
    }

    /** The third flattening, f / (2 - f). */
    double thirdFlattening() {
        return flattening / (2 - flattening);
    }

    /** The name. */
    @Override
    public String toString() {
        return name;
    }
}
