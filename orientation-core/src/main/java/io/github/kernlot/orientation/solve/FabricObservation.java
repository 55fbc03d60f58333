package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.line.Fabric;

/**
 * A structure of a known fabric as a log has it, before anybody knows how the log is to be read.
 *
 * @param hole the direction of the hole, with the dip as it is given
 * @param lineAngle where the line lies by its marks, clockwise looking down-hole from the side that the marks stand for, degrees in [0,
 *     360); 0 where the line was drawn through the marks
 * @param asRead alpha and beta as they stand in the log; beta is not in the house convention yet
 * @param fabric the set that the structure belongs to
 * @param alphaSigma standard deviation of reading alpha, degrees, 0 or more
 * @param betaSigma standard deviation of beta with that of the line, degrees, 0 or more
 */
public record FabricObservation(
        HoleDirection hole, double lineAngle, CorePlane asRead, Fabric fabric, double alphaSigma, double betaSigma) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the hole is vertical, the line angle lies outside [0, 360], a sigma is negative or not
     *     finite, or the plane has no beta
     */
    public FabricObservation {
        lineAngle = Require.azimuth("line angle", lineAngle);
        alphaSigma = Require.notNegative("alpha sigma", alphaSigma, "degrees");
        betaSigma = Require.notNegative("beta sigma", betaSigma, "degrees");
        if (hole.isVertical()) {
            throw new IllegalArgumentException(
                    "the hole is vertical: it has no low side, and shows nothing of the side or of the sign of the dip");
        }
        if (!asRead.hasBeta()) {
            throw new IllegalArgumentException("alpha is 90 degrees: a plane without a beta shows no convention");
        }
    }

    /** What the fabric's mean shows on the core, from the low side. */
    CorePlane shown(ReadingConvention convention) {
        return CoreFrame.at(convention.hole(hole), 0).toCore(fabric.mean());
    }

    /** The reading in its hole: {@code alpha 42.0, beta 265.0 in -60.0/090.0 (dip/azimuth), line 000.0}. */
    @Override
    public String toString() {
        return asRead + " in " + hole + ", line " + Degrees.azimuthText(lineAngle);
    }
}
