package io.github.kernlot.survey.north;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * A place on the earth, on the ellipsoid of the grid or the model that is asked (WGS84 for the magnetic model).
 *
 * @param latitude geodetic, degrees north of the equator in [-90, 90], south negative
 * @param longitude degrees east of Greenwich in (-180, 180], west negative
 * @param height metres above the ellipsoid. An elevation above sea level may stand for it: the two differ by at most about 110 m
 *     (from memory), which moves a declination by less than 0.001 degrees wherever a compass can be used
 */
public record GeographicPlace(double latitude, double longitude, double height) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the latitude lies outside [-90, 90], the longitude outside [-180, 360], or the height is
     *     not finite; a longitude above 180 is turned into one west of Greenwich
     */
    public GeographicPlace {
        latitude = Require.inRange("latitude", latitude, -90, 90, "degrees");
        longitude = Degrees.wrap180(Require.inRange("longitude", longitude, -180, 360, "degrees"));
        height = Require.finite("height", height, "m");
    }

    /**
     * A place on the ellipsoid itself.
     *
     * @param latitude degrees north of the equator in [-90, 90]
     * @param longitude degrees east of Greenwich in [-180, 360]
     * @return the place, at height 0
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static GeographicPlace ofLatitudeLongitude(double latitude, double longitude) {
        return new GeographicPlace(latitude, longitude, 0);
    }

    /**
     * The place above or below this one.
     *
     * @param other metres above the ellipsoid
     * @return the place
     * @throws IllegalArgumentException if the height is not finite
     */
    public GeographicPlace withHeight(double other) {
        return new GeographicPlace(latitude, longitude, other);
    }

    /** Latitude, longitude and height: {@code 31.40000 S 121.50000 E, 350 m}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.5f %s %.5f %s, %.0f m",
                Math.abs(latitude),
                latitude < 0 ? "S" : "N",
                Math.abs(longitude),
                longitude < 0 ? "W" : "E",
                height);
    }
}
