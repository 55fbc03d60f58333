package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * A structure of a known fabric, read from the drawn line: a witness of where that line stands.
 *
 * <p>The fabric shows on the core with an alpha that no line changes, and with a beta that moves against the line. So a reading puts
 * the line at the fabric's beta minus its own, with the sigma {@code hypot(fabric sigma / cos(alpha), beta sigma)}: useless near
 * alpha 90. Near alpha 0 the fabric's two ends cannot be told apart and the opposite angle is nearly as likely. How well the two
 * alphas agree tells a stray from a member of the set.
 *
 * @param depth metres along the hole, 0 or more
 * @param plane as it was read, in the house convention, with a beta
 * @param fabric the set that it belongs to
 * @param alphaSigma standard deviation of reading alpha, degrees, 0 or more
 * @param betaSigma standard deviation of reading beta, degrees, 0 or more
 */
public record FabricReading(double depth, CorePlane plane, Fabric fabric, double alphaSigma, double betaSigma) {

    private static final CoreDiameter ANY = CoreDiameter.ofMillimetres(1);

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the depth or a sigma is negative or not finite, or the plane has no beta
     */
    public FabricReading {
        depth = Require.notNegative("depth", depth, "m");
        alphaSigma = Require.notNegative("alpha sigma", alphaSigma, "degrees");
        betaSigma = Require.notNegative("beta sigma", betaSigma, "degrees");
        if (!plane.hasBeta()) {
            throw new IllegalArgumentException("alpha is 90 degrees: a plane without a beta says nothing of the line");
        }
    }

    /** The reading and its set: {@code alpha 43.0, beta 262.0 at 101.20 m of the set 68.0/074.0 (dip/dip direction), scatter 4.0, ...}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s at %.2f m of the set %s", plane, depth, fabric);
    }

    /** What the reading says of the line: a mark of its own kind, sound, turned by half or a stray. */
    Sighting sighting(HolePath path) {
        CorePlane shown = path.carriedFrameAt(depth).toCore(fabric.mean());
        double acrossAxis = Degrees.cos(shown.alpha());
        double sigma = Math.min(UNIFORM, Math.hypot(fabric.sigma() / Math.max(acrossAxis, TINY), betaSigma));
        double alphas = Math.hypot(fabric.sigma(), alphaSigma);
        double member = (1 - fabric.stray()) * gaussian(plane.alpha() - shown.alpha(), alphas);
        double turned = (1 - fabric.stray()) * gaussian(plane.alpha() + shown.alpha(), alphas);
        // a stray's pole is anywhere on the hemisphere: (pi / 180) cos(alpha) a degree of alpha, and 1/360 a degree of
        // beta
        double stray = fabric.stray() * Math.toRadians(Degrees.cos(plane.alpha()));
        double all = member + turned + stray;
        OrientationMark standIn = OrientationMark.of(depth, 0, ANY)
                .withSigma(sigma)
                .withBlunders(all > 0 ? new MarkBlunders(turned / all, stray / all) : new MarkBlunders(0, 1));
        return new Sighting(standIn, Degrees.wrap360(shown.beta() - plane.beta()), sigma, true);
    }

    private static final double TINY = 1e-9;

    /** As wide as the circle: the reading says nothing. */
    private static final double UNIFORM = 1e4;

    private static double gaussian(double away, double sigma) {
        return Math.exp(-away * away / (2 * sigma * sigma)) / (sigma * Math.sqrt(2 * Math.PI));
    }
}
