package io.github.kernlot.survey.uncertainty;

/** What shares one draw of an error: the propagation modes of the published industry framework for survey errors. */
public enum PropagationMode {
    /** Each station has its own. */
    RANDOM,
    /** All stations of one survey leg share it; another leg has another. */
    SYSTEMATIC,
    /** All stations of one hole share it, whatever the leg. */
    PER_WELL,
    /** All stations of all holes share it. */
    GLOBAL
}
