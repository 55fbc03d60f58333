package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.LineSimulation;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Simulated holes of three kinds, one after the other: inclined, steep and wandering, upward. Marks every 3 to 6 m with a join at
 * each; of the joins most are locked, some doubtful, few broken.
 */
final class MixedHoles {

    private static final double DOUBTFUL = 0.12;
    private static final double BROKEN = 0.03;
    private static final double STATIONS_APART = 15;
    private static final double LENGTH = 180;

    private MixedHoles() {}

    /** The kind of a hole. */
    enum Kind {
        INCLINED(30, 0.4, 1),
        STEEP(5, 1.2, 25),
        UPWARD(120, 0.4, 1);

        private final double inclination;
        private final double bend;
        private final double swing;

        Kind(double inclination, double bend, double swing) {
            this.inclination = inclination;
            this.bend = bend;
            this.swing = swing;
        }

        static Kind of(long number) {
            return values()[(int) (number % values().length)];
        }
    }

    /** The simulation of one hole, with structures where the true line is wanted. */
    static LineSimulation hole(long number, int structures) {
        SplittableRandom random = new SplittableRandom(number);
        HoleTrace trace = trace(Kind.of(number), random);
        List<Double> marks = new ArrayList<>();
        List<Join> joins = new ArrayList<>();
        for (double depth = random.nextDouble(3, 6); depth < LENGTH; depth += random.nextDouble(3, 6)) {
            marks.add(depth);
            joins.add(new Join(depth, fit(random.nextDouble())));
        }
        List<Double> depths = new ArrayList<>();
        for (int i = 0; i < structures; i++) {
            depths.add(random.nextDouble(LENGTH));
        }
        return new LineSimulation(LineModel.assumed(), trace, CoreDiameter.ofMillimetres(63.5), marks, joins, depths);
    }

    private static JoinFit fit(double drawn) {
        return drawn < BROKEN ? JoinFit.BROKEN : drawn < BROKEN + DOUBTFUL ? JoinFit.DOUBTFUL : JoinFit.LOCKED;
    }

    private static HoleTrace trace(Kind kind, SplittableRandom random) {
        List<SurveyStation> stations = new ArrayList<>();
        double inclination = kind.inclination;
        double azimuth = random.nextDouble(360);
        for (double depth = 0; depth <= LENGTH; depth += STATIONS_APART) {
            stations.add(new SurveyStation(depth, HoleDirection.ofInclination(inclination, wrapped(azimuth))));
            azimuth += kind.swing * random.nextGaussian();
            // a hole stays on its side of the vertical
            inclination = Math.max(2, inclination + kind.bend * random.nextGaussian());
        }
        return HoleTrace.minimumCurvature(
                Position.ofEastingNorthingElevation(0, 0, 0), Survey.of(stations, NorthReference.grid()));
    }

    private static double wrapped(double azimuth) {
        double rest = azimuth - 360 * Math.floor(azimuth / 360);
        return rest >= 360 ? 0 : rest;
    }
}
