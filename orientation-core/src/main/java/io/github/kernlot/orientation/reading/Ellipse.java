package io.github.kernlot.orientation.reading;

/** Covariance in two dimensions, by components that already hold their sigmas. */
final class Ellipse {

    private Ellipse() {}

    static double covariance(double firstX, double firstY, double secondX, double secondY, double correlation) {
        return firstX * secondX + firstY * secondY + correlation * (firstX * secondY + firstY * secondX);
    }
}
