package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.SurveyStation;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A station as surveys.csv has it.
 *
 * @param row where it stands
 * @param station depth and direction, from the north of the row
 * @param survey the name of the survey that it belongs to; blank where it has none
 * @param tool what it was measured with
 * @param date when
 * @param north the north of its azimuth; empty where that of the settings holds
 * @param azimuthSigma the row's own
 * @param dipSigma the row's own
 */
record StationRow(
        Row row,
        SurveyStation station,
        String survey,
        Optional<String> tool,
        Optional<LocalDate> date,
        Optional<North> north,
        OptionalDouble azimuthSigma,
        OptionalDouble dipSigma) {

    /** The station of a row; empty, with faults added to the row, where it has none. */
    static Optional<StationRow> read(Row row, JobSettings settings, HoleFindings findings) {
        OptionalDouble depth = row.number("depth_m", NumberRange.DEPTH);
        OptionalDouble azimuth = row.number("azimuth_deg", NumberRange.ANY);
        OptionalDouble dip = row.number("dip_deg", NumberRange.DIP);
        OptionalDouble azimuthSigma = row.optionalNumber("azimuth_sigma_deg", NumberRange.SIGMA);
        OptionalDouble dipSigma = row.optionalNumber("dip_sigma_deg", NumberRange.SIGMA);
        String survey = row.word("survey").orElse("");
        Optional<String> tool = row.word("tool");
        Optional<LocalDate> date = date(row);
        Optional<North> north = row.has("north") ? row.word("north", JobKey.NORTHS) : Optional.empty();
        if (!row.isSound()) {
            return Optional.empty();
        }
        double wrapped = findings.wrapped(row, "azimuth_deg", azimuth.getAsDouble());
        double downNegative = settings.isDipPositiveDown() ? -dip.getAsDouble() : dip.getAsDouble();
        SurveyStation station = new SurveyStation(depth.getAsDouble(), HoleDirection.ofDip(downNegative, wrapped));
        return Optional.of(new StationRow(row, station, survey, tool, date, north, azimuthSigma, dipSigma));
    }

    private static Optional<LocalDate> date(Row row) {
        if (!row.has("date")) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(row.text("date")));
        } catch (DateTimeParseException refused) {
            row.fault("date", "expected a date by ISO 8601, as 2026-03-01");
            return Optional.empty();
        }
    }

    double depth() {
        return station.depth();
    }

    /** The station from grid north. */
    SurveyStation onGrid(NorthReference hole) {
        double added = hole.with(north.orElse(hole.north())).toAdd(North.GRID);
        return new SurveyStation(depth(), station.direction().withAzimuthTurned(added));
    }
}
