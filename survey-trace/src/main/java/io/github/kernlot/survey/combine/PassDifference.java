package io.github.kernlot.survey.combine;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.survey.SurveyStation;
import java.util.Locale;

/**
 * A station that both passes of a tool measured.
 *
 * @param in the station of the pass into the hole
 * @param out that of the pass out of it
 */
public record PassDifference(SurveyStation in, SurveyStation out) {

    /**
     * The difference of inclination, out less in.
     *
     * @return degrees in [-180, 180]
     */
    public double inclination() {
        return out.direction().inclination() - in.direction().inclination();
    }

    /**
     * The difference of azimuth, out less in.
     *
     * @return degrees in (-180, 180]
     */
    public double azimuth() {
        return Degrees.wrap180(out.direction().azimuth() - in.direction().azimuth());
    }

    /**
     * How far the hole stands from vertical, down or up, there: the mean of both passes.
     *
     * @return degrees in [0, 90]
     */
    public double fromVertical() {
        double mean = (in.direction().inclination() + out.direction().inclination()) / 2;
        return Math.min(mean, 180 - mean);
    }

    /** All of it: {@code 60.00 m: inclination 0.05, azimuth -0.31 degrees (out less in)}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.2f m: inclination %.2f, azimuth %.2f degrees (out less in)",
                in.depth(),
                inclination(),
                azimuth());
    }
}
