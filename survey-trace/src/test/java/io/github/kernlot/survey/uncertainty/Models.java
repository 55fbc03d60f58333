package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import java.util.ArrayList;
import java.util.List;

/** Models and holes for tests. */
final class Models {

    static final EarthReference EARTH = new EarthReference(9.8, 50000, 65);

    private Models() {}

    static SurveyErrorModel of(SurveyErrorSource... sources) {
        return new SurveyErrorModel("test", List.of(sources));
    }

    static SurveyErrorSource source(PropagationMode mode, double sigma, ErrorWeighting weighting) {
        return new SurveyErrorSource("it", sigma, "deg", mode, weighting);
    }

    static SurveyErrorSource azimuth(PropagationMode mode) {
        return source(mode, 1, point -> point.swung(1));
    }

    static SurveyErrorSource inclination(PropagationMode mode) {
        return source(mode, 1, point -> point.inclined(1));
    }

    static HoleTrace straight(int intervals, double interval, double inclination, double azimuth) {
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i <= intervals; i++) {
            stations.add(SurveyStation.ofInclination(i * interval, inclination, azimuth));
        }
        return Traces.of(stations);
    }

    static TraceUncertainty of(HoleTrace trace, SurveyErrorModel model) {
        return of(trace, model, TieIn.MEASURED);
    }

    static TraceUncertainty of(HoleTrace trace, SurveyErrorModel model, TieIn tieIn) {
        return TraceUncertainty.of(
                trace, SurveyErrorSetup.of(model, tieIn).with(EARTH).withToolface(20));
    }
}
