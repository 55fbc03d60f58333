package io.github.kernlot.survey.combine;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.TraceSettings;
import java.util.Arrays;

/** The arcs of a run. */
final class RunTrace {

    private static final Position ORIGIN = Position.ofEastingNorthingElevation(0, 0, 0);

    final SurveyRun run;
    final HoleTrace trace;
    private final double[] depths;

    RunTrace(SurveyRun run) {
        this.run = run;
        // no answer above the first station is used
        trace = HoleTrace.of(ORIGIN, run.survey(), TraceSettings.assumed().withExtrapolationLimit(run.first()));
        depths = run.survey().stations().stream()
                .mapToDouble(SurveyStation::depth)
                .toArray();
    }

    HoleDirection directionAt(double depth) {
        return trace.directionAt(depth);
    }

    /** Where a depth lies between two stations. */
    Interval intervalAt(double depth) {
        int found = Arrays.binarySearch(depths, depth);
        if (found >= 0) {
            return new Interval(0, 0);
        }
        int lower = -found - 1;
        double length = depths[lower] - depths[lower - 1];
        return new Interval(length, (depth - depths[lower - 1]) / length);
    }

    /** The length of the interval and the fraction of it above a depth; both 0 at a station. */
    record Interval(double length, double fraction) {

        /** What interpolation leaves of the variance of one station: the two ends miss independently. */
        double stationShare() {
            return (1 - fraction) * (1 - fraction) + fraction * fraction;
        }

        /** The variance of a Brownian bridge of variance 1 a metre. */
        double bridge() {
            return length * fraction * (1 - fraction);
        }
    }
}
