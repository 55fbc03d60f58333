package io.github.kernlot.orientation.rock;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;

/**
 * A length of straight core between two parallel contacts. It needs no orientation: the true thickness is {@code L sin(alpha)}.
 *
 * @param length along the core axis, metres, 0 or more
 * @param alpha acute angle between the contacts and the core axis, degrees in [0, 90]
 * @param lengthSigma standard deviation of the length, metres, 0 or more
 * @param alphaSigma standard deviation of alpha, degrees, 0 or more
 */
public record CoreIntercept(double length, double alpha, double lengthSigma, double alphaSigma) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if alpha lies outside [0, 90], or another number is negative or not finite
     */
    public CoreIntercept {
        length = Require.notNegative("core length", length, "m");
        alpha = Require.inRange("alpha", alpha, 0, 90, "degrees");
        lengthSigma = Require.notNegative("length sigma", lengthSigma, "m");
        alphaSigma = Require.notNegative("alpha sigma", alphaSigma, "degrees");
    }

    /**
     * An intercept without uncertainty.
     *
     * @param length along the core axis, metres, 0 or more
     * @param alpha degrees in [0, 90]
     * @return the intercept
     * @throws IllegalArgumentException if alpha lies outside [0, 90], or the length is negative or not finite
     */
    public static CoreIntercept of(double length, double alpha) {
        return new CoreIntercept(length, alpha, 0, 0);
    }

    /**
     * The length of core that a layer of known thickness takes up.
     *
     * @param trueThickness across the contacts, metres, 0 or more
     * @param alpha degrees, above 0 and up to 90
     * @return the intercept, {@code T / sin(alpha)} long
     * @throws IllegalArgumentException if alpha is 0, where a hole never leaves the layer, or lies outside its range, or the thickness is
     *     negative or not finite
     */
    public static CoreIntercept across(double trueThickness, double alpha) {
        Require.notNegative("true thickness", trueThickness, "m");
        Require.positive("alpha", alpha, "degrees");
        return of(trueThickness / Degrees.sin(Require.inRange("alpha", alpha, 0, 90, "degrees")), alpha);
    }

    /**
     * The same intercept with the uncertainty of its length.
     *
     * @param lengthSigma metres, 0 or more
     * @return the intercept
     * @throws IllegalArgumentException if the sigma is negative or not finite
     */
    public CoreIntercept withLengthSigma(double lengthSigma) {
        return new CoreIntercept(length, alpha, lengthSigma, alphaSigma);
    }

    /**
     * The same intercept with the uncertainty of its alpha.
     *
     * @param alphaSigma degrees, 0 or more
     * @return the intercept
     * @throws IllegalArgumentException if the sigma is negative or not finite
     */
    public CoreIntercept withAlphaSigma(double alphaSigma) {
        return new CoreIntercept(length, alpha, lengthSigma, alphaSigma);
    }

    /**
     * The true thickness {@code T = L sin(alpha)}, with {@code dT = sin(alpha) dL + L cos(alpha) d(alpha)}. An error of alpha counts the
     * more the smaller alpha is, as cot(alpha) of the thickness; near 90 it counts only to second order, which is left out.
     *
     * @return the thickness across the contacts
     */
    public Thickness trueThickness() {
        double ofLength = Degrees.sin(alpha) * lengthSigma;
        double ofAlpha = length * Degrees.cos(alpha) * Math.toRadians(alphaSigma);
        return new Thickness(length * Degrees.sin(alpha), Math.hypot(ofLength, ofAlpha));
    }

    /** The length and alpha: {@code 30.34 m at alpha 55.5}. */
    @Override
    public String toString() {
        return new Thickness(length, lengthSigma) + " at alpha " + Degrees.text(alpha);
    }
}
