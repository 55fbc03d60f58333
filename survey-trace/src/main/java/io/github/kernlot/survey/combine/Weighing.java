package io.github.kernlot.survey.combine;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.check.AzimuthOffset;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.Finding.Level;
import io.github.kernlot.survey.check.SurveyLimit;
import io.github.kernlot.survey.check.SurveyLimits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** The weighted mean of several runs, depth by depth. */
final class Weighing {

    private final List<RunTrace> traces;
    private final double wander;
    private final List<CombinedStation> stations = new ArrayList<>();
    private double statistic;
    private int freedoms;

    Weighing(List<SurveyRun> runs, double wander) {
        this.wander = Require.notNegative("wander", wander, "degrees per square root of a metre");
        // sums do not depend on the order in which the runs were given
        traces = runs.stream()
                .sorted(Comparator.comparing(SurveyRun::name))
                .map(RunTrace::new)
                .toList();
        runs.stream()
                .flatMap(run -> run.survey().stations().stream())
                .mapToDouble(SurveyStation::depth)
                .distinct()
                .sorted()
                .forEach(this::weigh);
    }

    List<CombinedStation> stations() {
        return stations;
    }

    private void weigh(double depth) {
        List<RunTrace> here =
                traces.stream().filter(trace -> trace.run.covers(depth)).toList();
        if (here.size() == 1) {
            RunTrace only = here.get(0);
            stations.add(CombinedStation.from(only.run, new SurveyStation(depth, only.directionAt(depth))));
            return;
        }
        checkApart(here, depth);
        DirectionMean mean =
                DirectionMean.of(here.stream().map(trace -> part(trace, depth)).toList());
        stations.add(station(depth, here, mean));
        statistic += mean.statistic;
        freedoms += 2 * (here.size() - 1);
    }

    private DirectionMean.Part part(RunTrace trace, double depth) {
        RunTrace.Interval interval = trace.intervalAt(depth);
        DirectionSigma sigma = trace.run.sigma();
        return new DirectionMean.Part(
                DirectionMean.vector(trace.directionAt(depth)),
                sigma.dip() * sigma.dip() * interval.stationShare() + wander * wander * interval.bridge(),
                sigma.azimuth() * sigma.azimuth() * interval.stationShare());
    }

    private static CombinedStation station(double depth, List<RunTrace> here, DirectionMean mean) {
        HoleDirection direction = HoleDirection.ofVector(mean.mean.north(), mean.mean.east(), mean.mean.down());
        Map<String, Double> shares = new LinkedHashMap<>();
        double misfit = 0;
        for (int i = 0; i < here.size(); i++) {
            shares.put(here.get(i).run.name(), mean.shares[i]);
            misfit = Math.max(misfit, here.get(i).directionAt(depth).angleTo(direction));
        }
        return new CombinedStation(
                new SurveyStation(depth, direction),
                shares,
                misfit,
                OptionalDouble.of(mean.alongSigma),
                OptionalDouble.of(mean.acrossSigma));
    }

    private static void checkApart(List<RunTrace> here, double depth) {
        for (int i = 1; i < here.size(); i++) {
            for (int j = 0; j < i; j++) {
                double apart =
                        here.get(i).directionAt(depth).angleTo(here.get(j).directionAt(depth));
                if (!(apart <= DirectionMean.FARTHEST)) {
                    throw new IllegalArgumentException(String.format(
                            Locale.ROOT,
                            "at %.2f m the surveys %s and %s point %.1f degrees apart; expected at most %.0f",
                            depth,
                            here.get(j).run.name(),
                            here.get(i).run.name(),
                            apart,
                            DirectionMean.FARTHEST));
                }
            }
        }
    }

    /** How the runs go together. */
    List<Finding> findings(SurveyLimits limits) {
        List<Finding> findings = new ArrayList<>();
        if (freedoms > 0) {
            limits.exceeded(
                            SurveyLimit.DISAGREEMENT,
                            "root mean square difference over what the sigmas allow",
                            Math.sqrt(statistic / freedoms))
                    .map(Finding.ofHole(Level.WARNING, "the surveys differ more than their sigmas allow")::measured)
                    .ifPresent(findings::add);
        }
        for (int i = 1; i < traces.size(); i++) {
            for (int j = 0; j < i; j++) {
                offset(traces.get(j).run, traces.get(i).run, limits, findings);
            }
        }
        return findings;
    }

    private static void offset(SurveyRun first, SurveyRun second, SurveyLimits limits, List<Finding> findings) {
        AzimuthOffset.whereComparable(first.survey(), second.survey())
                .filter(offset -> Math.abs(offset.degrees()) > 3 * offset.standardError())
                .ifPresent(offset -> limits.exceeded(SurveyLimit.AZIMUTH_OFFSET, "offset", offset.degrees())
                        .map(Finding.ofHole(
                                Level.WARNING,
                                "the azimuths of " + second.name() + " less those of " + first.name() + " are " + offset
                                        + " throughout; the mean has not been freed of it")::measured)
                        .ifPresent(findings::add));
    }
}
