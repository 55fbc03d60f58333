package io.github.kernlot.orientation.internal;

/** Poles spread evenly over the lower hemisphere, on a spiral that gives each the same area (from memory). */
public final class EvenPoles {

    private static final double GOLDEN = 180 * (3 - Math.sqrt(5));

    private EvenPoles() {}

    /**
     * One of them.
     *
     * @param index which, in [0, count)
     * @param count how many there are
     * @return a unit vector that points downwards
     */
    public static Vector pole(int index, int count) {
        double down = (index + 0.5) / count;
        double across = Math.sqrt(1 - down * down);
        return new Vector(across * Degrees.cos(GOLDEN * index), across * Degrees.sin(GOLDEN * index), down);
    }
}
