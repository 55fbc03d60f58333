package io.github.kernlot.orientation.line.fit;

import java.util.List;
import java.util.Map;

/**
 * What the search for the greatest evidence turns: one parameter, or one factor on several that cannot be told apart. Its
 * coordinate is asinh of a sigma and the arcsine of the root of a probability, in which the evidence is nearly a parabola; both
 * make the evidence even about 0, so that 0 is no edge.
 *
 * @param parameters one, or those that share a factor
 * @param bases what the coordinate's value is multiplied with for each: 1 for a single parameter
 * @param least the least value
 * @param limit the greatest value
 */
record FitCoordinate(List<LineParameter> parameters, List<Double> bases, double least, double limit) {

    private static final double ARC = 3;

    boolean isProbability() {
        return parameters.get(0).isProbability();
    }

    boolean isFactor() {
        return parameters.size() > 1;
    }

    /** A sigma small enough to be of no account. */
    private double softness() {
        return parameters.get(0) == LineParameter.WANDER ? 0.1 : 0.5;
    }

    double value(double coordinate) {
        double value = isProbability()
                ? Math.pow(Math.sin(coordinate / ARC), 2)
                : softness() * Math.sinh(Math.abs(coordinate));
        return Math.min(Math.max(value, least), limit);
    }

    double coordinate(double value) {
        if (isProbability()) {
            return ARC * Math.asin(Math.sqrt(value));
        }
        double ratio = value / softness();
        return Math.log(ratio + Math.sqrt(1 + ratio * ratio));
    }

    /** How fast the value grows with the coordinate. */
    double slope(double coordinate) {
        return isProbability() ? Math.sin(2 * coordinate / ARC) / ARC : softness() * Math.cosh(coordinate);
    }

    double lowest() {
        return least > 0 ? coordinate(least) : -highest();
    }

    double highest() {
        return coordinate(limit);
    }

    /** What the parameters are at a coordinate. */
    void put(double coordinate, Map<LineParameter, Double> values) {
        for (int i = 0; i < bases.size(); i++) {
            values.put(parameters.get(i), bases.get(i) * value(coordinate));
        }
    }
}
