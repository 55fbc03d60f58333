package io.github.kernlot.survey.combine;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.Finding.Level;
import io.github.kernlot.survey.check.SurveyLimit;
import io.github.kernlot.survey.check.SurveyLimits;
import io.github.kernlot.survey.uncertainty.Covariance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Two surveys of one hole side by side, over the depths that both describe. There both are taken to begin at one place, so that what
 * lies above, where one of them has no station, takes no part.
 */
public final class SurveyComparison {

    private final RunTrace first;
    private final RunTrace second;
    private final double from;
    private final double to;
    private final List<Misclose> rows;

    private SurveyComparison(SurveyRun first, SurveyRun second) {
        this.first = new RunTrace(first);
        this.second = new RunTrace(second);
        from = Math.max(first.first(), second.first());
        to = Math.min(first.last(), second.last());
        if (!(from < to)) {
            throw new IllegalArgumentException("survey " + first.name() + " covers " + first.range() + " and "
                    + second.name() + " " + second.range() + "; expected a stretch that both cover");
        }
        rows = Stream.of(first, second)
                .flatMap(run -> run.survey().stations().stream())
                .map(SurveyStation::depth)
                .filter(depth -> depth >= from && depth <= to)
                .distinct()
                .sorted()
                .map(this::at)
                .toList();
    }

    /**
     * Compares two surveys.
     *
     * @param first a survey
     * @param second another survey of the same hole
     * @return the comparison
     * @throws IllegalArgumentException if there is no stretch of depth that both cover
     */
    public static SurveyComparison of(SurveyRun first, SurveyRun second) {
        return new SurveyComparison(first, second);
    }

    /**
     * Where the comparison begins: the deeper of the two first stations. The places agree there.
     *
     * @return metres along the hole
     */
    public double from() {
        return from;
    }

    /**
     * Where the comparison ends: the less deep of the two last stations.
     *
     * @return metres along the hole
     */
    public double to() {
        return to;
    }

    /**
     * The differences at the stations of both.
     *
     * @return by depth, from {@link #from} to {@link #to}
     */
    public List<Misclose> rows() {
        return rows;
    }

    /**
     * The difference at any depth, each survey on its own arcs.
     *
     * @param depth metres along the hole, from {@link #from} to {@link #to}
     * @return the difference
     * @throws IllegalArgumentException if the depth lies outside
     */
    public Misclose at(double depth) {
        Require.inRange("depth", depth, from, to, "m");
        Displacement one = way(first, depth);
        Displacement other = way(second, depth);
        return new Misclose(
                depth,
                new Displacement(other.north() - one.north(), other.east() - one.east(), other.down() - one.down()),
                first.directionAt(depth),
                second.directionAt(depth));
    }

    private Displacement way(RunTrace run, double depth) {
        Displacement start = run.trace.displacementAt(from);
        Displacement end = run.trace.displacementAt(depth);
        return new Displacement(end.north() - start.north(), end.east() - start.east(), end.down() - start.down());
    }

    /**
     * Where the two places lie farthest apart.
     *
     * @return one of the rows
     */
    public Misclose farthest() {
        return rows.stream()
                .max(Comparator.comparingDouble(row -> row.way().length()))
                .orElseThrow();
    }

    /**
     * What is to be said where no covariances are known: whether the surveys end farther apart than a share of the length that both
     * describe.
     *
     * @param limits with {@link SurveyLimit#MISCLOSE}
     * @return what was found; empty where there is nothing to say
     */
    public List<Finding> findings(SurveyLimits limits) {
        Misclose last = rows.get(rows.size() - 1);
        double share = 100 * last.way().length() / (to - from);
        return limits
                .exceeded(SurveyLimit.MISCLOSE, "distance", share)
                .map(Finding.at(to, Level.WARNING, names() + " end apart; " + last)::measured)
                .stream()
                .toList();
    }

    /**
     * What is to be said where covariances are known: whether the distance where the surveys end is more than they allow, by one test at
     * one depth, since the rows above are no evidence of their own.
     *
     * @param ofFirst the covariance of the way from {@link #from} to a depth by the first survey, metres squared
     * @param ofSecond that of the second, independent of it
     * @param confidence how rarely chance alone may be blamed, within [0, 1), such as 0.95
     * @return what was found; empty where there is nothing to say
     * @throws IllegalArgumentException if the confidence lies outside [0, 1)
     */
    public List<Finding> findings(
            DoubleFunction<Covariance> ofFirst, DoubleFunction<Covariance> ofSecond, double confidence) {
        if (!(confidence >= 0 && confidence < 1)) {
            throw new IllegalArgumentException("confidence is " + confidence + "; expected within [0, 1)");
        }
        Misclose last = rows.get(rows.size() - 1);
        Optional<ChiSquare> test = last.test(ofFirst.apply(to), ofSecond.apply(to));
        List<Finding> found = new ArrayList<>();
        test.filter(result -> result.statistic() > result.limit(confidence))
                .ifPresent(result -> found.add(Finding.at(
                        to,
                        Level.WARNING,
                        String.format(
                                Locale.ROOT,
                                "%s end farther apart than their uncertainties allow: %s, limit %.2f; %s",
                                names(),
                                result,
                                result.limit(confidence),
                                last))));
        return found;
    }

    private String names() {
        return first.run.name() + " and " + second.run.name();
    }

    /** One line for each row. */
    @Override
    public String toString() {
        return rows.stream().map(Misclose::toString).collect(Collectors.joining("\n"));
    }
}
