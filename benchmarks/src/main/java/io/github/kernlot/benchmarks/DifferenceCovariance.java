package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.uncertainty.EarthReference;
import io.github.kernlot.survey.uncertainty.PropagationMode;
import io.github.kernlot.survey.uncertainty.SurveyErrorModel;
import io.github.kernlot.survey.uncertainty.SurveyErrorSource;
import io.github.kernlot.survey.uncertainty.SurveyedPoint;
import io.github.kernlot.survey.uncertainty.UnitShift;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Covariances of place without a derivative: the trace is built anew for every draw that an error has, each station for itself where
 * it is random, and differences are taken. All stations are one leg, and all err.
 */
final class DifferenceCovariance {

    private final HoleTrace trace;
    private final List<SurveyStation> stations;
    private final List<SurveyedPoint> points;
    private final SurveyErrorModel model;

    DifferenceCovariance(HoleTrace trace, SurveyErrorModel model, EarthReference earth) {
        this.trace = trace;
        this.stations = trace.survey().stations();
        this.model = model;
        double toMagnetic = trace.survey().north().convergence().orElseThrow()
                - trace.survey().north().declination().orElseThrow();
        this.points = stations.stream()
                .map(station -> new SurveyedPoint(
                        station.depth(),
                        station.direction(),
                        trace.displacementAt(station.depth()).down(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(station.direction()
                                .withAzimuthTurned(toMagnetic)
                                .azimuth()),
                        OptionalDouble.empty(),
                        Optional.of(earth)))
                .toList();
    }

    /** Six numbers for each depth: north-north, east-east, down-down, north-east, north-down, east-down. */
    double[][] at(double[] depths) {
        double[][] sums = new double[depths.length][6];
        for (SurveyErrorSource source : model.sources()) {
            if (source.mode() == PropagationMode.RANDOM) {
                for (int i = 0; i < stations.size(); i++) {
                    add(sums, depths, source, i, i + 1);
                }
            } else {
                add(sums, depths, source, 0, stations.size());
            }
        }
        return sums;
    }

    private void add(double[][] sums, double[] depths, SurveyErrorSource source, int from, int to) {
        List<SurveyStation> shifted = new ArrayList<>(stations);
        for (int i = from; i < to; i++) {
            shifted.set(i, shifted(i, source));
        }
        double[] moved = moved(shifted, depths);
        HoleTrace other =
                HoleTrace.of(trace.collar(), Survey.of(shifted, trace.survey().north()), trace.settings());
        for (int i = 0; i < depths.length; i++) {
            Displacement was = trace.displacementAt(depths[i]);
            Displacement is = other.displacementAt(moved[i]);
            double north = is.north() - was.north();
            double east = is.east() - was.east();
            double down = is.down() - was.down();
            double[] sum = sums[i];
            sum[0] += north * north;
            sum[1] += east * east;
            sum[2] += down * down;
            sum[3] += north * east;
            sum[4] += north * down;
            sum[5] += east * down;
        }
    }

    private SurveyStation shifted(int station, SurveyErrorSource source) {
        SurveyStation was = stations.get(station);
        UnitShift shift = source.weighting().at(points.get(station)).times(source.sigma());
        HoleDirection direction = was.direction();
        // the collar is where depth begins
        double depth = was.depth() == 0 ? 0 : was.depth() + shift.depth();
        return new SurveyStation(
                depth,
                HoleDirection.ofVector(
                        direction.north() + shift.north(),
                        direction.east() + shift.east(),
                        direction.down() + shift.down()));
    }

    /** Where depths between stations come to lie when the stations move. */
    private double[] moved(List<SurveyStation> shifted, double[] depths) {
        double[] before = stations.stream().mapToDouble(SurveyStation::depth).toArray();
        double[] moved = new double[depths.length];
        for (int i = 0; i < depths.length; i++) {
            int found = Arrays.binarySearch(before, depths[i]);
            int upper = found >= 0 ? Math.min(found, before.length - 2) : -found - 2;
            double share = (depths[i] - before[upper]) / (before[upper + 1] - before[upper]);
            double above = shifted.get(upper).depth();
            moved[i] = above + share * (shifted.get(upper + 1).depth() - above);
        }
        return moved;
    }
}
