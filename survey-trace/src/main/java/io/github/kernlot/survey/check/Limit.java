package io.github.kernlot.survey.check;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * The greatest value that a check lets pass, and what that value rests on.
 *
 * @param value the limit, in {@code unit}, 0 or more
 * @param unit the unit, such as {@code degrees per 10 m}
 * @param standing what the value rests on
 * @param source where it is published; empty unless it is
 */
public record Limit(double value, String unit, Standing standing, String source) {

    /** What a limit rests on. */
    public enum Standing {
        /** A source that can be read. */
        PUBLISHED("published"),
        /** The trade does so; nobody who says it names a source. */
        COMMON_PRACTICE("common practice, no source"),
        /** Chosen for this library, to be replaced. */
        ASSUMED("assumed"),
        /** The caller's own. */
        GIVEN("given");

        private final String text;

        Standing(String text) {
            this.text = text;
        }

        /** As it is written in a finding. */
        @Override
        public String toString() {
            return text;
        }
    }

    /**
     * Checks the value.
     *
     * @throws IllegalArgumentException if the value is negative or not finite
     */
    public Limit {
        value = Require.notNegative("limit", value, unit);
    }

    static String number(double value, String unit) {
        int decimals = unit.equals("g") ? 4 : unit.equals("nT") ? 0 : 2;
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0\\.?0*") ? text.substring(1) : text;
    }

    /** The limit and its standing: {@code 300 nT (published: ...)}. */
    @Override
    public String toString() {
        return number(value, unit) + " " + unit + " (" + standing + (source.isEmpty() ? "" : ": " + source) + ")";
    }
}
