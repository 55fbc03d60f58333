package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Require;

/**
 * A stretch of a hole surveyed in one go with one tool.
 *
 * @param from the depth where it begins, metres along the hole: its stations lie deeper, since it ties on to the station there; the
 *     first leg begins at 0 and has that station too
 * @param model the errors of its tool
 */
public record SurveyLeg(double from, SurveyErrorModel model) {

    /**
     * Checks the depth.
     *
     * @throws IllegalArgumentException if the depth is negative or not finite
     */
    public SurveyLeg {
        from = Require.notNegative("beginning of a survey leg", from, "m");
    }
}
