package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.LogTime;
import io.github.kernlot.orientation.line.audit.ToolCheck;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/** Reads the checks of tools, which belong to no hole. */
final class CheckReader {

    private final List<Row> rows;
    private final List<String> notices;
    private final Map<String, Clock> clocks = new HashMap<>();

    CheckReader(List<Row> rows, List<String> notices) {
        this.rows = rows;
        this.notices = notices;
    }

    /** The checks of the sound rows. */
    List<ToolCheck> read() {
        List<ToolCheck> checks = new ArrayList<>();
        for (Row row : rows) {
            if (row.isReadable()) {
                read(row).ifPresent(checks::add);
            }
        }
        return checks;
    }

    private Optional<ToolCheck> read(Row row) {
        Optional<String> tool = row.name("tool");
        if (!row.has("checked_at")) {
            row.fault("checked_at", "blank, expected a date and time by ISO 8601");
        }
        Optional<LogTime> at = tool.flatMap(name ->
                clocks.computeIfAbsent(name, one -> new Clock("of the tool")).read(row, "checked_at"));
        OptionalDouble known = row.number("known_roll_deg", NumberRange.ANY);
        OptionalDouble read = row.number("read_roll_deg", NumberRange.ANY);
        return row.isSound()
                ? Optional.of(new ToolCheck(
                        tool.orElseThrow(),
                        at.orElseThrow(),
                        wrapped(row, "known_roll_deg", known.getAsDouble()),
                        wrapped(row, "read_roll_deg", read.getAsDouble())))
                : Optional.empty();
    }

    private double wrapped(Row row, String column, double degrees) {
        double wrapped = Degrees.wrap360(degrees);
        if (wrapped != degrees) {
            notices.add("checks.csv, line " + row.line() + ": " + column + " " + row.text(column) + " is taken as "
                    + NumberRange.text(wrapped) + " degrees");
        }
        return wrapped;
    }

    /** Tells the tools that marks or runs name and no check does: of a tool without a check nobody knows its bias. */
    void tellUnchecked(List<ToolCheck> checks, Set<String> named) {
        Set<String> unchecked = new TreeSet<>(named);
        checks.forEach(check -> unchecked.remove(check.tool()));
        if (!unchecked.isEmpty()) {
            notices.add(
                    "checks.csv: no check of the tools " + String.join(", ", unchecked) + ", which marks or runs name");
        }
        Set<String> unknown = new TreeSet<>();
        checks.stream()
                .map(ToolCheck::tool)
                .filter(tool -> !named.contains(tool))
                .forEach(unknown::add);
        if (!unknown.isEmpty() && !named.isEmpty()) {
            notices.add("checks.csv: checks of the tools " + String.join(", ", unknown)
                    + ", which neither marks nor runs name");
        }
    }
}
