package io.github.kernlot.survey.table;

import java.util.List;
import java.util.stream.Stream;

/**
 * The columns that a table has.
 *
 * @param file the name of the table
 * @param required columns that must stand in the header
 * @param oneOf columns of which one or more must stand there; may be empty
 * @param optional columns that may stand there
 * @param unusedSigmas columns of standard deviations that are checked and not used yet
 * @param unused columns of words that are not used yet
 */
record TableForm(
        String file,
        List<String> required,
        List<String> oneOf,
        List<String> optional,
        List<String> unusedSigmas,
        List<String> unused) {

    static final String SETTINGS = "job.properties";

    static final TableForm HOLES = new TableForm(
            "holes.csv",
            List.of("hole_id", "easting_m", "northing_m", "elevation_m"),
            List.of(),
            List.of("declination_deg", "grid_convergence_deg", "core_diameter_mm", "end_m", "parent_id", "kick_off_m"),
            List.of(),
            List.of());

    static final TableForm SURVEYS = new TableForm(
            "surveys.csv",
            List.of("hole_id", "depth_m", "azimuth_deg", "dip_deg"),
            List.of(),
            List.of("azimuth_sigma_deg", "dip_sigma_deg", "survey", "tool", "date", "north"),
            List.of(),
            List.of());

    static final TableForm MARKS = new TableForm(
            "marks.csv",
            List.of("hole_id", "depth_m"),
            List.of("offset_deg", "offset_mm"),
            List.of("sigma_deg", "core_diameter_mm", "use", "reason", "tool", "crew", "grade"),
            List.of(),
            List.of());

    static final TableForm JOINS = new TableForm(
            "joins.csv", List.of("hole_id", "depth_m", "fit"), List.of(), List.of(), List.of(), List.of());

    static final TableForm STRUCTURES = new TableForm(
            "structures.csv",
            List.of("hole_id", "depth_m", "kind", "alpha_deg", "beta_deg"),
            List.of(),
            List.of("gamma_deg", "axis_angle_deg", "delta_deg", "sense"),
            List.of("alpha_sigma_deg", "beta_sigma_deg"),
            List.of());

    static final TableForm RUNS = new TableForm(
            "runs.csv",
            List.of("hole_id", "from_m", "to_m"),
            List.of(),
            List.of("recovered_m", "tool", "read_tool", "prepared_at", "rods_still_at", "read_at", "marked_at"),
            List.of(),
            List.of());

    static final TableForm LINES = new TableForm(
            "lines.csv",
            List.of("hole_id", "from_m", "to_m", "arrow"),
            List.of(),
            List.of("grade", "drawn_by"),
            List.of(),
            List.of());

    static final TableForm CHECKS = new TableForm(
            "checks.csv",
            List.of("tool", "checked_at", "known_roll_deg", "read_roll_deg"),
            List.of(),
            List.of(),
            List.of(),
            List.of());

    private static final List<String> ORDER = List.of(
            SETTINGS,
            HOLES.file,
            SURVEYS.file,
            MARKS.file,
            JOINS.file,
            STRUCTURES.file,
            LINES.file,
            RUNS.file,
            CHECKS.file);

    /** Where a file comes in the order in which faults are told. */
    static int place(String file) {
        return ORDER.indexOf(file);
    }

    boolean knows(String column) {
        return Stream.of(required, oneOf, optional, unusedSigmas, unused).anyMatch(columns -> columns.contains(column));
    }
}
