package io.github.kernlot.orientation;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The conversions by their definitions, in 40 digits (big-math 2.3.2). A direction is an array of its components north, east and
 * down, or on core of those along the axis, towards the reference line and a quarter clockwise of it.
 */
public final class Exact {

    private static final MathContext DIGITS = new MathContext(40);
    private static final BigDecimal HALF_TURN = BigDecimal.valueOf(180);
    private static final BigDecimal FULL_TURN = BigDecimal.valueOf(360);
    private static final BigDecimal RADIAN = HALF_TURN.divide(BigDecimalMath.pi(DIGITS), DIGITS);

    private Exact() {}

    public static BigDecimal sin(double degrees) {
        return BigDecimalMath.sin(radians(degrees), DIGITS);
    }

    public static BigDecimal cos(double degrees) {
        return BigDecimalMath.cos(radians(degrees), DIGITS);
    }

    /** Angle of the vector (x, y), in degrees. */
    public static BigDecimal atan2(double y, double x) {
        return BigDecimalMath.atan2(new BigDecimal(y), new BigDecimal(x), DIGITS)
                .multiply(RADIAN, DIGITS);
    }

    private static BigDecimal radians(double degrees) {
        return new BigDecimal(degrees).remainder(FULL_TURN).divide(RADIAN, DIGITS);
    }

    /** t = (sin I cos A, sin I sin A, cos I). */
    static BigDecimal[] axis(HoleDirection hole) {
        BigDecimal across = sin(hole.inclination());
        return of(times(across, cos(hole.azimuth())), times(across, sin(hole.azimuth())), cos(hole.inclination()));
    }

    /** u(x) = -cos x h - sin x r, with h = (cos I cos A, cos I sin A, -sin I) and r = (-sin A, cos A, 0). */
    static BigDecimal[] wall(HoleDirection hole, double clockwise) {
        BigDecimal down = cos(hole.inclination());
        BigDecimal[] h = of(
                times(down, cos(hole.azimuth())),
                times(down, sin(hole.azimuth())),
                sin(hole.inclination()).negate());
        BigDecimal[] r = of(sin(hole.azimuth()).negate(), cos(hole.azimuth()), BigDecimal.ZERO);
        return minus(scaled(h, cos(clockwise).negate()), scaled(r, sin(clockwise)));
    }

    /** n = sin(alpha) t - cos(alpha) u(beta) on core. */
    static BigDecimal[] normal(CorePlane plane) {
        BigDecimal across = cos(plane.alpha()).negate();
        return of(sin(plane.alpha()), times(across, cos(plane.beta())), times(across, sin(plane.beta())));
    }

    static BigDecimal[] direction(CoreLine line) {
        BigDecimal across = sin(line.axisAngle());
        return of(cos(line.axisAngle()), times(across, cos(line.delta())), times(across, sin(line.delta())));
    }

    /** The unit normal that points downwards: opposite to where the upward normal leans. */
    static BigDecimal[] normal(PlaneOrientation plane) {
        BigDecimal across = sin(plane.dip()).negate();
        return of(times(across, cos(plane.dipDirection())), times(across, sin(plane.dipDirection())), cos(plane.dip()));
    }

    static BigDecimal[] direction(LineOrientation line) {
        BigDecimal across = cos(line.plunge());
        return of(times(across, cos(line.trend())), times(across, sin(line.trend())), sin(line.plunge()));
    }

    /** What stands so on core whose line lies so far from the low side, in the ground. */
    static BigDecimal[] toGround(HoleDirection hole, double lineAngle, BigDecimal[] core) {
        BigDecimal[] t = axis(hole);
        BigDecimal[] u = wall(hole, lineAngle);
        BigDecimal[] q = cross(t, u);
        return plus(plus(scaled(t, core[0]), scaled(u, core[1])), scaled(q, core[2]));
    }

    static BigDecimal[] toCore(HoleDirection hole, double lineAngle, BigDecimal[] ground) {
        BigDecimal[] t = axis(hole);
        BigDecimal[] u = wall(hole, lineAngle);
        return of(dot(ground, t), dot(ground, u), dot(ground, cross(t, u)));
    }

    /** The angle between two directions without an arrow, small enough to be its sine, degrees. */
    static double apart(BigDecimal[] one, BigDecimal[] other) {
        BigDecimal[] product = cross(one, other);
        return dot(product, product).sqrt(DIGITS).multiply(RADIAN).doubleValue();
    }

    /** How far an angle of degrees lies from that of the vector (x, y), in (-180, 180]; times the length of (x, y). */
    static double turnTimesLength(double degrees, BigDecimal y, BigDecimal x) {
        if (y.signum() == 0 && x.signum() == 0) {
            return 0;
        }
        // turned back by the angle, the vector should lie along x
        BigDecimal across = times(y, cos(degrees)).subtract(times(x, sin(degrees)), DIGITS);
        BigDecimal along = times(x, cos(degrees)).add(times(y, sin(degrees)), DIGITS);
        BigDecimal length = times(x, x).add(times(y, y), DIGITS).sqrt(DIGITS);
        BigDecimal turn = BigDecimalMath.atan2(across, along, DIGITS).multiply(RADIAN);
        return turn.multiply(length).doubleValue();
    }

    static BigDecimal dot(BigDecimal[] a, BigDecimal[] b) {
        return times(a[0], b[0]).add(times(a[1], b[1]), DIGITS).add(times(a[2], b[2]), DIGITS);
    }

    static BigDecimal[] cross(BigDecimal[] a, BigDecimal[] b) {
        return of(
                times(a[1], b[2]).subtract(times(a[2], b[1]), DIGITS),
                times(a[2], b[0]).subtract(times(a[0], b[2]), DIGITS),
                times(a[0], b[1]).subtract(times(a[1], b[0]), DIGITS));
    }

    static BigDecimal[] scaled(BigDecimal[] a, BigDecimal factor) {
        return of(times(a[0], factor), times(a[1], factor), times(a[2], factor));
    }

    private static BigDecimal[] plus(BigDecimal[] a, BigDecimal[] b) {
        return of(a[0].add(b[0], DIGITS), a[1].add(b[1], DIGITS), a[2].add(b[2], DIGITS));
    }

    private static BigDecimal[] minus(BigDecimal[] a, BigDecimal[] b) {
        return plus(a, scaled(b, BigDecimal.ONE.negate()));
    }

    private static BigDecimal times(BigDecimal a, BigDecimal b) {
        return a.multiply(b, DIGITS);
    }

    private static BigDecimal[] of(BigDecimal north, BigDecimal east, BigDecimal down) {
        return new BigDecimal[] {north, east, down};
    }

    /** A vector across {@code from}, carried by the smallest rotation: v - (v . to) / (1 + from . to) (from + to). */
    static BigDecimal[] carried(BigDecimal[] across, BigDecimal[] from, BigDecimal[] to) {
        BigDecimal factor = dot(across, to).divide(BigDecimal.ONE.add(dot(from, to)), DIGITS);
        return minus(across, scaled(plus(from, to), factor));
    }
}
