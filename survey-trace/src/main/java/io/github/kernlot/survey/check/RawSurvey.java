package io.github.kernlot.survey.check;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A survey as it was recorded: rows in the order of the record, with its faults. A {@link Survey} could not hold two rows at one
 * depth.
 *
 * @param shots the rows in the order of the record; there may be none
 * @param expected what the tool should have read at the place and the date
 * @param end how deep the hole is, metres along it; empty where it is not known
 */
public record RawSurvey(List<SurveyShot> shots, ToolReadings expected, OptionalDouble end) {

    /**
     * Keeps a copy of the list and checks the end.
     *
     * @throws IllegalArgumentException if the end is negative or not finite
     */
    public RawSurvey {
        shots = List.copyOf(shots);
        end.ifPresent(depth -> Require.notNegative("end of the hole", depth, "m"));
    }

    /**
     * A survey of shots.
     *
     * @param shots the rows in the order of the record
     * @return the survey, with nothing expected of its tool and no end of the hole
     */
    public static RawSurvey of(List<SurveyShot> shots) {
        return new RawSurvey(shots, ToolReadings.none(), OptionalDouble.empty());
    }

    /**
     * A survey of which only the directions are known.
     *
     * @param stations the rows in the order of the record
     * @return the survey
     */
    public static RawSurvey ofStations(List<SurveyStation> stations) {
        return of(stations.stream().map(SurveyShot::of).toList());
    }

    /**
     * A survey that is in use.
     *
     * @param survey the survey
     * @return its stations
     */
    public static RawSurvey of(Survey survey) {
        return ofStations(survey.stations());
    }

    /**
     * The same survey with what its tool should have read.
     *
     * @param other the readings of a sound tool at the place and the date
     * @return the survey
     */
    public RawSurvey withExpected(ToolReadings other) {
        return new RawSurvey(shots, other, end);
    }

    /**
     * The same survey with the end of the hole.
     *
     * @param depth how deep the hole is, metres along it, 0 or more
     * @return the survey
     * @throws IllegalArgumentException if the depth is negative or not finite
     */
    public RawSurvey withEnd(double depth) {
        return new RawSurvey(shots, expected, OptionalDouble.of(depth));
    }

    /** By depth; rows at one depth in the order of the record. */
    List<SurveyShot> byDepth() {
        return shots.stream()
                .sorted(Comparator.comparingDouble(SurveyShot::depth))
                .toList();
    }

    /** How many rows, and the end of the hole. */
    @Override
    public String toString() {
        String deep = end.isPresent() ? String.format(Locale.ROOT, ", hole to %.2f m", end.getAsDouble()) : "";
        return shots.size() + (shots.size() == 1 ? " shot" : " shots") + deep;
    }
}
