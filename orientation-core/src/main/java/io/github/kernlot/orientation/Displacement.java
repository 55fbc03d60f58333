package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Require;

/**
 * The way from one point to another in the ground.
 *
 * @param north metres towards north
 * @param east metres towards east
 * @param down metres downwards
 */
public record Displacement(double north, double east, double down) {

    /** No way at all. */
    public static final Displacement ZERO = new Displacement(0, 0, 0);

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public Displacement {
        north = Require.finite("north", north, "m");
        east = Require.finite("east", east, "m");
        down = Require.finite("down", down, "m");
    }

    /**
     * This way and then another.
     *
     * @param next the way that follows
     * @return the sum
     */
    public Displacement plus(Displacement next) {
        return new Displacement(north + next.north, east + next.east, down + next.down);
    }

    /**
     * The straight length of the way.
     *
     * @return metres
     */
    public double length() {
        return Math.hypot(Math.hypot(north, east), down);
    }
}
