package io.github.kernlot.survey.check;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something about a hole that its user should know.
 *
 * @param depth where, metres along the hole, 0 or more; empty for the whole hole
 * @param level how much it matters
 * @param what the finding in one sentence
 * @param measurement the number that was held against a limit; empty where none was
 */
public record Finding(OptionalDouble depth, Level level, String what, Optional<Measurement> measurement) {

    /** How much a finding matters. */
    public enum Level {
        /** Results cannot be trusted. */
        ERROR,
        /** Results may mislead. */
        WARNING,
        /** Worth knowing. */
        INFO
    }

    /**
     * Checks the depth.
     *
     * @throws IllegalArgumentException if the depth is negative or not finite
     */
    public Finding {
        if (depth.isPresent()) {
            depth = OptionalDouble.of(Require.notNegative("depth", depth.getAsDouble(), "m"));
        }
    }

    /**
     * A finding without a number.
     *
     * @param depth where, metres along the hole, 0 or more; empty for the whole hole
     * @param level how much it matters
     * @param what the finding in one sentence
     * @throws IllegalArgumentException if the depth is negative or not finite
     */
    public Finding(OptionalDouble depth, Level level, String what) {
        this(depth, level, what, Optional.empty());
    }

    /**
     * A finding about the whole hole.
     *
     * @param level how much it matters
     * @param what the finding
     * @return the finding
     */
    public static Finding ofHole(Level level, String what) {
        return new Finding(OptionalDouble.empty(), level, what);
    }

    /**
     * A finding at one depth.
     *
     * @param depth metres along the hole, 0 or more
     * @param level how much it matters
     * @param what the finding
     * @return the finding
     * @throws IllegalArgumentException if the depth is negative or not finite
     */
    public static Finding at(double depth, Level level, String what) {
        return new Finding(OptionalDouble.of(depth), level, what);
    }

    /**
     * The same finding with the number behind it, which joins the sentence.
     *
     * @param measured the number and its limit
     * @return the finding
     */
    public Finding measured(Measurement measured) {
        return new Finding(depth, level, what + ": " + measured, Optional.of(measured));
    }

    /** The finding in one line: {@code warning at 12.00 m: ...}. */
    @Override
    public String toString() {
        String place = depth.isPresent() ? String.format(Locale.ROOT, " at %.2f m", depth.getAsDouble()) : "";
        return level.name().toLowerCase(Locale.ROOT) + place + ": " + what;
    }
}
