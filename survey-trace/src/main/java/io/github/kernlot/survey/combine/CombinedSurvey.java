package io.github.kernlot.survey.combine;

import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.check.Finding;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One survey made of several.
 *
 * @param stations the stations by depth, each with where it came from
 * @param findings what a user should know about how the surveys go together
 */
public record CombinedSurvey(List<CombinedStation> stations, List<Finding> findings) {

    /** Keeps copies of the lists. */
    public CombinedSurvey {
        stations = List.copyOf(stations);
        findings = List.copyOf(findings);
    }

    /**
     * The survey to use, with azimuths from grid north.
     *
     * @return the survey
     * @throws IllegalArgumentException if neighbouring stations are more than 179.9 degrees apart, where one run takes over from
     *     another that points the other way
     */
    public Survey survey() {
        return Survey.of(stations.stream().map(CombinedStation::station).toList(), NorthReference.grid());
    }

    /** One line for each station. */
    @Override
    public String toString() {
        return stations.stream().map(CombinedStation::toString).collect(Collectors.joining("\n"));
    }
}
