package io.github.kernlot.orientation.internal;

/**
 * Sine, cosine and arctangent of degrees, made of sums, products, quotients and rounding to whole numbers alone: the same bits on
 * every JVM. There is no branch, so that a loop over these functions can be made of vector instructions; {@link Degrees} and
 * {@link DegreeColumns} both stand on them. The polynomials are minimax (Remez's algorithm with 60 digits, mpmath 1.3.0), docs/mathematics.md,
 * section 8.
 */
public final class DegreeKernel {

    private static final double PER_QUARTER = 1.0 / 90;
    private static final double RADIANS = Math.PI / 180;
    private static final double DEGREES = 180 / Math.PI;

    /** {@link #octant} changes where the tangent is sqrt(2) - 1 and sqrt(2) + 1. */
    private static final double OCTANT_SCALE = 2.414213562373095;

    private static final double OCTANT_SHIFT = -0.20710678118654757;

    private DegreeKernel() {}

    /**
     * The whole number of quarter turns nearest to an angle.
     *
     * @param degrees the angle, below 1e9 in size
     */
    public static double quarters(double degrees) {
        return Math.rint(degrees * PER_QUARTER);
    }

    /** What an angle has beyond its quarters, exactly: at most 45 degrees in size, and a rounding. */
    public static double rest(double degrees, double quarters) {
        return degrees - 90 * quarters;
    }

    /** Quarters without whole turns: -2, -1, 0, 1 or 2. */
    public static double partOfTurn(double quarters) {
        return quarters - 4 * Math.rint(quarters * 0.25);
    }

    /** Sine of a rest. It is 0.5 at 30 degrees. */
    public static double sinOfRest(double rest) {
        double z = rest * rest;
        double z2 = z * z;
        double low = -8.860961557012961e-07 + z * 1.3496016231614387e-11;
        double middle = -9.788384855855409e-17 + z * 4.141266575303347e-22;
        double high = -1.1467578914752626e-27 + z * 2.2166642025471045e-33;
        return rest * (RADIANS + z * ((low + z2 * middle) + z2 * z2 * high));
    }

    /** Cosine of a rest. It is the root of 0.75 at 30 degrees, and the sine at 45. */
    public static double cosOfRest(double rest) {
        double z = rest * rest;
        double z2 = z * z;
        double low = 3.8663238515629755e-09 + z * -3.925831985735494e-14;
        double high = (2.1354943020887797e-19 + z * -7.227873561950352e-25)
                + z2 * (1.6678884671724942e-30 + z * -2.7631503744935947e-36);
        // one ulp above the minimax coefficient, which makes the cosine of 45 degrees the sine
        return 1 + z * (-0.00015230870989335428 + z * (low + z2 * high));
    }

    /** Sine of an angle from the sine and the cosine of its rest: one of the two, with a sign. */
    public static double sin(double sinOfRest, double cosOfRest, double partOfTurn) {
        double size = Math.abs(partOfTurn);
        return sinOfRest * (1 - size) + cosOfRest * (partOfTurn * (2 - size));
    }

    /** Cosine of an angle from the sine and the cosine of its rest: one of the two, with a sign. */
    public static double cos(double sinOfRest, double cosOfRest, double partOfTurn) {
        double size = Math.abs(partOfTurn);
        return cosOfRest * (1 - size) - sinOfRest * (partOfTurn * (2 - size));
    }

    /**
     * The nearest of the directions 0, 45 and 90 degrees to that of a vector, in eighths of a turn.
     *
     * @param up the component at 90 degrees, not negative
     * @param along the component at 0 degrees, not negative
     * @return 0, 1 or 2; NaN for the null vector
     */
    public static double octant(double up, double along) {
        return Math.rint(up / (along + up) * OCTANT_SCALE + OCTANT_SHIFT);
    }

    /** Tangent of the angle from the direction of {@link #octant} to the vector, at most 0.4143 in size. */
    public static double slope(double up, double along, double octant) {
        // (2, 0), (1, 1) or (0, 2) is a vector of that direction, and twice a number is exact
        double rest = 2 - octant;
        return (up * rest - along * octant) / (along * rest + up * octant);
    }

    /** Arctangent of a slope, in degrees. */
    public static double atan(double slope) {
        double z = slope * slope;
        double z2 = z * z;
        double z4 = z2 * z2;
        double a = (-19.09859317102736 + z * 11.45915590258967) + z2 * (-8.18511135583234 + z * 6.366197535154531);
        double b = (-5.20870071511493 + z * 4.407225551669933) + z2 * (-3.8176743473133055 + z * 3.350574458748963);
        double c = (-2.8872337831078836 + z * 2.1807749735877904) + z2 * -1.0258553308772418;
        return slope * (DEGREES + z * ((a + z4 * b) + z4 * z4 * c));
    }

    /**
     * The angle of a vector, whatever the sign of its component at 90 degrees, in [0, 180].
     *
     * @param sideAlong 1, or -1 where the component at 0 degrees is negative
     * @param octant that of the components without their signs
     * @param beyond the arctangent of their slope
     */
    public static double halfTurn(double sideAlong, double octant, double beyond) {
        return (90 * (1 - sideAlong) + sideAlong * (45 * octant)) + sideAlong * beyond;
    }

    /**
     * The angle of a vector in [0, 360], where 360 may stand for an angle a rounding below it.
     *
     * @param sideUp 1, or -1 where the component at 90 degrees is negative
     * @param sideAlong 1, or -1 where the component at 0 degrees is negative
     * @param octant that of the components without their signs
     * @param beyond the arctangent of their slope
     */
    public static double azimuth(double sideUp, double sideAlong, double octant, double beyond) {
        double whole = 90 * (1 - sideAlong) + sideAlong * (45 * octant);
        return (180 * (1 - sideUp) + sideUp * whole) + sideUp * sideAlong * beyond;
    }
}
