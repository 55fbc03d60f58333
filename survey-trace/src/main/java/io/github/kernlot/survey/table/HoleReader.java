package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.DrawnLines;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.MarkSource;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.runs.RunLog;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.hole.HoleLog;
import io.github.kernlot.survey.hole.Structure;
import io.github.kernlot.survey.uncertainty.StationSigma;
import io.github.kernlot.survey.uncertainty.SurveyErrorSetup;
import io.github.kernlot.survey.uncertainty.TieIn;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads the rows of one hole, adds what is wrong with a row to the row, and makes the log of the sound ones. */
final class HoleReader {

    private static final Map<String, JoinFit> FITS =
            Map.of("locked", JoinFit.LOCKED, "doubtful", JoinFit.DOUBTFUL, "broken", JoinFit.BROKEN);
    private static final Map<String, Boolean> USES = Map.of("yes", true, "no", false);

    private final HoleRows rows;
    private final JobSettings settings;
    private final HoleFindings findings = new HoleFindings();
    private final Map<List<String>, Integer> marksSeen = new HashMap<>();
    private final StructureReader structures;
    private Progress progress = Progress.NOT_BEGUN;
    private Optional<Collar> collar = Optional.empty();
    private Optional<HoleTrace> trace = Optional.empty();
    private List<StationSigma> ownSigmas = List.of();

    private enum Progress {
        NOT_BEGUN,
        BEGUN,
        DONE
    }

    HoleReader(HoleRows rows, JobSettings settings, List<String> carriedColumns) {
        this.rows = rows;
        this.settings = settings;
        this.structures = new StructureReader(carriedColumns, settings.gamma(), findings);
    }

    HoleFindings findings() {
        return findings;
    }

    /**
     * Reads the collar and the trace, those of the hole that this one leaves first; where there are none, faults are added to the rows.
     *
     * @param holes the readers of all holes by their names
     */
    void readTrace(Map<String, HoleReader> holes) {
        if (progress != Progress.NOT_BEGUN) {
            return;
        }
        progress = Progress.BEGUN;
        Optional<HoleReader> parent = rows.collars().stream()
                .filter(row -> row.isReadable() && row.has("parent_id"))
                .findFirst()
                .flatMap(row -> parent(row, holes));
        collar = Collar.read(rows.collars(), settings, parent.flatMap(hole -> hole.collar));
        TraceReader reader = new TraceReader(rows, settings, findings);
        trace = reader.read(collar, parent.flatMap(hole -> hole.trace));
        ownSigmas = Stream.concat(
                        parent.stream().flatMap(hole -> hole.ownSigmas.stream().filter(this::isAboveKickOff)),
                        reader.ownSigmas().stream())
                .toList();
        progress = Progress.DONE;
    }

    private boolean isAboveKickOff(StationSigma sigma) {
        return trace.isPresent() && sigma.depth() < trace.get().kickOffDepth().orElse(0);
    }

    private static Optional<HoleReader> parent(Row row, Map<String, HoleReader> holes) {
        HoleReader parent = holes.get(row.text("parent_id"));
        if (parent == null || parent.rows.collars().isEmpty()) {
            row.fault("parent_id", "expected a hole of holes.csv");
            return Optional.empty();
        }
        if (parent.progress == Progress.BEGUN) {
            row.fault(
                    "parent_id", "the hole would leave itself in the end, expected a hole that does not come from it");
            return Optional.empty();
        }
        parent.readTrace(holes);
        if (parent.trace.isEmpty()) {
            row.fault("parent_id", "the hole that it leaves has no trace");
        }
        return Optional.of(parent);
    }

    /** The log of the sound rows; empty where the hole has no trace. */
    Optional<HoleLog> read(boolean hasJoins, boolean hasLines) {
        List<OrientationMark> marks = each(rows.marks(), this::mark);
        List<Join> joins = each(rows.joins(), HoleReader::join);
        checkJoins();
        List<Structure> read = each(rows.structures(), structures::read);
        RecordReader records = new RecordReader(rows, findings);
        DrawnLines drawn = records.lines(hasLines);
        Optional<RunLog> runs = records.runs();
        Optional<List<Join>> known = hasJoins ? Optional.of(joins) : Optional.empty();
        return trace.map(path -> new HoleLog(rows.id(), path, marks, known, read, drawn, runs, surveyErrors()));
    }

    private SurveyErrorSetup surveyErrors() {
        return SurveyErrorSetup.of(
                settings.surveySigmas().withStations(ownSigmas).model(), TieIn.MEASURED);
    }

