package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.line.DrawnLine;
import io.github.kernlot.orientation.line.DrawnLines;
import io.github.kernlot.orientation.line.LogTime;
import io.github.kernlot.orientation.line.runs.CoreRun;
import io.github.kernlot.orientation.line.runs.RunLog;
import io.github.kernlot.survey.check.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the runs and the drawn lines of one hole. */
final class RecordReader {

    private static final Map<String, DrawnLine.Arrow> ARROWS =
            Map.of("down-hole", DrawnLine.Arrow.DOWN_HOLE, "up-hole", DrawnLine.Arrow.UP_HOLE);

    private final HoleRows rows;
    private final HoleFindings findings;
    private final Clock clock = new Clock("of the hole");

    private record Placed(Row row, DrawnLine line) {}

    RecordReader(HoleRows rows, HoleFindings findings) {
        this.rows = rows;
        this.findings = findings;
    }

    /** The log of the sound rows; empty where the hole has no row of runs.csv. */
    Optional<RunLog> runs() {
        List<CoreRun> runs = new ArrayList<>();
        for (Row row : rows.runs()) {
            if (row.isReadable()) {
                run(row).ifPresent(runs::add);
            }
        }
        return runs.isEmpty() ? Optional.empty() : Optional.of(RunLog.of(runs));
    }

    private Optional<CoreRun> run(Row row) {
        OptionalDouble from = row.number("from_m", NumberRange.DEPTH);
        OptionalDouble to = row.number("to_m", NumberRange.DEPTH);
        OptionalDouble recovered = row.optionalNumber("recovered_m", NumberRange.DEPTH);
        Optional<LogTime> prepared = clock.read(row, "prepared_at");
        Optional<LogTime> still = clock.read(row, "rods_still_at");
        Optional<LogTime> read = clock.read(row, "read_at");
        Optional<LogTime> marked = clock.read(row, "marked_at");
        return row.isSound()
                ? Optional.of(new CoreRun(
                        from.getAsDouble(),
                        to.getAsDouble(),
                        recovered,
                        row.word("tool"),
                        row.word("read_tool"),
                        prepared,
                        still,
                        read,
                        marked))
                : Optional.empty();
    }

    /** The lines of the sound rows; everywhere where the hole has no row of lines.csv, which is told if other holes have. */
    DrawnLines lines(boolean hasLines) {
        List<Placed> placed = new ArrayList<>();
        for (Row row : rows.lines()) {
            if (row.isReadable()) {
                line(row).ifPresent(line -> placed.add(new Placed(row, line)));
            }
        }
        placed.sort(Comparator.comparingDouble(each -> each.line.from()));
        for (int i = 1; i < placed.size(); i++) {
            Placed upper = placed.get(i - 1);
            Placed lower = placed.get(i);
            if (lower.line.from() < upper.line.to()) {
                lower.row.fault(
                        "from_m",
                        "the line overlaps the one in line " + upper.row.line() + ", expected at least "
                                + NumberRange.text(upper.line.to()) + " m");
            }
        }
        if (rows.lines().isEmpty()) {
            if (hasLines) {
                findings.tell(Finding.ofHole(
                        Finding.Level.INFO, "lines.csv has no line of this hole: it is taken as drawn everywhere"));
            }
            return DrawnLines.everywhere();
        }
        return DrawnLines.of(placed.stream()
                .filter(each -> each.row.isSound())
                .map(Placed::line)
                .toList());
    }

    private static Optional<DrawnLine> line(Row row) {
        OptionalDouble from = row.number("from_m", NumberRange.DEPTH);
        OptionalDouble to = row.number("to_m", NumberRange.DEPTH);
        Optional<DrawnLine.Arrow> arrow = row.word("arrow", ARROWS);
        if (from.isPresent() && to.isPresent() && !(to.getAsDouble() > from.getAsDouble())) {
            row.fault("to_m", "expected a depth below that of from_m, " + NumberRange.text(from.getAsDouble()) + " m");
        }
        return row.isSound()
                ? Optional.of(new DrawnLine(
                        from.getAsDouble(),
                        to.getAsDouble(),
                        arrow.orElseThrow(),
                        row.word("grade"),
                        row.word("drawn_by")))
                : Optional.empty();
    }
}
