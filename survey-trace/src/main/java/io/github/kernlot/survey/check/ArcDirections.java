package io.github.kernlot.survey.check;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.survey.SurveyStation;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Directions on the arcs between stations. */
final class ArcDirections {

    private ArcDirections() {}

    /** The direction at a depth, from stations by increasing depth; empty above the first and below the last. */
    static Optional<HoleDirection> at(List<SurveyStation> stations, double depth) {
        SurveyStation wanted = new SurveyStation(depth, stations.get(0).direction());
        int found = Collections.binarySearch(stations, wanted, Comparator.comparingDouble(SurveyStation::depth));
        if (found >= 0) {
            return Optional.of(stations.get(found).direction());
        }
        int lower = -found - 1;
        if (lower == 0 || lower == stations.size()) {
            return Optional.empty();
        }
        Bend bend = new Bend(stations.get(lower - 1), stations.get(lower));
        return Optional.of(Bend.direction(Bend.along(
                Bend.vector(bend.upper().direction()),
                Bend.vector(bend.lower().direction()),
                (depth - bend.upper().depth()) / bend.length())));
    }
}
