package io.github.kernlot.orientation.rock;

import io.github.kernlot.orientation.internal.Degrees;
import java.util.Locale;
import java.util.Optional;

/**
 * Thicknesses of what lies between two contacts that are not parallel. There is no single true thickness; these agree where the
 * contacts are parallel and spread as they diverge.
 *
 * @param atFirst from where the hole pierces the first contact, along that contact's normal to the second contact, metres; empty where
 *     the contacts are at right angles and the normal never gets there
 * @param atSecond from where the hole pierces the second contact, along that contact's normal to the first contact, metres; empty where
 *     they are at right angles
 * @param bisecting the displacement between the two places across the plane that halves the acute angle of the contacts, metres. Of
 *     contacts at right angles two planes do, and one is taken
 * @param angle the acute angle between the contacts, degrees in [0, 90]
 */
public record WedgeThickness(Optional<Double> atFirst, Optional<Double> atSecond, double bisecting, double angle) {

    /** The three thicknesses: {@code 4.10 m at the first contact, 4.60 m at the second, 4.33 m bisecting, 12.0 degrees apart}. */
    @Override
    public String toString() {
        return text(atFirst) + " at the first contact, " + text(atSecond) + " at the second, "
                + text(Optional.of(bisecting)) + " bisecting, " + Degrees.text(angle) + " degrees apart";
    }

    private static String text(Optional<Double> metres) {
        return metres.map(value -> String.format(Locale.ROOT, "%.2f m", value)).orElse("none");
    }
}
