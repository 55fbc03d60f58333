package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Eigen;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.List;

/**
 * A set of structures whose orientation in the ground is stable enough to say how core was turned.
 *
 * @param mean the mean orientation of the set, azimuths from the north of the hole's path
 * @param sigma how far its poles scatter about the mean in any one direction, degrees, above 0
 * @param stray how probable it is that a structure logged as one of the set is not, in [0, 1)
 */
public record Fabric(PlaneOrientation mean, double sigma, double stray) {

    /** The prior of a stray that is assumed where nothing better is known. */
    public static final double ASSUMED_STRAY = 0.1;

    private static final int FEWEST = 3;

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if sigma is not a finite number above 0 or stray lies outside [0, 1)
     */
    public Fabric {
        Require.positive("fabric sigma", sigma, "degrees");
        if (!(stray >= 0 && stray < 1)) {
            throw new IllegalArgumentException("prior of a stray is " + stray + "; expected within [0, 1)");
        }
    }

    /**
     * The fabric of structures that are oriented already: the axis of greatest concentration of their poles, and the scatter about
     * it. With the eigenvalues 1 >= e1 >= e2 >= e3 of the mean of the poles' dyads (orientation tensor; Scheidegger 1965, from
     * memory), the scatter in one direction is sqrt((1 - e1) / 2) radians.
     *
     * @param planes the orientations of structures of one set, at least 3, from lines that are anchored well
     * @param stray how probable it is that a structure logged as one of the set is not, in [0, 1)
     * @return the fabric
     * @throws IllegalArgumentException if there are fewer than 3 planes, or stray lies outside its range
     */
    public static Fabric of(List<PlaneOrientation> planes, double stray) {
        if (planes.size() < FEWEST) {
            throw new IllegalArgumentException(
                    planes.size() + " planes; expected at least " + FEWEST + " to tell a fabric from them");
        }
        Eigen axes = Eigen.of(planes.stream().map(plane -> vector(plane.pole())).toList());
        Vector mean = axes.vectors().get(0);
        double scatter = Math.sqrt(Math.max(0, 1 - axes.values().get(0)) / 2);
        return new Fabric(
                PlaneOrientation.ofNormal(mean.north(), mean.east(), mean.down()),
                Math.max(Math.toDegrees(scatter), LEAST_SCATTER),
                stray);
    }

    /** Planes that agree to the last digit do not make a fabric that sharp. */
    private static final double LEAST_SCATTER = 0.5;

    private static Vector vector(LineOrientation pole) {
        return Vector.ofInclination(90 - pole.plunge(), pole.trend());
    }

    /** The mean plane, the scatter and the strays: {@code 62.4/118.9 (dip/dip direction), scatter 5.0, stray 10 %}. */
    @Override
    public String toString() {
        return mean + ", scatter " + Degrees.text(sigma) + ", stray " + Math.round(100 * stray) + " %";
    }
}
