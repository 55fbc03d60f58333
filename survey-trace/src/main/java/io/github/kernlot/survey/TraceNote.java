package io.github.kernlot.survey;

import java.util.Locale;

/**
 * Something that a desurvey method settled because the survey does not tell it.
 *
 * @param depth the station where it was settled, metres along the hole
 * @param what what was settled, in one sentence
 */
public record TraceNote(double depth, String what) {

    /** The note with its depth: {@code at 30.00 m: ...}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "at %.2f m: %s", depth, what);
    }
}
