package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.check.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the stations of one hole and makes its trace. */
final class TraceReader {

    private final HoleRows rows;
    private final JobSettings settings;
    private final HoleFindings findings;
    private final List<Placed> stations = new ArrayList<>();

    private record Placed(Row row, SurveyStation station) {}

    TraceReader(HoleRows rows, JobSettings settings, HoleFindings findings) {
        this.rows = rows;
        this.settings = settings;
        this.findings = findings;
    }

    /** The trace; empty, with faults added to the rows, where there is none. */
    Optional<HoleTrace> read(Optional<Collar> collar) {
        for (Row row : rows.stations()) {
            if (row.isReadable()) {
                read(row);
            }
        }
        stations.sort(Comparator.comparingDouble(placed -> placed.station.depth()));
        checkDepths();
        if (rows.stations().isEmpty() || !rows.stations().stream().allMatch(Row::isSound) || !settings.isSound()) {
            return Optional.empty();
        }
        checkDoglegs();
        checkFirst();
        return rows.stations().stream().allMatch(Row::isSound) ? collar.flatMap(this::trace) : Optional.empty();
    }

    private void read(Row row) {
        OptionalDouble depth = row.number("depth_m", NumberRange.DEPTH);
        OptionalDouble azimuth = row.number("azimuth_deg", NumberRange.ANY);
        OptionalDouble dip = row.number("dip_deg", NumberRange.DIP);
        row.form().unusedSigmas().forEach(column -> row.optionalNumber(column, NumberRange.SIGMA));
        if (row.isSound()) {
            double wrapped = findings.wrapped(row, "azimuth_deg", azimuth.getAsDouble());
            double downNegative = settings.isDipPositiveDown() ? -dip.getAsDouble() : dip.getAsDouble();
            stations.add(new Placed(
                    row, new SurveyStation(depth.getAsDouble(), HoleDirection.ofDip(downNegative, wrapped))));
        }
    }

    private void checkDepths() {
        for (int i = 1; i < stations.size(); i++) {
            Placed upper = stations.get(i - 1);
            Placed lower = stations.get(i);
            if (upper.station.depth() == lower.station.depth()) {
                boolean inOrder = upper.row.line() < lower.row.line();
                Row first = inOrder ? upper.row : lower.row;
                Row second = inOrder ? lower.row : upper.row;
                second.fault(
                        "depth_m", "a station of the hole at this depth stands in line " + first.line() + " already");
            }
        }
    }

    private void checkDoglegs() {
        for (int i = 1; i < stations.size(); i++) {
            Placed upper = stations.get(i - 1);
            Placed lower = stations.get(i);
            try {
                Survey.of(List.of(upper.station, lower.station), NorthReference.grid());
            } catch (IllegalArgumentException refused) {
                lower.row.fault(
                        "dip_deg", "with the station in line " + upper.row.line() + ": " + refused.getMessage());
            }
        }
    }

    private void checkFirst() {
        Placed first = stations.get(0);
        if (first.station.depth() > settings.extrapolationLimit()) {
            first.row.fault(
                    "depth_m",
                    "the first station of the hole, expected at most "
                            + NumberRange.text(settings.extrapolationLimit())
                            + " m from the collar (survey.extrapolation_limit_m)");
        }
    }

    private Optional<HoleTrace> trace(Collar collar) {
        Survey survey = Survey.of(stations.stream().map(Placed::station).toList(), collar.north());
        HoleTrace trace = HoleTrace.of(collar.position(), survey.toGrid(), settings.trace());
        trace.notes().forEach(note -> findings.tell(Finding.at(note.depth(), Finding.Level.INFO, note.what())));
        return Optional.of(trace);
    }
}
