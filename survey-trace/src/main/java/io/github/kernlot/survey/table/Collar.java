package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.NorthReference;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What holes.csv says of one hole.
 *
 * @param position the collar; of a branch that of the hole it leaves
 * @param north the north of the survey with what is known of the others
 * @param coreDiameter the diameter of the hole's core, mm
 * @param end how deep the hole is, metres along it
 * @param kickOff where a branch leaves its parent, metres along the hole; empty for a hole that is no branch
 */
record Collar(
        Position position,
        NorthReference north,
        OptionalDouble coreDiameter,
        OptionalDouble end,
        OptionalDouble kickOff) {

    private static final List<String> COORDINATES = List.of("easting_m", "northing_m", "elevation_m");

    /** The collar of a hole; empty, with faults added to its rows, where it cannot be told. */
    static Optional<Collar> read(List<Row> rows, JobSettings settings, Optional<Collar> parent) {
        Optional<Collar> collar = Optional.empty();
        for (Row row : rows) {
            if (row != rows.get(0)) {
                row.fault("hole_id", "the hole stands in line " + rows.get(0).line() + " already");
            }
            if (row.isReadable()) {
                collar = read(row, settings, parent);
            }
        }
        return rows.stream().allMatch(Row::isSound) ? collar : Optional.empty();
    }

    private static Optional<Collar> read(Row row, JobSettings settings, Optional<Collar> parent) {
        boolean isBranch = row.has("parent_id");
        List<OptionalDouble> place = COORDINATES.stream()
                .map(column -> isBranch
                        ? row.optionalNumber(column, NumberRange.COORDINATE)
                        : row.number(column, NumberRange.COORDINATE))
                .toList();
        NorthReference north = new NorthReference(
                settings.surveyNorth(),
                angle(row, "declination_deg", parent.map(hole -> hole.north.declination())),
                angle(row, "grid_convergence_deg", parent.map(hole -> hole.north.convergence())));
        OptionalDouble diameter = row.optionalNumber("core_diameter_mm", NumberRange.DIAMETER);
        OptionalDouble end = row.optionalNumber("end_m", NumberRange.DEPTH);
        OptionalDouble kickOff = row.optionalNumber("kick_off_m", NumberRange.DEPTH);
        if (isBranch != row.has("kick_off_m")) {
            row.fault(
                    isBranch ? "kick_off_m" : "parent_id",
                    "blank, expected both parent_id and kick_off_m of a hole that leaves another, or none");
        }
        // a branch whose parent could not be read has a fault already, and not for want of a convergence
        if (settings.isSound() && (!isBranch || parent.isPresent())) {
            checkNorths(row, settings, north);
        }
        if (!row.isSound() || (isBranch && parent.isEmpty())) {
            return Optional.empty();
        }
        Position position = parent.map(Collar::position)
                .orElseGet(() -> Position.ofEastingNorthingElevation(
                        place.get(0).getAsDouble(),
                        place.get(1).getAsDouble(),
                        place.get(2).getAsDouble()));
        return Optional.of(new Collar(position, north, diameter, end, kickOff));
    }

    private static OptionalDouble angle(Row row, String column, Optional<OptionalDouble> ofParent) {
        OptionalDouble own = row.optionalNumber(column, NumberRange.TURN);
        return row.has(column) ? own : ofParent.orElse(own);
    }

    /** Azimuths go from the survey's north to the grid's, which is that of the trace, and on to that of the results. */
    private static void checkNorths(Row row, JobSettings settings, NorthReference north) {
        North survey = settings.surveyNorth();
        North output = settings.outputNorth();
        boolean isTurned = survey != North.GRID || output != North.GRID;
        if (isTurned && north.convergence().isEmpty()) {
            row.fault("grid_convergence_deg", expected(survey, output));
        }
        if ((survey == North.MAGNETIC || output == North.MAGNETIC)
                && north.declination().isEmpty()) {
            row.fault("declination_deg", expected(survey, output));
        }
    }

    private static String expected(North survey, North output) {
        return "blank, expected a number, because survey.north is " + word(survey) + " and output.north is "
                + word(output) + ", and coordinates are on the grid";
    }

    private static String word(North north) {
        return north.name().toLowerCase(Locale.ROOT);
    }
}
