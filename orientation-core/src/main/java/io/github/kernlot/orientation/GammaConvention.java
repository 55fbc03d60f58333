package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;

/**
 * How gamma, of a line in a measured plane, was read on the core. The other angle that the trade calls gamma, between a line and the
 * core axis, belongs to {@link CoreLine}.
 *
 * <p>Opposite ends of an axis differ by half a turn, which tells the two ends of a line with an arrow apart and changes nothing of a
 * line without one.
 *
 * @param sense the sense of rotation in which gamma was counted
 * @param view where the reader looked while counting, whatever side of the plane the piece of core showed
 * @param zero the end of the ellipse's axis from which gamma was counted
 */
public record GammaConvention(BetaConvention.Sense sense, BetaConvention.View view, Zero zero) {

    /** The house convention: clockwise, looking down-hole, from the down-hole end of the long axis. */
    public static final GammaConvention HOUSE = new GammaConvention(
            BetaConvention.Sense.CLOCKWISE, BetaConvention.View.DOWN_HOLE, Zero.LONG_AXIS_DOWN_HOLE);

    /** An end of an axis of the ellipse in which the plane cuts the core. */
    public enum Zero {
        /** The long axis' end farther from the collar. */
        LONG_AXIS_DOWN_HOLE(0, "down-hole end of the long"),
        /** The short axis' end a quarter turn clockwise, looking down-hole, of the long axis' down-hole end. */
        SHORT_AXIS_CLOCKWISE(90, "clockwise end of the short"),
        /** The long axis' end nearer to the collar. */
        LONG_AXIS_UP_HOLE(180, "up-hole end of the long"),
        /** The short axis' end a quarter turn anticlockwise, looking down-hole, of the long axis' down-hole end. */
        SHORT_AXIS_ANTICLOCKWISE(270, "anticlockwise end of the short");

        private final double house;
        private final String words;

        Zero(double house, String words) {
            this.house = house;
            this.words = words;
        }

        private Zero opposite() {
            return switch (this) {
                case LONG_AXIS_DOWN_HOLE -> LONG_AXIS_UP_HOLE;
                case SHORT_AXIS_CLOCKWISE -> SHORT_AXIS_ANTICLOCKWISE;
                case LONG_AXIS_UP_HOLE -> LONG_AXIS_DOWN_HOLE;
                case SHORT_AXIS_ANTICLOCKWISE -> SHORT_AXIS_CLOCKWISE;
            };
        }
    }

    /**
     * A gamma read by this convention in the house convention: {@code zero + s gamma}, with s = -1 where one of sense and view
     * differs from the house's, and 1 where none or both do.
     *
     * @param gamma as read, degrees in [-180, 360], so that readings with a sign are taken too
     * @return degrees in [0, 360)
     * @throws IllegalArgumentException if gamma lies outside its range
     */
    public double toHouse(double gamma) {
        return Degrees.wrap360(zero.house + counted(Require.inRange("gamma", gamma, -180, 360, "degrees")));
    }

    /**
     * A gamma of the house convention as this convention reads it.
     *
     * @param gamma in the house convention, degrees in [0, 360]
     * @return degrees in [0, 360)
     * @throws IllegalArgumentException if gamma lies outside its range
     */
    public double fromHouse(double gamma) {
        return Degrees.wrap360(counted(Require.azimuth("gamma", gamma) - zero.house));
    }

    /**
     * The same convention read along arrows that point up-hole: who follows them looks the other way, and takes an end of an axis for
     * the opposite one. Twice gives the convention itself.
     *
     * @return the convention
     */
    public GammaConvention withArrowUpHole() {
        return new GammaConvention(
                sense,
                view == BetaConvention.View.DOWN_HOLE ? BetaConvention.View.UP_HOLE : BetaConvention.View.DOWN_HOLE,
                zero.opposite());
    }

    private double counted(double gamma) {
        return (sense == BetaConvention.Sense.CLOCKWISE) == (view == BetaConvention.View.DOWN_HOLE) ? gamma : -gamma;
    }

    /** In words: {@code gamma clockwise looking down-hole from the down-hole end of the long axis}. */
    @Override
    public String toString() {
        return "gamma " + BetaConvention.words(sense, view) + " from the " + zero.words + " axis";
    }
}
