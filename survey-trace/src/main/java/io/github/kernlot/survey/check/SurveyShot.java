package io.github.kernlot.survey.check;

import io.github.kernlot.survey.SurveyStation;

/**
 * One row of a survey as it was recorded.
 *
 * @param station the depth and the direction
 * @param readings what the tool read beside them
 */
public record SurveyShot(SurveyStation station, ToolReadings readings) {

    /**
     * A shot of which only the direction is known.
     *
     * @param station the depth and the direction
     * @return the shot
     */
    public static SurveyShot of(SurveyStation station) {
        return new SurveyShot(station, ToolReadings.none());
    }

    double depth() {
        return station.depth();
    }

    /** The station. */
    @Override
    public String toString() {
        return station.toString();
    }
}
