package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Degrees;
import java.util.Locale;

/**
 * The ellipse that holds a place with a given confidence, within one plane and whatever lies across it.
 *
 * @param semiMajor half of the long axis, in the unit of the covariance (metres for places)
 * @param semiMinor half of the short axis
 * @param angle where the long axis points, degrees in [0, 180): of a horizontal ellipse the bearing from north; of one in a section how
 *     far down from the azimuth of the section; of one across a hole clockwise from the high side, looking down-hole
 * @param confidence the share of places that it holds, in (0, 1)
 */
public record ErrorEllipse(double semiMajor, double semiMinor, double angle, double confidence) {

    /** Of the covariance [[uu, uv], [uv, vv]], the angle from u towards v. */
    static ErrorEllipse of(double uu, double uv, double vv, double confidence) {
        double radius = Quantiles.radius(confidence, 2);
        double mean = (uu + vv) / 2;
        double half = Math.hypot((uu - vv) / 2, uv);
        double angle = Degrees.wrap360(Degrees.atan2(2 * uv, uu - vv)) / 2;
        return new ErrorEllipse(
                radius * Math.sqrt(mean + half), radius * Math.sqrt(Math.max(0, mean - half)), angle, confidence);
    }

    /** The axes and the angle: {@code 12.30 by 4.50, long axis at 045.0 (95 %)}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.2f by %.2f, long axis at %s (%s %%)",
                semiMajor,
                semiMinor,
                Degrees.azimuthText(angle),
                Quantiles.percent(confidence));
    }
}
