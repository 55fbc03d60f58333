package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import java.util.List;

/**
 * The trade's way by hand: a mark counts when neighbouring marks fall on the same straight line within a tolerance, once the turn
 * of a straight scribe between them is taken off (common practice; no published tolerance is known).
 *
 * <ul>
 *   <li>A broken join begins a new line; marks of different lines are never compared.
 *   <li>A mark agrees when at least {@code neighbours} of its neighbours, looking at so many on either side, are within the
 *       tolerance.
 *   <li>Marks that agree form a run as long as each is within the tolerance of the one before; the line of a run is their
 *       weighted circular mean. Beyond the first and the last run of a line the nearest holds; between two runs that contradict
 *       each other nobody can say where the core slipped, and there is no line.
 * </ul>
 *
 * @param side the side that the marks stand for
 * @param noise what makes a mark miss
 * @param tolerance the mismatch up to which two marks agree, degrees in (0, 180]
 * @param neighbours how many neighbours must agree, 1 or more
 */
public record HandMethod(WallReference side, MarkNoise noise, double tolerance, int neighbours) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the tolerance lies outside (0, 180] or neighbours is below 1
     */
    public HandMethod {
        if (!(tolerance > 0 && tolerance <= 180)) {
            throw new IllegalArgumentException("tolerance is " + tolerance + " degrees; expected within (0, 180]");
        }
        if (neighbours < 1) {
            throw new IllegalArgumentException("neighbours is " + neighbours + "; expected 1 or more");
        }
    }

    /**
     * Marks of the low side with assumed noise, a tolerance of 10 degrees and one neighbour.
     *
     * @return the method to begin with
     */
    public static HandMethod assumed() {
        return new HandMethod(WallReference.lowSide(), MarkNoise.assumed(), 10, 1);
    }

    /**
     * Reconciles the marks of one hole.
     *
     * @param path the path of the hole
     * @param marks the marks in any order
     * @param joins the joins in any order; only broken ones matter here
     * @return the line
     * @throws IllegalArgumentException if the path does not reach a mark, or the side does not exist there
     */
    public HandLine reconcile(HolePath path, List<OrientationMark> marks, List<Join> joins) {
        return new HandLine(this, path, marks, joins);
    }
}
