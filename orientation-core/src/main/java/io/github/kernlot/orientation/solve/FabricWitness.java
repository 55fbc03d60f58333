package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.FabricReading;

/**
 * What one reading of a known fabric says of the line, seen from the line that all readings together make most probable.
 *
 * @param reading the reading
 * @param predictedAlpha alpha of the fabric's mean in the hole at that depth, degrees in [0, 90]
 * @param sigma standard deviation of the line by this reading alone, {@code hypot(fabric sigma / cos(alpha), beta sigma)}, degrees;
 *     infinite where the fabric lies across the core
 * @param residual where this reading alone would put the line less where all put it, clockwise looking down-hole, degrees in (-180,
 *     180]
 * @param memberProbability how probable it is that the structure is of the fabric and its beta was read to the right end
 * @param turnedProbability how probable it is that it is of the fabric and beta was read to the other end, near alpha 0
 * @param strayProbability how probable it is that it is not of the fabric
 */
public record FabricWitness(
        FabricReading reading,
        double predictedAlpha,
        double sigma,
        double residual,
        double memberProbability,
        double turnedProbability,
        double strayProbability) {

    /**
     * The check on the fabric, on the survey and on alpha, since no line changes it: alpha as it was read less alpha of the fabric.
     *
     * @return degrees in [-90, 90]
     */
    public double alphaMisfit() {
        return reading.plane().alpha() - predictedAlpha;
    }

    /**
     * The misfit of alpha in sigmas: that of the fabric and that of reading alpha.
     *
     * @return a number; above 3 or so the structure is hardly of the fabric
     */
    public double alphaMisfitSigmas() {
        return Math.abs(alphaMisfit()) / Math.hypot(reading.fabric().sigma(), reading.alphaSigma());
    }

    /** The reading with what it says: {@code alpha 42.0, beta 265.0: alpha off by 0.0, line off by 0.0 +- 6.7}. */
    @Override
    public String toString() {
        return reading.plane() + ": alpha off by " + Degrees.text(alphaMisfit()) + ", line off by "
                + Degrees.text(residual) + " +- " + Degrees.text(sigma);
    }
}
