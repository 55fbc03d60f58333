package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.Displacement;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The way from one place to another, with its uncertainty. No statement about the safety of anything: see the cautions in
 * docs/survey-uncertainty.md.
 *
 * @param way from the one to the other
 * @param covariance of that way, metres squared
 */
public record Separation(Displacement way, Covariance covariance) {

    /**
     * How far the two places are apart.
     *
     * @return metres
     */
    public double distance() {
        return way.length();
    }

    /**
     * The standard deviation of the distance, to first order: along the line that joins the two. It means little where it is not
     * small beside the distance.
     *
     * @return metres; empty where the two places are one, and there is no line
     */
    public OptionalDouble distanceSigma() {
        double distance = distance();
        if (distance == 0) {
            return OptionalDouble.empty();
        }
        double north = way.north() / distance;
        double east = way.east() / distance;
        double down = way.down() / distance;
        double variance = north * north * covariance.northNorth()
                + east * east * covariance.eastEast()
                + down * down * covariance.downDown()
                + 2 * north * east * covariance.northEast()
                + 2 * north * down * covariance.northDown()
                + 2 * east * down * covariance.eastDown();
        return OptionalDouble.of(Math.sqrt(Math.max(0, variance)));
    }

    /** The distance and its sigma: {@code 12.30 m apart, sigma 0.45 m}. */
    @Override
    public String toString() {
        OptionalDouble sigma = distanceSigma();
        String text = String.format(Locale.ROOT, "%.2f m apart", distance());
        return sigma.isPresent() ? text + String.format(Locale.ROOT, ", sigma %.2f m", sigma.getAsDouble()) : text;
    }
}
