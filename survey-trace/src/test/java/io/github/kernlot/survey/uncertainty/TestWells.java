package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.TraceSettings;
import io.github.kernlot.survey.Traces;
import java.util.List;
import java.util.OptionalDouble;

/** Holes whose magnetic north is known. */
final class TestWells {

    private static final double REACH = 1e4;

    private TestWells() {}

    /** A hole of stations written as depth, inclination and azimuth, with declination 7 and convergence -2. */
    static HoleTrace magnetic(String stations) {
        return magnetic(Traces.of(stations).survey().stations());
    }

    static HoleTrace magnetic(List<SurveyStation> stations) {
        NorthReference north = new NorthReference(North.GRID, OptionalDouble.of(7), OptionalDouble.of(-2));
        return HoleTrace.of(
                Traces.COLLAR,
                Survey.of(stations, north),
                TraceSettings.assumed().withExtrapolationLimit(REACH));
    }
}
