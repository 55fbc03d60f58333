package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;
import java.util.Optional;

/**
 * An interval of core on which the reference line was drawn.
 *
 * @param from where the line begins, metres along the hole, 0 or more
 * @param to where it ends, metres along the hole, deeper than {@code from}
 * @param arrow which way its arrows point
 * @param grade how good it was thought to be, in the log's own word; empty where nobody noted it
 * @param drawnBy who drew it; empty where nobody noted it
 */
public record DrawnLine(double from, double to, Arrow arrow, Optional<String> grade, Optional<String> drawnBy) {

    /** Which way the arrows of a line point, and so which way one looks who reads round the core along them. */
    public enum Arrow {
        /** Away from the collar. */
        DOWN_HOLE,
        /** Towards the collar. */
        UP_HOLE
    }

    /**
     * Checks the depths.
     *
     * @throws IllegalArgumentException if a depth is negative or not finite, or {@code to} is not deeper than {@code from}
     */
    public DrawnLine {
        from = Require.notNegative("from", from, "m");
        to = Require.notNegative("to", to, "m");
        Require.positive("length of the drawn line (to - from)", to - from, "m");
    }

    /**
     * A line with its arrows down-hole.
     *
     * @param from where it begins, metres along the hole
     * @param to where it ends, metres along the hole
     * @return the line
     * @throws IllegalArgumentException if a depth lies outside its range
     */
    public static DrawnLine of(double from, double to) {
        return new DrawnLine(from, to, Arrow.DOWN_HOLE, Optional.empty(), Optional.empty());
    }

    /** The interval and what is noted of it: {@code line from 12.00 to 15.10 m, arrow up-hole, grade good, drawn by A}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "line from %.2f to %.2f m", from, to)
                + (arrow == Arrow.UP_HOLE ? ", arrow up-hole" : "")
                + grade.map(text -> ", grade " + text).orElse("")
                + drawnBy.map(text -> ", drawn by " + text).orElse("");
    }
}
