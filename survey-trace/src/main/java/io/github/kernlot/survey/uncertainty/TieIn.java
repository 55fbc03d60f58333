package io.github.kernlot.survey.uncertainty;

/** What is known of the first station, on which a survey is tied. */
public enum TieIn {
    /** The first station is exact in depth and direction, as the published framework takes it. */
    ERROR_FREE,
    /** The first station was measured like all others, as in a hole surveyed from the collar; at depth 0 its depth is exact. */
    MEASURED
}
