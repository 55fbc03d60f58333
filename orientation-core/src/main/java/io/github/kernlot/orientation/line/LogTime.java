package io.github.kernlot.orientation.line;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Optional;

/**
 * A date and time as a log has it: the clock, and its offset from UTC where the log tells it.
 *
 * @param clock what the clock showed
 * @param offset of the clock from UTC; empty for the clock of the site, whichever that is
 */
public record LogTime(LocalDateTime clock, Optional<ZoneOffset> offset) {

    /**
     * A time as ISO 8601 writes it: {@code 2026-03-01T06:40}, {@code 2026-03-01T06:40:30+11:00}, {@code 2026-02-28T19:40Z}.
     *
     * @param text the text
     * @return the time
     * @throws IllegalArgumentException if the text is no such date and time
     */
    public static LogTime parse(String text) {
        try {
            TemporalAccessor parsed =
                    DateTimeFormatter.ISO_DATE_TIME.parseBest(text, OffsetDateTime::from, LocalDateTime::from);
            return parsed instanceof OffsetDateTime at
                    ? new LogTime(at.toLocalDateTime(), Optional.of(at.getOffset()))
                    : new LogTime(LocalDateTime.from(parsed), Optional.empty());
        } catch (DateTimeException refused) {
            throw new IllegalArgumentException(
                    "time is \"" + text + "\"; expected ISO 8601 with date and time, as 2026-03-01T06:40 or"
                            + " 2026-03-01T06:40+11:00",
                    refused);
        }
    }

    /**
     * Whether one can say how long it is from this time to another: both have an offset, or neither.
     *
     * @param other the other time
     * @return false for a clock with an offset beside one without
     */
    public boolean isComparableTo(LogTime other) {
        return offset.isPresent() == other.offset.isPresent();
    }

    /**
     * How long it is until another time.
     *
     * @param later the other time
     * @return the duration, negative where the other time is earlier
     * @throws IllegalArgumentException if only one of the two has an offset
     */
    public Duration until(LogTime later) {
        if (!isComparableTo(later)) {
            throw new IllegalArgumentException(
                    this + " and " + later + " cannot be compared; expected both with an offset, or neither");
        }
        return Duration.between(
                clock.atOffset(offset.orElse(ZoneOffset.UTC)),
                later.clock.atOffset(later.offset.orElse(ZoneOffset.UTC)));
    }

    /**
     * Whether this time is earlier than another.
     *
     * @param other the other time
     * @return false for the same time
     * @throws IllegalArgumentException if only one of the two has an offset
     */
    public boolean isBefore(LogTime other) {
        return until(other).compareTo(Duration.ZERO) > 0;
    }

    /** As ISO 8601 writes it. */
    @Override
    public String toString() {
        return clock + offset.map(ZoneOffset::toString).orElse("");
    }
}
