package io.github.kernlot.survey.north;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.survey.NorthReference;
import java.time.LocalDate;
import java.util.Locale;

/**
 * The World Magnetic Model: the earth's main field as a spherical harmonic series, by which a declination is found where none was
 * measured. It knows neither the crust under a place nor magnetic storms; its published sigmas count them in.
 *
 * <p>Source: National Centers for Environmental Information (NOAA) and British Geological Survey, The US/UK World Magnetic Model for
 * 2025-2030. The 112 test values published with it are met to their printed digits.
 */
public final class WorldMagneticModel {

    private static final double LOWEST = -10_000;
    private static final double HIGHEST = 850_000;
    private static final WorldMagneticModel WMM2025 =
            new WorldMagneticModel("WMM2025", 2025, GaussCoefficients.ofResource("wmm2025.csv", 12));

    private final String name;
    private final double epoch;
    private final SphericalHarmonics harmonics;

    private WorldMagneticModel(String name, double epoch, GaussCoefficients coefficients) {
        this.name = name;
        this.epoch = epoch;
        this.harmonics = new SphericalHarmonics(coefficients);
    }

    /**
     * The model of 2025, valid from 2025.0 to 2030.0.
     *
     * @return the model
     */
    public static WorldMagneticModel wmm2025() {
        return WMM2025;
    }

    /**
     * The first moment for which the model holds.
     *
     * @return decimal year
     */
    public double validFrom() {
        return epoch;
    }

    /**
     * The last moment for which the model holds.
     *
     * @return decimal year
     */
    public double validUntil() {
        return epoch + 5;
    }

    /**
     * The field at a place and a date.
     *
     * @param place latitude and longitude on WGS84, height in [-10,000, 850,000] m (the model is made for -1 km and above, from
     *     memory). At a geographic pole north is along the longitude that was given, the limit of going there on that meridian
     * @param date the day; its beginning counts
     * @return the field, with what else the model says of it
     * @throws IllegalArgumentException if the model does not hold at the date or the height
     */
    public MagneticReference at(GeographicPlace place, LocalDate date) {
        return at(place, DecimalYear.of(date));
    }

    /**
     * The field at a place and a date.
     *
     * @param place as above
     * @param decimalYear the year, with the share of it that went by: 2026.5 is the second of July
     * @return the field, with what else the model says of it
     * @throws IllegalArgumentException if the model does not hold at the date or the height
     */
    public MagneticReference at(GeographicPlace place, double decimalYear) {
        if (!(decimalYear >= validFrom() && decimalYear <= validUntil())) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the date is %s; expected within [%.1f, %.1f], for which %s holds. Ask another model, or give the declination",
                    year(decimalYear),
                    validFrom(),
                    validUntil(),
                    name));
        }
        Require.inRange("height", place.height(), LOWEST, HIGHEST, "m");
        double[] field = geodetic(place, decimalYear - epoch);
        MagneticField then = new MagneticField(field[0], field[1], field[2]);
        return new MagneticReference(
                name, place, decimalYear, then, new MagneticChange(then, field[3], field[4], field[5]));
    }

    /**
     * A reference of magnetic azimuths, with the declination of this model and the convergence of a grid.
     *
     * @param place where the hole is; latitude and longitude serve the model and the grid
     * @param date when the survey was made
     * @param grid the grid of the coordinates
     * @return the reference, which says where both angles come from
     * @throws IllegalArgumentException if the model does not hold at the date or the height, or the grid does not reach the place
     */
    public NorthReference northReference(GeographicPlace place, LocalDate date, TransverseMercator grid) {
        return at(place, date).northReference(grid);
    }

    private static String year(double decimalYear) {
        return String.format(Locale.ROOT, "%.3f", decimalYear);
    }

    /** The field and its change in the frame of the ellipsoid's vertical. */
    private double[] geodetic(GeographicPlace place, double years) {
        double sine = Degrees.sin(place.latitude());
        double cosine = Degrees.cos(place.latitude());
        Ellipsoid earth = Ellipsoid.WGS84;
        double curvature = earth.equatorialRadius() / Math.sqrt(1 - earth.eccentricitySquared() * sine * sine);
        double outward = (curvature + place.height()) * cosine;
        double upward = (curvature * (1 - earth.eccentricitySquared()) + place.height()) * sine;
        double radius = Math.sqrt(outward * outward + upward * upward);
        double geocentricSine = upward / radius;
        double geocentricCosine = outward / radius;
        double[] field = harmonics.at(
                new SphericalHarmonics.GeocentricPlace(
                        radius,
                        geocentricSine,
                        geocentricCosine,
                        Degrees.sin(place.longitude()),
                        Degrees.cos(place.longitude())),
                years);
        // the two verticals differ by psi, geocentric less geodetic latitude
        double sinePsi = geocentricSine * cosine - geocentricCosine * sine;
        double cosinePsi = geocentricCosine * cosine + geocentricSine * sine;
        turn(field, 0, sinePsi, cosinePsi);
        turn(field, 3, sinePsi, cosinePsi);
        return field;
    }

    private static void turn(double[] field, int at, double sine, double cosine) {
        double north = field[at] * cosine - field[at + 2] * sine;
        field[at + 2] = field[at] * sine + field[at + 2] * cosine;
        field[at] = north;
    }

    /** The name and the years: {@code WMM2025, valid from 2025.0 to 2030.0}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s, valid from %.1f to %.1f", name, validFrom(), validUntil());
    }
}
