package io.github.kernlot.survey.combine;

import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.Finding.Level;
import io.github.kernlot.survey.check.SurveyLimits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Makes one survey of several of one hole. */
public final class SurveyCombination {

    /** How far the direction of a hole is assumed to wander between stations, degrees per square root of a metre. */
    public static final double ASSUMED_WANDER = 0.05;

    private SurveyCombination() {}

    /**
     * Takes each stretch of the hole from the first survey that covers it: a survey gives its stations only where no survey before it in
     * the list reaches from its first station to its last. Ranges of depth are chosen with {@link SurveyRun#between}.
     *
     * @param runs at least one run, the most trusted first, no two of one name
     * @return the combined survey
     * @throws IllegalArgumentException if there is no run or two have one name
     */
    public static CombinedSurvey preferring(List<SurveyRun> runs) {
        checkNames(runs);
        List<CombinedStation> stations = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            SurveyRun run = runs.get(i);
            List<SurveyRun> better = runs.subList(0, i);
            run.survey().stations().stream()
                    .filter(station -> better.stream().noneMatch(other -> other.covers(station.depth())))
                    .forEach(station -> stations.add(CombinedStation.from(run, station)));
        }
        stations.sort(Comparator.comparingDouble(one -> one.station().depth()));
        return new CombinedSurvey(stations, seams(stations));
    }

    /**
     * The weighted mean of all surveys at the depths of all their stations, with {@link #ASSUMED_WANDER} and the limits to begin with.
     *
     * @param runs at least one run, no two of one name, in any order
     * @return the combined survey
     * @throws IllegalArgumentException if there is no run, two have one name, or two point more than 90 degrees apart at one depth
     */
    public static CombinedSurvey weighing(List<SurveyRun> runs) {
        return weighing(runs, ASSUMED_WANDER, SurveyLimits.assumed());
    }

    /**
     * The weighted mean of all surveys at the depths of all their stations, by least squares on the tangent plane with the sigmas of
     * each run. Between its own stations a run speaks by its arc: there its variance is {@code ((1-f)^2 + f^2)} times that of a
     * station, f the fraction of the interval, and {@code wander^2 L f (1-f)} more, since nobody saw what the hole did in the interval of
     * length L.
     *
     * <p>Only chance errors are weighed. What all stations of a run share, such as an offset of its azimuth, is neither estimated nor
     * taken off; it is told where it shows.
     *
     * @param runs at least one run, no two of one name, in any order
     * @param wander how far the direction of the hole wanders, degrees per square root of a metre, 0 or more
     * @param limits what the differences between the runs are held against
     * @return the combined survey
     * @throws IllegalArgumentException if there is no run, two have one name, two point more than 90 degrees apart at one depth, or the
     *     wander is negative or not finite
     */
    public static CombinedSurvey weighing(List<SurveyRun> runs, double wander, SurveyLimits limits) {
        checkNames(runs);
        Weighing weighing = new Weighing(runs, wander);
        List<CombinedStation> stations = weighing.stations();
        List<Finding> findings = new ArrayList<>(weighing.findings(limits));
        findings.addAll(seams(stations));
        return new CombinedSurvey(stations, findings);
    }

    private static void checkNames(List<SurveyRun> runs) {
        if (runs.isEmpty()) {
            throw new IllegalArgumentException("no survey to combine; expected at least one");
        }
        Set<String> names = new HashSet<>();
        for (SurveyRun run : runs) {
            if (!names.add(run.name())) {
                throw new IllegalArgumentException("two surveys are called " + run.name() + "; expected one");
            }
        }
    }

    /** Where stations begin to come from other runs: a bend there may be the difference between the runs. */
    private static List<Finding> seams(List<CombinedStation> stations) {
        List<Finding> seams = new ArrayList<>();
        for (int i = 1; i < stations.size(); i++) {
            CombinedStation upper = stations.get(i - 1);
            CombinedStation lower = stations.get(i);
            if (!upper.shares().keySet().equals(lower.shares().keySet())) {
                seams.add(Finding.at(
                        lower.station().depth(),
                        Level.INFO,
                        String.format(
                                Locale.ROOT,
                                "the direction comes from %s, at %.2f m from %s; from there it bends by %.2f degrees",
                                lower.sources(),
                                upper.station().depth(),
                                upper.sources(),
                                upper.station()
                                        .direction()
                                        .angleTo(lower.station().direction()))));
            }
        }
        return seams;
    }
}
