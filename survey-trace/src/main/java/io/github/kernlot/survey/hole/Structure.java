package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A structure as it was measured on the core.
 *
 * @param depth metres along the hole, 0 or more
 * @param kind what it is, in the log's own word: bedding, joint, vein
 * @param alpha acute angle between the structure and the core axis, degrees in [0, 90]
 * @param beta as it was read, in the convention of the log, degrees in [0, 360); empty where it was not measured
 * @param gamma of a line in the structure, in the plane, clockwise looking down-hole from the down-hole end of the ellipse's long
 *     axis, degrees in [0, 360); empty where there is no line
 * @param extra further columns of the log, which are carried along as they are, in their order
 */
public record Structure(
        double depth, String kind, double alpha, OptionalDouble beta, OptionalDouble gamma, Map<String, String> extra) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the depth is negative, alpha lies outside [0, 90], beta or gamma outside [0, 360], or
     *     gamma is given at alpha 90, where it cannot be read; 360 becomes 0
     */
    public Structure {
        depth = Require.notNegative("depth", depth, "m");
        alpha = Require.inRange("alpha", alpha, 0, 90, "degrees");
        beta = azimuth("beta", beta);
        gamma = azimuth("gamma", gamma);
        extra = Collections.unmodifiableMap(new LinkedHashMap<>(extra));
        if (gamma.isPresent() && alpha == 90) {
            throw new IllegalArgumentException(
                    "gamma is given at alpha 90 degrees; expected none, because the ellipse has no long axis there");
        }
    }

    private static OptionalDouble azimuth(String name, OptionalDouble angle) {
        return angle.isPresent() ? OptionalDouble.of(Require.azimuth(name, angle.getAsDouble())) : angle;
    }

    /**
     * A plane.
     *
     * @param depth metres along the hole, 0 or more
     * @param kind what it is
     * @param alpha degrees in [0, 90]
     * @param beta as it was read, degrees in [0, 360]
     * @return the structure
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static Structure of(double depth, String kind, double alpha, double beta) {
        return new Structure(depth, kind, alpha, OptionalDouble.of(beta), OptionalDouble.empty(), Map.of());
    }

    /** As it is written in a log: {@code bedding at 91.40 m, alpha 41.0, beta 213.0}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s at %.2f m, alpha %s", kind, depth, Degrees.text(alpha))
                + (beta.isPresent() ? ", beta " + Degrees.azimuthText(beta.getAsDouble()) : ", no beta")
                + (gamma.isPresent() ? ", gamma " + Degrees.azimuthText(gamma.getAsDouble()) : "");
    }
}
