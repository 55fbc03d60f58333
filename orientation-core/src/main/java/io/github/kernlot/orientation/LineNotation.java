package io.github.kernlot.orientation;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The ways in which geologists write a line without an arrow. Each formats and parses; a text is only as plain as its notation is named
 * beside it.
 */
public enum LineNotation {
    /** Plunge and trend: {@code 30.2/049.9}. */
    PLUNGE_AND_TREND(Written.NUMBER + "/" + Written.NUMBER) {
        @Override
        public String format(LineOrientation line, int decimals) {
            return Written.angle(line.plunge(), decimals) + "/" + Written.azimuth(line.trend(), decimals);
        }

        @Override
        LineOrientation read(Matcher text) {
            return LineOrientation.ofPlungeAndTrend(Written.number(text, 1), Written.number(text, 2));
        }
    },

    /** Trend and plunge: {@code 049.9/30.2}. */
    TREND_AND_PLUNGE(Written.NUMBER + "/" + Written.NUMBER) {
        @Override
        public String format(LineOrientation line, int decimals) {
            return Written.azimuth(line.trend(), decimals) + "/" + Written.angle(line.plunge(), decimals);
        }

        @Override
        LineOrientation read(Matcher text) {
            return LineOrientation.ofPlungeAndTrend(Written.number(text, 2), Written.number(text, 1));
        }
    },

    /** Plunge, and the trend as a bearing from north or south: {@code 30.2 N49.9E}. */
    PLUNGE_AND_BEARING(Written.NUMBER + " ?" + Written.BEARING) {
        @Override
        public String format(LineOrientation line, int decimals) {
            return Written.angle(line.plunge(), decimals) + " " + Written.bearing(line.trend(), decimals);
        }

        @Override
        LineOrientation read(Matcher text) {
            return LineOrientation.ofPlungeAndTrend(Written.number(text, 1), Written.ofBearing(text, 2));
        }
    };

    private static final LineOrientation EXAMPLE = LineOrientation.ofPlungeAndTrend(30.2, 49.9);

    private final Pattern pattern;

    LineNotation(String pattern) {
        this.pattern = Pattern.compile(pattern);
    }

    /**
     * A line as it is written, with one decimal.
     *
     * @param line the line
     * @return the text
     */
    public String format(LineOrientation line) {
        return format(line, 1);
    }

    /**
     * A line as it is written.
     *
     * @param line the line
     * @param decimals how many digits stand behind the point, in [0, 12]
     * @return the text
     * @throws IllegalArgumentException if the number of decimals lies outside its range
     */
    public abstract String format(LineOrientation line, int decimals);

    /**
     * The line that is written so.
     *
     * @param text the text, with any number of decimals and with or without degree signs
     * @return the line
     * @throws IllegalArgumentException if the text is not of this notation or an angle lies outside its range
     */
    public LineOrientation parse(String text) {
        return read(Written.matched(pattern, text, this, format(EXAMPLE)));
    }

    abstract LineOrientation read(Matcher text);
}
