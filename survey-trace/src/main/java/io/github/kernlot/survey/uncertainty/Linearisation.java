package io.github.kernlot.survey.uncertainty;

/** By which derivatives errors of stations become errors of place. */
public enum Linearisation {
    /** The exact derivatives of the arcs of minimum curvature. */
    ARCS,
    /** Those of two straight halves, as the published framework takes them: to compare with published results. */
    BALANCED_TANGENTIAL
}
