package io.github.kernlot.orientation.line.audit;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.line.LogTime;

/**
 * A reading of a tool in a cradle whose roll is known: the one comparison that shows what all marks of a tool share.
 *
 * @param tool the tool
 * @param at when it was read
 * @param knownRoll how the tool was turned in the cradle, clockwise looking down-hole, degrees in [0, 360)
 * @param readRoll what it read, clockwise looking down-hole, degrees in [0, 360)
 */
public record ToolCheck(String tool, LogTime at, double knownRoll, double readRoll) {

    /**
     * Checks the angles.
     *
     * @throws IllegalArgumentException if one lies outside [0, 360]; 360 becomes 0
     */
    public ToolCheck {
        knownRoll = Require.azimuth("known roll", knownRoll);
        readRoll = Require.azimuth("read roll", readRoll);
    }

    /**
     * How far the reading is off.
     *
     * @return read minus known, degrees in (-180, 180]
     */
    public double difference() {
        return Degrees.wrap180(readRoll - knownRoll);
    }

    /** The check in one line: {@code T-2 at 2026-03-01T06:40, known 120.0, read 127.5}. */
    @Override
    public String toString() {
        return tool + " at " + at + ", known " + Degrees.azimuthText(knownRoll) + ", read "
                + Degrees.azimuthText(readRoll);
    }
}
