package io.github.kernlot.orientation.reading;

/**
 * What a residual costs: half its square, or Tukey's biweight, which stops to grow at {@link #TUNING} scales and so gives no weight to what
 * lies farther off.
 *
 * @param scale one sigma of the residuals; infinity for squares
 */
record Loss(double scale) {

    /** That {@link #EFFICIENCY} for Gaussian errors (Beaton and Tukey 1974, from memory). */
    static final double TUNING = 4.685;

    private static final double EFFICIENCY = 0.95;

    static final Loss SQUARES = new Loss(Double.POSITIVE_INFINITY);

    /**
     * A loss that gives up a point only at three times the distance. From its least cost the other begins: the least of the other alone may
     * give up a sound point that tells much, as at an end of a long ellipse.
     */
    Loss wider() {
        return new Loss(3 * scale);
    }

    /** By which the variance of the estimate exceeds that of least squares for Gaussian errors. */
    double variance() {
        return scale == Double.POSITIVE_INFINITY ? 1 : 1 / EFFICIENCY;
    }

    double limit() {
        return TUNING * scale;
    }

    double cost(double residual) {
        if (scale == Double.POSITIVE_INFINITY) {
            return residual * residual / 2;
        }
        double inside = inside(residual);
        return limit() * limit() / 6 * (1 - inside * inside * inside);
    }

    /** psi(r) / r */
    double weight(double residual) {
        double inside = inside(residual);
        return inside * inside;
    }

    /** The derivative of psi. */
    double slope(double residual) {
        double part = residual / limit();
        double inside = inside(residual);
        return inside * (1 - 5 * part * part);
    }

    /** 1 - (r / c)^2, and 0 beyond c. */
    private double inside(double residual) {
        double part = residual / limit();
        return Math.max(0, 1 - part * part);
    }
}
