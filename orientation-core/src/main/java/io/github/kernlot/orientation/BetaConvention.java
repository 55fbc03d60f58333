package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * How beta was read on the core: eight ways, which are four maps. Whether the line marks the low or the high side is not part of
 * it: that is the line angle, and makes sixteen ways of the eight without a fifth map.
 *
 * <p>Who reads delta by the same habit converts it alike, without the half turn of the apex; gamma has a {@link GammaConvention}.
 *
 * @param sense the sense of rotation in which beta was counted
 * @param view where the reader looked while counting
 * @param apex the end of the ellipse's long axis to which beta was counted
 */
public record BetaConvention(Sense sense, View view, Apex apex) {

    /** The house convention: clockwise, looking down-hole, to the down-hole end. */
    public static final BetaConvention HOUSE = new BetaConvention(Sense.CLOCKWISE, View.DOWN_HOLE, Apex.DOWN_HOLE);

    /** The sense of rotation in which beta is counted. */
    public enum Sense {
        /** As the hands of a clock turn. */
        CLOCKWISE,
        /** Against the hands of a clock. */
        ANTICLOCKWISE
    }

    /** Where the reader looks while counting. */
    public enum View {
        /** Away from the collar. */
        DOWN_HOLE,
        /** Towards the collar. */
        UP_HOLE
    }

    /** An end of the ellipse's long axis. */
    public enum Apex {
        /** The end farther from the collar. */
        DOWN_HOLE,
        /** The end nearer to the collar. */
        UP_HOLE
    }

    /**
     * A beta read by this convention in the house convention: {@code s beta + 180 [up-hole apex]}, with s = -1 where
     * one of sense and view differs from the house's, and 1 where none or both do.
     *
     * @param beta as read, degrees in [0, 360]
     * @return degrees in [0, 360)
     * @throws IllegalArgumentException if beta lies outside its range
     */
    public double toHouse(double beta) {
        return converted(beta);
    }

    /**
     * A beta of the house convention as this convention reads it.
     *
     * @param beta in the house convention, degrees in [0, 360]
     * @return degrees in [0, 360)
     * @throws IllegalArgumentException if beta lies outside its range
     */
    public double fromHouse(double beta) {
        return converted(beta);
    }

    /**
     * The same convention read along arrows that point up-hole: who follows them looks the other way, and takes the end of the
     * ellipse that they point to for the down-hole one. Twice gives the convention itself.
     *
     * @return the convention
     */
    public BetaConvention withArrowUpHole() {
        return new BetaConvention(
                sense,
                view == View.DOWN_HOLE ? View.UP_HOLE : View.DOWN_HOLE,
                apex == Apex.DOWN_HOLE ? Apex.UP_HOLE : Apex.DOWN_HOLE);
    }

    // each of the four maps b, -b, b + 180, 180 - b is its own inverse
    private double converted(double beta) {
        double checked = Require.azimuth("beta", beta);
        boolean mirrored = (sense == Sense.CLOCKWISE) != (view == View.DOWN_HOLE);
        return Degrees.wrap360((mirrored ? -checked : checked) + (apex == Apex.UP_HOLE ? 180 : 0));
    }

    /** In words: {@code beta clockwise looking down-hole to the down-hole end}. */
    @Override
    public String toString() {
        return "beta " + words(sense, view) + " to the " + (apex == Apex.DOWN_HOLE ? "down-hole" : "up-hole") + " end";
    }

    static String words(Sense sense, View view) {
        return sense.name().toLowerCase(Locale.ROOT) + " looking " + (view == View.DOWN_HOLE ? "down-hole" : "up-hole");
    }
}
