package io.github.kernlot.survey.combine;

import io.github.kernlot.survey.SurveyStation;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A station of a combined survey.
 *
 * @param station the depth and the direction
 * @param shares what each run is worth in it, by the run's name; they sum to 1
 * @param misfit how far from it the farthest of those runs points, degrees in [0, 180]
 * @param alongSigma sigma along the vertical from chance errors alone, degrees; empty where nothing was weighed
 * @param acrossSigma sigma across the vertical from chance errors alone, degrees: that of the azimuth times sin I; empty where nothing was
 *     weighed
 */
public record CombinedStation(
        SurveyStation station,
        Map<String, Double> shares,
        double misfit,
        OptionalDouble alongSigma,
        OptionalDouble acrossSigma) {

    /** Keeps a copy of the shares, by name. */
    public CombinedStation {
        shares = Collections.unmodifiableMap(new TreeMap<>(shares));
    }

    static CombinedStation from(SurveyRun run, SurveyStation station) {
        return new CombinedStation(station, Map.of(run.name(), 1.0), 0, OptionalDouble.empty(), OptionalDouble.empty());
    }

    String sources() {
        return String.join(" and ", shares.keySet());
    }

    /** The station and its sources: {@code 30.00 m -60.0/090.0 (dip/azimuth) from gyro 0.92, multishot 0.08}. */
    @Override
    public String toString() {
        return station + " from "
                + shares.entrySet().stream()
                        .map(share -> String.format(Locale.ROOT, "%s %.2f", share.getKey(), share.getValue()))
                        .collect(Collectors.joining(", "));
    }
}
