package io.github.kernlot.orientation.rock;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What a known plane, or a set that scatters about it, will show on the core at one depth of a hole. Where the hole meets the plane is
 * another question.
 *
 * @param depth metres along the hole
 * @param direction the direction of the hole there
 * @param alpha of the mean plane, degrees in [0, 90]
 * @param leastAlpha of a plane whose pole lies within the scatter, degrees in [0, 90]
 * @param greatestAlpha of a plane whose pole lies within the scatter, degrees in [0, 90]
 * @param beta of the mean plane from the low side, clockwise looking down-hole to the down-hole end, degrees in [0, 360); empty where
 *     the hole is vertical, or the plane lies across the core
 * @param betaHalfRange how far beta of a plane within the scatter may lie to either side, degrees; 180 where any beta may show
 * @param foldsOver whether planes within the scatter show their down-hole end on the opposite side as well, as they do where the
 *     scatter reaches past alpha 0
 */
public record ExpectedAngles(
        double depth,
        HoleDirection direction,
        double alpha,
        double leastAlpha,
        double greatestAlpha,
        OptionalDouble beta,
        double betaHalfRange,
        boolean foldsOver) {

    private static final int MOST = 1_000_000;

    /**
     * What a plane shows at one depth.
     *
     * @param path the path of the hole
     * @param depth metres along the hole
     * @param plane the plane, or the mean of a set
     * @param scatter the angle about its pole within which the poles lie, degrees in [0, 90]; 0 for one plane known exactly
     * @return the angles
     * @throws IllegalArgumentException if the scatter lies outside [0, 90] or the path does not reach the depth
     */
    public static ExpectedAngles at(HolePath path, double depth, PlaneOrientation plane, double scatter) {
        double radius = Require.inRange("scatter", scatter, 0, 90, "degrees");
        HoleDirection direction = path.directionAt(depth);
        CorePlane shown = direction.isVertical()
                ? CorePlane.of(Ways.alpha(direction, plane), 0)
                : CoreFrame.at(direction, 0).toCore(plane);
        double alpha = shown.alpha();
        boolean told = !direction.isVertical() && shown.hasBeta();
        boolean folds = radius > alpha;
        return new ExpectedAngles(
                depth,
                direction,
                alpha,
                folds ? 0 : alpha - radius,
                Math.min(90, alpha + radius),
                told ? OptionalDouble.of(shown.beta()) : OptionalDouble.empty(),
                told ? halfRange(90 - alpha, radius) : 180,
                folds);
    }

    /** How far round the axis a circle of poles reaches whose centre lies so far from the axis: sin(x) = sin(r) / sin(h). */
    private static double halfRange(double away, double radius) {
        if (radius >= away) {
            return 180;
        }
        double opposite = Degrees.sin(radius);
        double slant = Degrees.sin(away);
        return Degrees.atan2(opposite, Math.sqrt((slant - opposite) * (slant + opposite)));
    }

    /**
     * What a plane shows along a hole.
     *
     * @param path the path of the hole
     * @param from the first depth, metres along the hole
     * @param to the last depth, metres along the hole, not less than {@code from}; it is listed even where the step misses it
     * @param step metres from row to row, above 0
     * @param plane the plane, or the mean of a set
     * @param scatter the angle about its pole within which the poles lie, degrees in [0, 90]
     * @return a row for each depth
     * @throws IllegalArgumentException if the depths are not in order, the step is not above 0 or would make more than a million rows,
     *     the scatter lies outside [0, 90], or the path does not reach a depth
     */
    public static List<ExpectedAngles> along(
            HolePath path, double from, double to, double step, PlaneOrientation plane, double scatter) {
        Require.notNegative("from", from, "m");
        Require.inRange("to", to, from, Double.MAX_VALUE, "m");
        Require.positive("step", step, "m");
        // a step that ends a rounding error short of the last depth is the last depth
        double rows = Math.ceil((to - from) / step - 1e-6);
        Require.inRange("number of rows", rows, 0, MOST, "");
        List<ExpectedAngles> table = new ArrayList<>();
        for (int i = 0; i < (int) rows; i++) {
            table.add(at(path, from + i * step, plane, scatter));
        }
        table.add(at(path, to, plane, scatter));
        return List.copyOf(table);
    }

    private String betaRange(double middle) {
        if (betaHalfRange == 0) {
            return "";
        }
        return betaHalfRange == 180
                ? " (any)"
                : " (" + Degrees.azimuthText(Degrees.wrap360(middle - betaHalfRange)) + " to "
                        + Degrees.azimuthText(Degrees.wrap360(middle + betaHalfRange)) + ")";
    }

    /** A line of the table: {@code 120.00 m: alpha 41.6 (36.6 to 46.6), beta 051.2 (044.5 to 057.9)}. */
    @Override
    public String toString() {
        String range = leastAlpha == greatestAlpha
                ? ""
                : " (" + Degrees.text(leastAlpha) + " to " + Degrees.text(greatestAlpha) + ")";
        String side = beta.isEmpty()
                ? ", no beta"
                : ", beta " + Degrees.azimuthText(beta.getAsDouble()) + betaRange(beta.getAsDouble())
                        + (foldsOver ? " or opposite" : "");
        return String.format(Locale.ROOT, "%.2f m: alpha ", depth) + Degrees.text(alpha) + range + side;
    }
}
