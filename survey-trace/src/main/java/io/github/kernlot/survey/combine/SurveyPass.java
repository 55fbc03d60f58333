package io.github.kernlot.survey.combine;

/** Which way a tool went while it measured. */
public enum SurveyPass {
    /** Into the hole: the in-run. */
    IN,
    /** Out of the hole: the out-run. */
    OUT
}
