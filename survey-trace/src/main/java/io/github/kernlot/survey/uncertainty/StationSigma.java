package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Require;
import java.util.OptionalDouble;

/**
 * The sigmas that one station has of its own, in place of those of the survey.
 *
 * @param depth the depth of the station, metres along the hole
 * @param azimuth the sigma of its azimuth, degrees, which stands alone; empty for the survey's
 * @param dip the sigma of its dip, degrees; empty for the survey's
 */
public record StationSigma(double depth, OptionalDouble azimuth, OptionalDouble dip) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative or not finite
     */
    public StationSigma {
        depth = Require.notNegative("depth", depth, "m");
        azimuth = checked("azimuth sigma of a station", azimuth);
        dip = checked("dip sigma of a station", dip);
    }

    private static OptionalDouble checked(String name, OptionalDouble sigma) {
        return sigma.isPresent() ? OptionalDouble.of(Require.notNegative(name, sigma.getAsDouble(), "degrees")) : sigma;
    }
}
