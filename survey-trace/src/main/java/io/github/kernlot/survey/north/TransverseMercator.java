package io.github.kernlot.survey.north;

import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * A grid of the transverse Mercator projection, as UTM and most national grids of mining countries are. It answers the convergence,
 * which lies between true and grid north, and the scale at a place, and takes places to coordinates and back.
 *
 * <p>Within 3,900 km of the central meridian convergence and point scale are within 1e-12 degrees and 1e-14, places within
 * 10 nanometres, before rounding of what is given. Source: C. F. F. Karney, Transverse Mercator with an accuracy of a few
 * nanometers, 2011.
 */
public final class TransverseMercator {

    private static final double UTM_SCALE = 0.9996;
    private static final double UTM_FALSE_EASTING = 500_000;
    private static final double UTM_FALSE_NORTHING_SOUTH = 10_000_000;
    private static final double REACH = 3_900_000;

    private final String name;
    private final Ellipsoid ellipsoid;
    private final double centralMeridian;
    private final double scale;
    private final double falseEasting;
    /** The northing of the equator on the central meridian. */
    private final double northingOfEquator;

    private final KruegerSeries series;

    private TransverseMercator(
            String name,
            Ellipsoid ellipsoid,
            double centralMeridian,
            double scale,
            double falseEasting,
            double northingOfEquator) {
        this.name = name;
        this.ellipsoid = ellipsoid;
        this.centralMeridian = centralMeridian;
        this.scale = scale;
        this.falseEasting = falseEasting;
        this.northingOfEquator = northingOfEquator;
        this.series = new KruegerSeries(ellipsoid);
    }

    /**
     * A grid whose coordinates are counted from the central meridian and the equator.
     *
     * @param ellipsoid the ellipsoid of the grid's latitudes and longitudes
     * @param centralMeridian degrees east of Greenwich in [-180, 360]
     * @param scale the point scale on the central meridian, in [0.5, 2]
     * @return the grid
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static TransverseMercator of(Ellipsoid ellipsoid, double centralMeridian, double scale) {
        double meridian = Degrees.wrap180(Require.inRange("central meridian", centralMeridian, -180, 360, "degrees"));
        double checked = Require.inRange("scale on the central meridian", scale, 0.5, 2, "");
        String name = String.format(
                Locale.ROOT,
                "transverse Mercator grid of central meridian %s %s",
                number(Math.abs(meridian)),
                meridian < 0 ? "W" : "E");
        return new TransverseMercator(name, ellipsoid, meridian, checked, 0, 0);
    }

    /**
     * A zone of the Universal Transverse Mercator grid of the northern hemisphere, on WGS84.
     *
     * @param zone in [1, 60]
     * @return the grid
     * @throws IllegalArgumentException if there is no such zone
     */
    public static TransverseMercator utmNorth(int zone) {
        return utm(zone, "N", 0);
    }

    /**
     * A zone of the Universal Transverse Mercator grid of the southern hemisphere, on WGS84.
     *
     * @param zone in [1, 60]
     * @return the grid
     * @throws IllegalArgumentException if there is no such zone
     */
    public static TransverseMercator utmSouth(int zone) {
        return utm(zone, "S", UTM_FALSE_NORTHING_SOUTH);
    }

    /**
     * The zone of the Universal Transverse Mercator grid in which a place lies.
     *
     * @param place on WGS84
     * @return the zone of {@link #utmZone} and the place's hemisphere, the northern one on the equator
     */
    public static TransverseMercator utmOf(GeographicPlace place) {
        int zone = utmZone(place.longitude());
        return place.latitude() < 0 ? utmSouth(zone) : utmNorth(zone);
    }

    /**
     * The number of the UTM zone of a longitude, six degrees each from 180 west. The wider and narrower zones of south-west Norway
     * and of Svalbard are left to the caller.
     *
     * @param longitude degrees east of Greenwich in [-180, 360]
     * @return the zone, 1 to 60; a longitude between two zones belongs to the eastern one
     * @throws IllegalArgumentException if the longitude lies outside its range
     */
    public static int utmZone(double longitude) {
        double checked = Require.inRange("longitude", longitude, -180, 360, "degrees");
        return (int) Math.floor(Degrees.wrap360(checked + 180) / 6) + 1;
    }

    private static TransverseMercator utm(int zone, String hemisphere, double northingOfEquator) {
        Require.inRange("UTM zone", zone, 1, 60, "");
        return new TransverseMercator(
                "UTM zone " + zone + hemisphere,
                Ellipsoid.WGS84,
                6 * zone - 183,
                UTM_SCALE,
                UTM_FALSE_EASTING,
                northingOfEquator);
    }

