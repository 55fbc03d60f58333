package io.github.kernlot.orientation.line.fit;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What the marks say of one number of the line model.
 *
 * @param parameter which number
 * @param start what was assumed of it
 * @param value what the fitted model has for it
 * @param standing how far the marks tell it
 * @param standardError the standard error of the value, from the curvature of the evidence with values at their bound held; there
 *     only where the marks tell it
 * @param low the lower end of the 95 % interval; there for a told value, and 0 or the least possible one for one at its bound
 * @param high the upper end of the 95 % interval; there for a told value and for one at its bound
 * @param reason why it is not told, or what else there is to know; may be empty
 */
public record FittedParameter(
        LineParameter parameter,
        double start,
        double value,
        Standing standing,
        OptionalDouble standardError,
        OptionalDouble low,
        OptionalDouble high,
        String reason) {

    /** How far marks tell a parameter. */
    public enum Standing {
        /** There is a value with a standard error. */
        TOLD,
        /** 0, or the least value possible, is not excluded: there is an upper end and no standard error. */
        AT_BOUND,
        /** Only one factor on this and others is told; their ratio is as assumed. */
        TOGETHER,
        /** The marks do not tell it, and the assumed value stays. */
        NOT_TOLD,
        /** It was not free. */
        HELD
    }

    /** A row of the table that a fitted model prints. */
    @Override
    public String toString() {
        String said =
                switch (standing) {
                    case TOLD ->
                        "+- " + number(standardError.orElseThrow()) + ", 95 % " + number(low.orElseThrow()) + " to "
                                + number(high.orElseThrow());
                    case AT_BOUND -> "below " + number(high.orElseThrow()) + " (95 %)";
                    case TOGETHER -> "not by itself";
                    case NOT_TOLD -> "not told";
                    case HELD -> "held";
                };
        String row = String.format(Locale.ROOT, "%-14s %8s -> %8s  %s", parameter, number(start), number(value), said);
        String unit = standing == Standing.TOLD || standing == Standing.AT_BOUND ? parameter.unit() : "";
        return row + (unit.isEmpty() ? "" : " " + unit) + (reason.isEmpty() ? "" : ": " + reason);
    }

    private String number(double number) {
        return String.format(Locale.ROOT, parameter.isProbability() ? "%.3f" : "%.2f", number);
    }
}
