package io.github.kernlot.orientation.line.audit;

import io.github.kernlot.orientation.line.LogTime;
import java.util.Locale;

/**
 * A sudden change of a tool between two of its checks.
 *
 * @param from the first check after the change
 * @param degrees the mean difference from then on minus that before, degrees in (-180, 180]
 * @param probability how probable a change at least so clear is where nothing changed
 */
public record ToolChange(LogTime from, double degrees, double probability) {

    /** The change in one line: {@code 6.2 degrees from 2026-03-01T06:40 on, p of none 0.0010}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.1f degrees from %s on, p of none %.4f", degrees, from, probability);
    }
}