    /**
     * The same grid with the coordinates of its origin. Convergence and scale do not change.
     *
     * @param latitudeOfOrigin degrees in [-90, 90]
     * @param easting the easting of the central meridian, metres
     * @param northing the northing of the latitude of origin on the central meridian, metres
     * @return the grid
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public TransverseMercator withOrigin(double latitudeOfOrigin, double easting, double northing) {
        double latitude = Require.inRange("latitude of origin", latitudeOfOrigin, -90, 90, "degrees");
        double meridian = scale
                * series.forward(Degrees.sin(latitude), Degrees.cos(latitude), 0, 1)
                        .north();
        return new TransverseMercator(
                name,
                ellipsoid,
                centralMeridian,
                scale,
                Require.finite("easting of the origin", easting, "m"),
                Require.finite("northing of the origin", northing, "m") - meridian);
    }

    /**
     * The central meridian.
     *
     * @return degrees east of Greenwich in (-180, 180]
     */
    public double centralMeridian() {
        return centralMeridian;
    }

    /**
     * The ellipsoid of the grid.
     *
     * @return the ellipsoid
     */
    public Ellipsoid ellipsoid() {
        return ellipsoid;
    }

    /**
     * Where grid north lies from true north at a place. At a pole true north is along the longitude that was given.
     *
     * @param place on the ellipsoid of the grid; its height says nothing
     * @return degrees, east positive: positive to the east of the central meridian in the northern hemisphere
     * @throws IllegalArgumentException if the place lies more than 3,900 km from the central meridian
     */
    public double convergenceAt(GeographicPlace place) {
        return Math.toDegrees(plane(place).convergence()) + 0.0;
    }

    /**
     * The point scale: metres on the grid for a metre on the ellipsoid. A drillhole's own metres are not on the ellipsoid; nothing in
     * this library scales them.
     *
     * @param place on the ellipsoid of the grid; its height says nothing
     * @return a number, the scale on the central meridian or more
     * @throws IllegalArgumentException if the place lies more than 3,900 km from the central meridian
     */
    public double scaleAt(GeographicPlace place) {
        return scale * plane(place).scale();
    }

    /**
     * The coordinates of a place.
     *
     * @param place on the ellipsoid of the grid
     * @return easting and northing, and the place's height as elevation
     * @throws IllegalArgumentException if the place lies more than 3,900 km from the central meridian
     */
    public Position positionOf(GeographicPlace place) {
        KruegerSeries.PlanePoint point = plane(place);
        return Position.ofEastingNorthingElevation(
                falseEasting + scale * point.east(), northingOfEquator + scale * point.north(), place.height());
    }

    /**
     * The place of coordinates, such as those of a collar.
     *
     * @param position easting and northing on this grid, elevation
     * @return latitude and longitude on the ellipsoid of the grid, and the elevation as height
     * @throws IllegalArgumentException if the coordinates lie more than 3,900 km from the central meridian, or beyond a pole
     */
    public GeographicPlace placeOf(Position position) {
        double east = (position.easting() - falseEasting) / scale;
        double north = (position.northing() - northingOfEquator) / scale;
        Require.inRange("easting from the central meridian", east, -REACH, REACH, "m");
        double pole = series.forward(1, 0, 0, 1).north();
        Require.inRange("northing from the equator", north, -pole, pole, "m");
        KruegerSeries.GlobePoint found = series.inverse(north, east);
        return new GeographicPlace(
                Math.toDegrees(found.latitude()),
                Degrees.wrap180(centralMeridian + Math.toDegrees(found.longitude())),
                position.elevation());
    }

    private KruegerSeries.PlanePoint plane(GeographicPlace place) {
        double east = Degrees.wrap180(place.longitude() - centralMeridian);
        if (Math.abs(east) <= 90) {
            KruegerSeries.PlanePoint point = series.forward(
                    Degrees.sin(place.latitude()), Degrees.cos(place.latitude()), Degrees.sin(east), Degrees.cos(east));
            if (Math.abs(point.east()) <= REACH) {
                return point;
            }
        }
        throw new IllegalArgumentException(
                place + " lies too far from the central meridian of " + name + "; expected at most 3,900 km");
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }

    /** The name: {@code UTM zone 51S}, {@code transverse Mercator grid of central meridian 13.5 E}. */
    @Override
    public String toString() {
        return name;
    }
}
