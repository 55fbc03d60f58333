package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.line.LogTime;
import java.util.Optional;

/** Reads times that are compared with each other: all with an offset from UTC, or none. */
final class Clock {

    private final String whose;
    private Optional<LogTime> first = Optional.empty();
    private int firstLine;

    /** A clock of something: {@code of the hole}. */
    Clock(String whose) {
        this.whose = whose;
    }

    /** The time of a column; empty where it is blank, or a fault. */
    Optional<LogTime> read(Row row, String column) {
        if (!row.has(column)) {
            return Optional.empty();
        }
        LogTime time;
        try {
            time = LogTime.parse(row.text(column));
        } catch (IllegalArgumentException refused) {
            row.fault(column, "expected a date and time by ISO 8601, as 2026-03-01T06:40 or 2026-03-01T06:40+11:00");
            return Optional.empty();
        }
        if (first.isEmpty()) {
            first = Optional.of(time);
            firstLine = row.line();
        }
        if (!time.isComparableTo(first.get())) {
            row.fault(
                    column,
                    "expected " + (first.get().offset().isPresent() ? "an" : "no")
                            + " offset from UTC, as the time in line " + firstLine + " " + whose + " has"
                            + (first.get().offset().isPresent() ? "" : " none"));
            return Optional.empty();
        }
        return Optional.of(time);
    }
}