    private <T> List<T> each(List<Row> table, Function<Row, Optional<T>> read) {
        List<T> found = new ArrayList<>();
        for (Row row : table) {
            if (row.isReadable()) {
                OptionalDouble depth = row.number("depth_m", NumberRange.DEPTH);
                if (trace.isPresent()
                        && depth.isPresent()
                        && depth.getAsDouble() > trace.get().reach()) {
                    row.fault(
                            "depth_m",
                            "beyond the survey, expected at most "
                                    + NumberRange.text(trace.get().reach()) + " m");
                }
                read.apply(row).ifPresent(found::add);
            }
        }
        return found;
    }

    private static double depth(Row row) {
        return HoleFindings.depth(row).orElseThrow();
    }

    private Optional<OrientationMark> mark(Row row) {
        OptionalDouble degrees = row.optionalNumber("offset_deg", NumberRange.ANY);
        OptionalDouble millimetres = row.optionalNumber("offset_mm", NumberRange.LENGTH_ROUND);
        if (row.has("offset_deg") && row.has("offset_mm")) {
            row.fault("offset_mm", "offset_deg is given too, expected one of the two");
        } else if (!row.has("offset_deg") && !row.has("offset_mm")) {
            row.fault("offset_deg", "blank, expected a number here or under offset_mm");
        }
        OptionalDouble sigma = row.optionalNumber("sigma_deg", NumberRange.SIGMA);
        OptionalDouble ownDiameter = row.optionalNumber("core_diameter_mm", NumberRange.DIAMETER);
        boolean isUsed = !row.has("use") || row.word("use", USES).orElse(true);
        MarkSource source = new MarkSource(row.word("tool"), row.word("crew"), row.word("grade"));
        if (row.isSound() && isUsed) {
            trace.ifPresent(path -> checkSide(row, path));
            Integer before = marksSeen.putIfAbsent(row.content(), row.line());
            if (before != null) {
                // a mark that stands twice would be its own neighbour, and agree
                row.fault("depth_m", "the same mark stands in line " + before + " already");
            }
        }
        if (!row.isSound()) {
            return Optional.empty();
        }
        CoreDiameter diameter = diameter(ownDiameter);
        double offset = degrees.isPresent()
                ? findings.wrapped(row, "offset_deg", degrees.getAsDouble())
                : Degrees.wrap360(diameter.toDegrees(millimetres.getAsDouble()));
        Optional<String> leftOut =
                isUsed ? Optional.empty() : Optional.of(row.text("reason").replaceAll("\\s+", " "));
        return Optional.of(new OrientationMark(depth(row), offset, diameter, sigma, leftOut, source, Optional.empty()));
    }

    private CoreDiameter diameter(OptionalDouble ofMark) {
        OptionalDouble ofHole = collar.map(Collar::coreDiameter).orElse(OptionalDouble.empty());
        if (ofMark.isEmpty() && ofHole.isEmpty()) {
            return settings.coreDiameter();
        }
        return CoreDiameter.ofMillimetres(ofMark.orElseGet(ofHole::getAsDouble));
    }

    private void checkSide(Row row, HoleTrace trace) {
        WallReference asked = settings.markSide();
        // the trace has azimuths from the grid's north; marks mean the north in which the survey was measured
        WallReference side = asked.equals(WallReference.north())
                ? WallReference.azimuth(Degrees.wrap360(trace.survey()
                        .north()
                        .with(trace.survey().measuredFrom())
                        .toAdd(trace.survey().north().north())))
                : asked;
        HoleDirection direction = trace.directionAt(depth(row));
        if (!side.existsIn(direction)) {
            String other = asked.equals(WallReference.north()) ? "low" : "north";
            row.fault(
                    "depth_m",
                    "the hole goes " + direction + " here and has no " + asked
                            + " for a mark to stand for, expected mark.side = " + other);
        }
    }

    private static Optional<Join> join(Row row) {
        Optional<JoinFit> fit = row.word("fit", FITS);
        return row.isSound() ? fit.map(how -> new Join(depth(row), how)) : Optional.empty();
    }

    private void checkJoins() {
        Map<Double, Row> seen = new LinkedHashMap<>();
        for (Row row : rows.joins()) {
            if (row.isSound()) {
                Row before = seen.putIfAbsent(depth(row), row);
                if (before != null) {
                    row.fault(
                            "depth_m", "a join of the hole at this depth stands in line " + before.line() + " already");
                }
            }
        }
    }
}
