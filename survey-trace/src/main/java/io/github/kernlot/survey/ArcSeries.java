package io.github.kernlot.survey;

/**
 * What an arc needs of the sine and the cosine of the angle x that it has turned, as functions of x squared: exact where the angle
 * is 0 and without cancellation beside it. Below 0.2 radians they are Taylor series, whose first term left out is below 1e-18 of the
 * sum.
 */
final class ArcSeries {

    private static final double GENTLE = 0.04;

    private ArcSeries() {}

    /** Whether the Taylor series will do. */
    static boolean isGentle(double square) {
        return square <= GENTLE;
    }

    /**
     * sin x / x.
     *
     * @param square x squared
     * @return the ratio, within 2 ulp below 0.2 radians
     */
    static double along(double square) {
        if (isGentle(square)) {
            return gentleAlong(square);
        }
        double angle = Math.sqrt(square);
        return Math.sin(angle) / angle;
    }

    /**
     * (1 - cos x) / x^2.
     *
     * @param square x squared
     * @return the ratio, within 2 ulp below 0.2 radians
     */
    static double across(double square) {
        if (isGentle(square)) {
            return gentleAcross(square);
        }
        double half = Math.sqrt(square) / 2;
        double sine = Math.sin(half);
        return sine * sine / (2 * half * half);
    }

    /** {@link #along} where it is gentle: no branch, so that a loop over it can be made of vector instructions. */
    static double gentleAlong(double square) {
        double high = 1.0 / 362880 + square * (-1.0 / 39916800);
        double middle = 1.0 / 120 + square * (-1.0 / 5040 + square * high);
        return 1 + square * (-1.0 / 6 + square * middle);
    }

    /** {@link #across} where it is gentle. */
    static double gentleAcross(double square) {
        double high = 1.0 / 3628800 + square * (-1.0 / 479001600);
        double middle = 1.0 / 720 + square * (-1.0 / 40320 + square * high);
        return 0.5 + square * (-1.0 / 24 + square * middle);
    }
}
