package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * A place on the grid.
 *
 * @param easting metres
 * @param northing metres
 * @param elevation metres, positive up
 */
public record Position(double easting, double northing, double elevation) {

    /**
     * Checks the coordinates.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public Position {
        easting = Require.finite("easting", easting, "m");
        northing = Require.finite("northing", northing, "m");
        elevation = Require.finite("elevation", elevation, "m");
    }

    /**
     * A place from its coordinates.
     *
     * @param easting metres
     * @param northing metres
     * @param elevation metres, positive up
     * @return the place
     * @throws IllegalArgumentException if a coordinate is not finite
     */
    public static Position ofEastingNorthingElevation(double easting, double northing, double elevation) {
        return new Position(easting, northing, elevation);
    }

    /**
     * The place that lies a displacement away.
     *
     * @param displacement the way to it
     * @return the place
     */
    public Position plus(Displacement displacement) {
        return new Position(
                easting + displacement.east(), northing + displacement.north(), elevation - displacement.down());
    }

    /**
     * The way from another place to this one.
     *
     * @param other the place where the way begins
     * @return the displacement
     */
    public Displacement minus(Position other) {
        return new Displacement(northing - other.northing, easting - other.easting, other.elevation - elevation);
    }

    /** The coordinates with their names: {@code easting 100.00, northing 200.00, elevation 50.00 m}. */
    @Override
    public String toString() {
        String text = String.format(
                Locale.ROOT, "easting %.2f, northing %.2f, elevation %.2f m", easting, northing, elevation);
        return text.replaceAll("-(0\\.00[, ])", "$1");
    }
}
