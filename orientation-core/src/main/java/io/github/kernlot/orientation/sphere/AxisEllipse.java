package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.math.BigDecimal;
import java.util.Locale;

/**
 * An ellipse of directions about a mean one that holds the true one with a probability. Its radii are angles from the centre.
 *
 * @param centre the mean, as a line
 * @param longAxis the axis across the centre along which the ellipse reaches farthest
 * @param longRadius degrees in [0, 90]; 90 where the sample leaves every angle open along that axis
 * @param shortRadius across both, degrees in [0, the long radius]
 * @param probability that the ellipse holds the true direction, in (0, 1)
 */
public record AxisEllipse(
        LineOrientation centre, LineOrientation longAxis, double longRadius, double shortRadius, double probability) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the radii or the probability lie outside their ranges, or the axes are not at right angles
     *     within 1e-6 degrees
     */
    public AxisEllipse {
        Require.inRange("long radius", longRadius, 0, 90, "degrees");
        Require.inRange("short radius", shortRadius, 0, longRadius, "degrees");
        Require.share("probability", probability);
        Require.inRange("angle of the axes", centre.angleTo(longAxis), 90 - 1e-6, 90, "degrees");
    }

    /**
     * Whether a line lies within the ellipse, an open radius holding all.
     *
     * @param line the line
     * @return true if it does
     */
    public boolean holds(LineOrientation line) {
        Vector middle = Unit.of(centre);
        Vector along = Unit.of(longAxis);
        Vector vector = Unit.of(line);
        double x = share(vector.dot(along), longRadius);
        double y = share(vector.dot(middle.cross(along)), shortRadius);
        return x * x + y * y <= 1;
    }

    private static double share(double component, double radius) {
        if (radius == 90) {
            return 0;
        }
        double reach = Degrees.sin(radius);
        return Math.abs(component) <= 1e-15 ? 0 : component / reach;
    }

    /**
     * The centre and both radii: {@code 71.0/024.2 (plunge/trend), 95 % within 8.5 along 06.9/273.7 (plunge/trend) and 6.6 across}.
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s, %s %% within %s along %s and %s across",
                centre,
                BigDecimal.valueOf(probability)
                        .movePointRight(2)
                        .stripTrailingZeros()
                        .toPlainString(),
                Degrees.text(longRadius),
                longAxis,
                Degrees.text(shortRadius));
    }
}
