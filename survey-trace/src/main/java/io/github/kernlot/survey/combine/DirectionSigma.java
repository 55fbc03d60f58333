package io.github.kernlot.survey.combine;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * How far one station of a survey misses by chance, apart from what all its stations share.
 *
 * <p>On the tangent plane it misses by {@code dip} along the vertical and by {@code sqrt((azimuth sin I)^2 + dip^2)} across it: no tool
 * knows the azimuth of a vertical hole.
 *
 * @param dip sigma of the dip, degrees, above 0
 * @param azimuth sigma of the azimuth's own, degrees, 0 or more
 */
public record DirectionSigma(double dip, double azimuth) {

    /**
     * Checks the sigmas.
     *
     * @throws IllegalArgumentException if a sigma lies outside its range
     */
    public DirectionSigma {
        dip = Require.positive("sigma of the dip", dip, "degrees");
        azimuth = Require.notNegative("sigma of the azimuth", azimuth, "degrees");
    }

    /**
     * A dip to 0.3 and an azimuth to 1.0 degrees (assumed).
     *
     * @return the sigmas to begin with
     */
    public static DirectionSigma assumed() {
        return new DirectionSigma(0.3, 1.0);
    }

    /** Both: {@code dip 0.30, azimuth 1.00 degrees}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "dip %.2f, azimuth %.2f degrees", dip, azimuth);
    }
}
