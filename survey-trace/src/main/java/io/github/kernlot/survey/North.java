package io.github.kernlot.survey;

/** The north from which an azimuth is counted. */
public enum North {
    /** Geographic north. */
    TRUE,
    /** Where a compass points, at the place and the date of the survey. */
    MAGNETIC,
    /** The north of the grid of the coordinates. */
    GRID
}
