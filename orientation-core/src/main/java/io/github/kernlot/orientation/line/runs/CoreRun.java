package io.github.kernlot.orientation.line.runs;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.line.LogTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * One run of the core barrel as its log has it. What nobody noted is empty; a log that contradicts itself is kept as it is, and
 * {@link RunLog} tells.
 *
 * @param from where the run began by the driller's depth, metres along the hole, 0 or more
 * @param to where it ended by the driller's depth, metres along the hole, 0 or more
 * @param recovered metres of core measured in the run, 0 or more
 * @param tool the orientation tool that was run
 * @param readTool the orientation tool that was read
 * @param prepared when the tool was prepared for the run
 * @param rodsStill when the rods came to rest at the run's end
 * @param read when the tool was read
 * @param marked when the core was marked
 */
public record CoreRun(
        double from,
        double to,
        OptionalDouble recovered,
        Optional<String> tool,
        Optional<String> readTool,
        Optional<LogTime> prepared,
        Optional<LogTime> rodsStill,
        Optional<LogTime> read,
        Optional<LogTime> marked) {

    /**
     * Checks the numbers and that the times can be compared.
     *
     * @throws IllegalArgumentException if a depth or the recovered core is negative or not finite, or some of the times have an
     *     offset from UTC and some have none
     */
    public CoreRun {
        from = Require.notNegative("from", from, "m");
        to = Require.notNegative("to", to, "m");
        if (recovered.isPresent()) {
            recovered = OptionalDouble.of(Require.notNegative("recovered core", recovered.getAsDouble(), "m"));
        }
        List<LogTime> times = Stream.of(prepared, rodsStill, read, marked)
                .flatMap(Optional::stream)
                .toList();
        for (LogTime time : times) {
            times.get(0).until(time);
        }
    }

    /**
     * A run of which the depths alone are known.
     *
     * @param from where it began, metres along the hole
     * @param to where it ended, metres along the hole
     * @return the run
     * @throws IllegalArgumentException if a depth is negative or not finite
     */
    public static CoreRun of(double from, double to) {
        return new CoreRun(
                from,
                to,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /**
     * How far the run advanced the hole.
     *
     * @return to minus from in metres; 0 or below where the log contradicts itself
     */
    public double length() {
        return to - from;
    }

    /** Any of its times, by which one tells whether the log has offsets from UTC. */
    Optional<LogTime> anyTime() {
        return Stream.of(prepared, rodsStill, read, marked)
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** The run's depths: {@code run from 12.00 to 15.00 m}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "run from %.2f to %.2f m", from, to);
    }
}
