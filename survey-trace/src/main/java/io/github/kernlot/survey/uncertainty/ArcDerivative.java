package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Vector;

/**
 * Exact derivatives of a fraction f of an arc of minimum curvature by the depths and the directions of its ends
 * (docs/survey-uncertainty.md, section 3). With r(f) = L (a t1 + b t2) and t(f) = A t1 + B t2, functions of f and the dogleg D
 * alone, and dD = -(t1.dt2 + t2.dt1) / sin D,
 *
 * <pre>
 *   dr = dL (a t1 + b t2) + L (a dt1 + b dt2 - (a* t1 + b* t2) (t1.dt2 + t2.dt1)),   a* = (da/dD) / sin D
 * </pre>
 *
 * and alike for t(f). By k(x) = (1 - x cot x) / x^2, which is positive and grows, the starred ones lose no digits to differences:
 * {@code b* = b (D / sin D) (k(D) - f^2/2 k(fD/2))}.
 */
final class ArcDerivative {

    /** Below this dogleg in radians, D^2 is nothing beside 1. */
    private static final double STRAIGHT = 1e-9;

    /** Below this, the series of k(x) is exact to the last digit; above, its closed form loses two. */
    private static final double SERIES = 0.3;

    /** |B(2n)| 2^(2n) / (2n)! for n = 1 to 8, from the series of the cotangent. */
    private static final double[] COTANGENT = {
        1.0 / 3,
        1.0 / 45,
        2.0 / 945,
        1.0 / 4725,
        2.0 / 93555,
        1382.0 / 638512875,
        4.0 / 18243225,
        3617.0 / 162820783125.0
    };

    private final Vector upper;
    private final Vector lower;
    private final double length;
    private final Vector way;
    private final double wayUpper;
    private final double wayLower;
    private final Vector wayBend;
    private final double turnUpper;
    private final double turnLower;
    private final Vector turnBend;
    private final Vector twist;

    private ArcDerivative(Vector upper, Vector lower, double length, double[] way, double[] turn) {
        this.upper = upper;
        this.lower = lower;
        this.length = length;
        this.way = upper.times(way[0]).plus(lower.times(way[1]));
        this.wayUpper = way[0];
        this.wayLower = way[1];
        this.wayBend = upper.times(way[2]).plus(lower.times(way[3]));
        this.turnUpper = turn[0];
        this.turnLower = turn[1];
        this.turnBend = upper.times(turn[2]).plus(lower.times(turn[3]));
        Vector tangent = upper.times(turn[0]).plus(lower.times(turn[1]));
        this.twist = tangent.cross(upper).times(1 / (1 + upper.dot(tangent)));
    }

    /** Of the fraction of the arc between two unit tangents that are metres apart along the hole. */
    static ArcDerivative of(Vector upper, Vector lower, double length, double fraction, Linearisation linearisation) {
        double dogleg = upper.angleTo(lower);
        double[] turn = turn(dogleg, fraction);
        double[] way = linearisation == Linearisation.ARCS ? way(dogleg, fraction) : halves(turn, fraction);
        return new ArcDerivative(upper, lower, length, way, turn);
    }

    /** A, B, A*, B* of the tangent. */
    private static double[] turn(double dogleg, double f) {
        double g = 1 - f;
        if (dogleg < STRAIGHT) {
            return new double[] {g, f, g * (1 - g * g) / 3, f * (1 - f * f) / 3};
        }
        double sine = Math.sin(dogleg);
        double spread = dogleg / sine;
        double whole = k(dogleg);
        double atUpper = Math.sin(g * dogleg) / sine;
        double atLower = Math.sin(f * dogleg) / sine;
        return new double[] {
            atUpper,
            atLower,
            atUpper * spread * (whole - g * g * k(g * dogleg)),
            atLower * spread * (whole - f * f * k(f * dogleg))
        };
    }

    /** a, b, a*, b* of the way. */
    private static double[] way(double dogleg, double f) {
        double rest = 2 - f;
        if (dogleg < STRAIGHT) {
            double a = f * rest / 2;
            double b = f * f / 2;
            return new double[] {a, b, a * (1 - (rest * rest + f * f) / 4) / 3, b * (1 - f * f / 2) / 3};
        }
        double sine = Math.sin(dogleg);
        double spread = dogleg / sine;
        double half = Math.sin(f * dogleg / 2);
        double a = 2 * Math.sin(rest * dogleg / 2) * half / (dogleg * sine);
        double b = 2 * half * half / (dogleg * sine);
        double whole = k(dogleg);
        double part = f * f * k(f * dogleg / 2);
        return new double[] {
            a,
            b,
            a * spread * (whole - (rest * rest * k(rest * dogleg / 2) + part) / 4),
            b * spread * (whole - part / 2)
        };
    }

    /** The way of two straight halves, f/2 (t1 + t(f)). */
    private static double[] halves(double[] turn, double f) {
        return new double[] {f / 2 * (1 + turn[0]), f / 2 * turn[1], f / 2 * turn[2], f / 2 * turn[3]};
    }

    /** (1 - x cot x) / x^2. */
    private static double k(double x) {
        double square = x * x;
        if (x > SERIES) {
            return (1 - x / Math.tan(x)) / square;
        }
        double sum = 0;
        for (int n = COTANGENT.length - 1; n >= 0; n--) {
            sum = sum * square + COTANGENT[n];
        }
        return sum;
    }

    /** The shift of the place by a shift of the upper station; its depth shortens the arc. */
    Vector wayByUpper(double depth, Vector tangent) {
        return way.times(-depth)
                .plus(tangent.times(wayUpper)
                        .minus(wayBend.times(lower.dot(tangent)))
                        .times(length));
    }

    /** The shift of the place by a shift of the lower station; its depth lengthens the arc. */
    Vector wayByLower(double depth, Vector tangent) {
        return way.times(depth)
                .plus(tangent.times(wayLower)
                        .minus(wayBend.times(upper.dot(tangent)))
                        .times(length));
    }

    /** The shift of the tangent by one of the upper station's. */
    Vector turnByUpper(Vector tangent) {
        return tangent.times(turnUpper).minus(turnBend.times(lower.dot(tangent)));
    }

    /** The shift of the tangent by one of the lower station's. */
    Vector turnByLower(Vector tangent) {
        return tangent.times(turnLower).minus(turnBend.times(upper.dot(tangent)));
    }

    /**
     * The twist of a frame carried down the part, clockwise looking down-hole, by a shift of the tangent at either of its ends:
     * {@code -(t1 x t(f)).dt / (1 + t1.t(f))} (docs/survey-uncertainty.md, section 3).
     */
    double twist(Vector tangent) {
        return twist.dot(tangent);
    }
}
