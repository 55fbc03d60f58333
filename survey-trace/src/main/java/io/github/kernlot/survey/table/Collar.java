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
 * @param position the collar
 * @param north the north of the survey with what is known of the others
 * @param coreDiameter the diameter of the hole's core, mm
 */
record Collar(Position position, NorthReference north, OptionalDouble coreDiameter) {

    /** The collar of a hole; empty, with faults added to its rows, where it cannot be told. */
    static Optional<Collar> read(List<Row> rows, JobSettings settings) {
        Optional<Collar> collar = Optional.empty();
        for (Row row : rows) {
            if (row != rows.get(0)) {
                row.fault("hole_id", "the hole stands in line " + rows.get(0).line() + " already");
            }
            if (row.isReadable()) {
                collar = read(row, settings);
            }
        }
        return rows.stream().allMatch(Row::isSound) ? collar : Optional.empty();
    }

    private static Optional<Collar> read(Row row, JobSettings settings) {
        OptionalDouble easting = row.number("easting_m", NumberRange.COORDINATE);
        OptionalDouble northing = row.number("northing_m", NumberRange.COORDINATE);
        OptionalDouble elevation = row.number("elevation_m", NumberRange.COORDINATE);
        OptionalDouble declination = row.optionalNumber("declination_deg", NumberRange.TURN);
        OptionalDouble convergence = row.optionalNumber("grid_convergence_deg", NumberRange.TURN);
        OptionalDouble diameter = row.optionalNumber("core_diameter_mm", NumberRange.DIAMETER);
        if (settings.isSound()) {
            checkNorths(row, settings);
        }
        return row.isSound()
                ? Optional.of(new Collar(
                        Position.ofEastingNorthingElevation(
                                easting.getAsDouble(), northing.getAsDouble(), elevation.getAsDouble()),
                        new NorthReference(settings.surveyNorth(), declination, convergence),
                        diameter))
                : Optional.empty();
    }

    /** Azimuths go from the survey's north to the grid's, which is that of the trace, and on to that of the results. */
    private static void checkNorths(Row row, JobSettings settings) {
        North survey = settings.surveyNorth();
        North output = settings.outputNorth();
        boolean isTurned = survey != North.GRID || output != North.GRID;
        if (isTurned && !row.has("grid_convergence_deg")) {
            row.fault("grid_convergence_deg", expected(survey, output));
        }
        if ((survey == North.MAGNETIC || output == North.MAGNETIC) && !row.has("declination_deg")) {
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
