package io.github.kernlot.orientation.internal;

/**
 * A vector with three components. In the geographic frame they point north, east and down; the order is right-handed.
 *
 * @param north the first component
 * @param east the second component
 * @param down the third component
 */
public record Vector(double north, double east, double down) {

    /** Straight down. */
    public static final Vector DOWN = new Vector(0, 0, 1);

    /** Makes -0.0 into 0.0, so that equal vectors are equal and a null component has no side. */
    public Vector {
        north = north + 0.0;
        east = east + 0.0;
        down = down + 0.0;
    }

    /**
     * The horizontal unit vector of an azimuth.
     *
     * @param azimuth clockwise from north, degrees
     * @return the unit vector
     */
    public static Vector ofAzimuth(double azimuth) {
        return new Vector(Degrees.cos(azimuth), Degrees.sin(azimuth), 0);
    }

    /**
     * The unit vector of an inclination and an azimuth.
     *
     * @param inclination from vertically down, degrees
     * @param azimuth clockwise from north, degrees
     * @return the unit vector
     */
    public static Vector ofInclination(double inclination, double azimuth) {
        double across = Degrees.sin(inclination);
        return new Vector(across * Degrees.cos(azimuth), across * Degrees.sin(azimuth), Degrees.cos(inclination));
    }

    /** The sum with another vector. */
    public Vector plus(Vector other) {
        return new Vector(north + other.north, east + other.east, down + other.down);
    }

    /** The difference from another vector. */
    public Vector minus(Vector other) {
        return new Vector(north - other.north, east - other.east, down - other.down);
    }

    /** The vector stretched by a factor. */
    public Vector times(double factor) {
        return new Vector(north * factor, east * factor, down * factor);
    }

    /** The vector reversed. */
    public Vector negated() {
        return new Vector(-north, -east, -down);
    }

    /** The scalar product. */
    public double dot(Vector other) {
        return north * other.north + east * other.east + down * other.down;
    }

    /** The vector product. */
    public Vector cross(Vector other) {
        return new Vector(
                east * other.down - down * other.east,
                down * other.north - north * other.down,
                north * other.east - east * other.north);
    }

    /** The length. */
    public double length() {
        return Math.sqrt(dot(this));
    }

    /** The length of the horizontal part. */
    public double horizontal() {
        return Math.sqrt(north * north + east * east);
    }

    /** The vector with length 1; the null vector has none and gives NaN. */
    public Vector unit() {
        return times(1 / length());
    }

    /** The part that is perpendicular to a unit axis. */
    public Vector across(Vector axis) {
        return minus(axis.times(dot(axis)));
    }

    /** The angle to another vector in radians, in [0, pi], with full relative accuracy at both ends. */
    public double angleTo(Vector other) {
        return Math.atan2(cross(other).length(), dot(other));
    }

    /**
     * This vector carried by the smallest rotation that takes one unit vector to another.
     *
     * @param from a unit vector
     * @param to a unit vector, not opposite to {@code from}
     * @return the vector carried along
     */
    public Vector carried(Vector from, Vector to) {
        // two reflections, R v = v - 2 (s . v) / (s . s) s + 2 (from . v) to with s = from + to: a division by 1 + cos
        // D would
        // lose its digits towards the opposite
        Vector sum = from.plus(to);
        return minus(sum.times(2 * sum.dot(this) / sum.dot(sum))).plus(to.times(2 * from.dot(this)));
    }
}
