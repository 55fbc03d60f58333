package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.uncertainty.EarthReference;
import io.github.kernlot.survey.uncertainty.PropagationMode;
import io.github.kernlot.survey.uncertainty.SurveyErrorModel;
import io.github.kernlot.survey.uncertainty.SurveyErrorSource;
import io.github.kernlot.survey.uncertainty.SurveyErrorTerms;
import io.github.kernlot.survey.uncertainty.ToolAxis;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/** A hole that wanders, with twelve errors, two of them of each station alone. */
final class SurveyedHole {

    static final EarthReference EARTH = new EarthReference(9.8, 52000, 60);
    private static final double INTERVAL = 10;

    private SurveyedHole() {}

    static HoleTrace of(int stations) {
        SplittableRandom random = new SplittableRandom(3);
        List<SurveyStation> all = new ArrayList<>();
        double inclination = 30;
        double azimuth = 50;
        for (int i = 0; i < stations; i++) {
            all.add(SurveyStation.ofInclination(INTERVAL * i, inclination, azimuth));
            inclination = Math.max(2, Math.min(100, inclination + random.nextDouble(-0.5, 0.55)));
            azimuth = (azimuth + random.nextDouble(-1, 1.2) + 360) % 360;
        }
        NorthReference north = new NorthReference(North.GRID, OptionalDouble.of(6), OptionalDouble.of(-1));
        return HoleTrace.minimumCurvature(Position.ofEastingNorthingElevation(0, 0, 0), Survey.of(all, north));
    }

    static SurveyErrorModel model() {
        List<SurveyErrorSource> sources = new ArrayList<>(List.of(
                SurveyErrorTerms.depthRandom(0.05),
                new SurveyErrorSource("azimuth", 0.5, "deg", PropagationMode.RANDOM, point -> point.swung(1)),
                SurveyErrorTerms.depthScale(2e-4),
                SurveyErrorTerms.depthStretch(2e-7),
                SurveyErrorTerms.accelerometerBias(ToolAxis.Z, 0.004),
                SurveyErrorTerms.magnetometerBias(ToolAxis.Z, 70),
                SurveyErrorTerms.axialInterferenceConstant(0.25),
                SurveyErrorTerms.axialInterferenceVariable(0.6),
                SurveyErrorTerms.sag(0.2),
                SurveyErrorTerms.declination(0.36)));
        sources.addAll(SurveyErrorTerms.misalignmentAcross(0.06));
        return new SurveyErrorModel("twelve errors", sources);
    }

    /** Depths spread over the hole, most of them between stations. */
    static double[] depths(int stations, int count) {
        double[] depths = new double[count];
        for (int i = 0; i < count; i++) {
            depths[i] = INTERVAL * (stations - 1) * (i + 0.5) / count;
        }
        return depths;
    }
}
