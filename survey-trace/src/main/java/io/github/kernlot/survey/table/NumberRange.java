package io.github.kernlot.survey.table;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** The numbers that are accepted at a place: plain decimals, with an exponent if need be, within a closed range. */
record NumberRange(double low, double high, boolean isWhole) {

    private static final Pattern DECIMAL = Pattern.compile("[+-]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][+-]?[0-9]+)?");
    private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]+");
    private static final Pattern LONG_MINUS = Pattern.compile("[\u2012-\u2015\u2212]\\s*[0-9.]");
    private static final Pattern WITH_UNIT = Pattern.compile(DECIMAL + "\\s*([A-Za-z]+|[\u00B0\u00BA'\"]+)");
    private static final double LONGEST_HOLE = 100_000;
    private static final double GREATEST_COORDINATE = 1e9;
    private static final double LEAST_SIGMA = 1e-6;

    static final NumberRange ANY = within(-Double.MAX_VALUE, Double.MAX_VALUE);
    static final NumberRange COORDINATE = within(-GREATEST_COORDINATE, GREATEST_COORDINATE);
    static final NumberRange DEPTH = within(0, LONGEST_HOLE);
    static final NumberRange DIP = within(-90, 90);
    static final NumberRange ALPHA = within(0, 90);
    static final NumberRange TURN = within(-180, 180);
    static final NumberRange DIAMETER = within(1, 2000);
    static final NumberRange LENGTH_ROUND = within(-1e6, 1e6);
    /** Below and above, weights of 1/sigma squared would mean nothing. */
    static final NumberRange SIGMA = within(LEAST_SIGMA, 360);

    static final NumberRange SIGMA_OR_NONE = within(0, 360);
    static final NumberRange PROBABILITY = within(0, 1);

    static NumberRange within(double low, double high) {
        return new NumberRange(low, high, false);
    }

    static NumberRange whole(double low, double high) {
        return new NumberRange(low, high, true);
    }

    /** The number that a text writes; empty where it writes none or one outside the range. */
    OptionalDouble parse(String text) {
        if (!(isWhole ? WHOLE : DECIMAL).matcher(text).matches()) {
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(text);
        return value >= low && value <= high ? OptionalDouble.of(value + 0.0) : OptionalDouble.empty();
    }

    /** What is accepted in the place of a text, in words. */
    String expected(String text) {
        return (text.isEmpty() ? "blank, " : "") + "expected " + (isWhole ? "a whole number" : "a number")
                + manner(text) + (high == Double.MAX_VALUE ? "" : " within [" + text(low) + ", " + text(high) + "]");
    }

    /** What a text that a person would take for a number lacks to be one. */
    private static String manner(String text) {
        if (text.contains(",")) {
            return " with a decimal point";
        }
        if (LONG_MINUS.matcher(text).lookingAt()) {
            return " with the minus sign of the keyboard";
        }
        return WITH_UNIT.matcher(text).matches() ? " without a unit" : "";
    }

    /** A number without a needless digit. */
    static String text(double value) {
        BigDecimal shortest = new BigDecimal(Double.toString(value)).stripTrailingZeros();
        return Math.abs(shortest.scale()) > 20 ? shortest.toString() : shortest.toPlainString();
    }
}
