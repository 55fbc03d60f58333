package io.github.kernlot.survey.north;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.survey.NorthReference;
import java.util.Locale;

/**
 * What a magnetic model says of a place at a date. The standard deviations are those of the model's published error model: they
 * count in the crust and the sky, which the model does not know.
 *
 * @param model the name of the model
 * @param place where
 * @param decimalYear when
 * @param field the field
 * @param yearlyChange how it changes
 */
public record MagneticReference(
        String model, GeographicPlace place, double decimalYear, MagneticField field, MagneticChange yearlyChange) {

    /** Sigma of the field towards north, nT. */
    private static final double NORTH_SIGMA = 137;

    private static final double EAST_SIGMA = 89;
    private static final double DOWN_SIGMA = 141;
    private static final double HORIZONTAL_SIGMA = 133;
    private static final double TOTAL_SIGMA = 138;
    private static final double DIP_SIGMA = 0.20;
    /** The sigma of declination is hypot of these, the second over the horizontal field in nT. */
    private static final double DECLINATION_SIGMA = 0.26;

    private static final double DECLINATION_SIGMA_TIMES_HORIZONTAL = 5_417;

    /**
     * Checks the year.
     *
     * @throws IllegalArgumentException if it is not finite
     */
    public MagneticReference {
        decimalYear = Require.finite("decimal year", decimalYear, "");
    }

    /**
     * Where magnetic north lies from true north.
     *
     * @return degrees in (-180, 180], east positive
     */
    public double declination() {
        return field.declination();
    }

    /**
     * The standard deviation of the declination, sqrt(0.26^2 + (5417 nT / H)^2).
     *
     * @return degrees; infinite where there is no horizontal field
     */
    public double declinationSigma() {
        return Math.hypot(DECLINATION_SIGMA, DECLINATION_SIGMA_TIMES_HORIZONTAL / field.horizontal());
    }

    /**
     * The standard deviation of the dip.
     *
     * @return degrees
     */
    public double dipSigma() {
        return DIP_SIGMA;
    }

    /**
     * The standard deviation of the total intensity.
     *
     * @return nanotesla
     */
    public double totalSigma() {
        return TOTAL_SIGMA;
    }

    /**
     * The standard deviation of the horizontal part.
     *
     * @return nanotesla
     */
    public double horizontalSigma() {
        return HORIZONTAL_SIGMA;
    }

    /**
     * The standard deviation of the component towards north.
     *
     * @return nanotesla
     */
    public double northSigma() {
        return NORTH_SIGMA;
    }

    /**
     * The standard deviation of the component towards the east.
     *
     * @return nanotesla
     */
    public double eastSigma() {
        return EAST_SIGMA;
    }

    /**
     * The standard deviation of the component downwards.
     *
     * @return nanotesla
     */
    public double downSigma() {
        return DOWN_SIGMA;
    }

    /**
     * The reference of magnetic azimuths that were measured here and then, on a grid.
     *
     * @param grid the grid of the coordinates
     * @return the reference with declination and convergence, and where both come from
     * @throws IllegalArgumentException if the grid does not reach the place
     */
    public NorthReference northReference(TransverseMercator grid) {
        return NorthReference.magnetic(declination(), grid.convergenceAt(place))
                .withDeclinationFrom(source())
                .withConvergenceFrom(grid + " at " + place);
    }

    /** In words for a record of conversions. */
    private String source() {
        String warning =
                switch (field.compass()) {
                    case SOUND -> "";
                    case CAUTION -> ", where a compass may be unreliable";
                    case BLACKOUT -> ", where a compass is not to be relied on";
                };
        return String.format(
                Locale.ROOT, "%s at %s, %.3f, sigma %.2f%s", model, place, decimalYear, declinationSigma(), warning);
    }

    /** The field with the model, the place and the date. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s; declination sigma %.2f (%s, %.3f, %s)",
                field,
                declinationSigma(),
                place,
                decimalYear,
                model);
    }
}
