package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.internal.Degrees;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.OptionalDouble;

/** Numbers as results write them: four decimals, or as many as a given number has. */
final class Cells {

    private Cells() {}

    /** A length, or an angle that does not go round. */
    static String number(double value) {
        return new BigDecimal(Double.toString(value))
                .setScale(4, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** An angle in [0, 360), also when it is rounded. */
    static String azimuth(double degrees) {
        String text = number(degrees);
        return text.equals("360.0000") ? "0.0000" : text;
    }

    /** An angle in (-180, 180], also when it is rounded. */
    static String difference(double degrees) {
        String text = number(degrees);
        return text.equals("-180.0000") ? "180.0000" : text;
    }

    /** An angle taken into (-180, 180]. */
    static String signed(double degrees) {
        return difference(Degrees.wrap180(degrees));
    }

    /** A number that was given, with nothing lost of it. */
    static String given(double value) {
        String text = number(value);
        if (Double.parseDouble(text) == value) {
            return text;
        }
        BigDecimal shortest = new BigDecimal(Double.toString(value));
        return shortest.scale() > 20 ? shortest.toString() : shortest.toPlainString();
    }

    static String given(OptionalDouble value) {
        return value.isPresent() ? given(value.getAsDouble()) : "";
    }

    /** A word for a constant: {@code left out}. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
