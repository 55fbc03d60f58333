package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.Finding.Level;
import io.github.kernlot.survey.check.SurveyChecks;
import io.github.kernlot.survey.combine.CombinedStation;
import io.github.kernlot.survey.combine.CombinedSurvey;
import io.github.kernlot.survey.combine.SurveyCombination;
import io.github.kernlot.survey.combine.SurveyComparison;
import io.github.kernlot.survey.combine.SurveyRun;
import io.github.kernlot.survey.uncertainty.StationSigma;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Makes one survey of the several that a hole has, and tells how they go together. */
final class SurveyMerger {

    private final JobSettings settings;
    private final NorthReference hole;
    private final HoleFindings findings;

    SurveyMerger(JobSettings settings, NorthReference hole, HoleFindings findings) {
        this.settings = settings;
        this.hole = hole;
        this.findings = findings;
    }

    /**
     * One survey with what its stations have in place of the sigmas of the settings.
     *
     * @param survey from grid north
     * @param ownSigmas of its stations
     */
    record Merged(Survey survey, List<StationSigma> ownSigmas) {}

    /** The one survey of a hole, or what is made of several. */
    Merged merge(List<SurveyRows> surveys) {
        if (surveys.size() == 1) {
            return new Merged(
                    surveys.get(0).onGrid(hole), ownSigmas(surveys.get(0).recorded()));
        }
        List<SurveyRun> runs = surveys.stream()
                .sorted(Comparator.comparingInt(survey -> settings.surveyPriority(survey.name())))
                .map(this::run)
                .toList();
        compare(runs);
        boolean weighs = settings.weighsSurveys();
        CombinedSurvey combined = weighs ? SurveyCombination.weighing(runs) : SurveyCombination.preferring(runs);
        tellSources(runs, combined, weighs);
        combined.findings().forEach(findings::tell);
        Survey survey = Survey.of(
                combined.stations().stream().map(CombinedStation::station).toList(), hole.with(North.GRID));
        List<StationSigma> sigmas = weighs
                ? combined.stations().stream().map(SurveyMerger::sigma).toList()
                : ownSigmas(chosen(surveys, combined));
        return new Merged(survey, sigmas);
    }

    private SurveyRun run(SurveyRows rows) {
        SurveyRun run = SurveyRun.of(rows.title(), rows.onGrid(hole)).withSigma(settings.stationSigma());
        for (StationRow station : rows.recorded()) {
            run = station.tool().isPresent() ? run.withTool(station.tool().get()) : run;
            run = station.date().isPresent() ? run.withDate(station.date().get()) : run;
        }
        return run;
    }

    private void compare(List<SurveyRun> runs) {
        for (int i = 0; i < runs.size(); i++) {
            for (SurveyRun other : runs.subList(i + 1, runs.size())) {
                String names = runs.get(i).name() + " and " + other.name();
                for (Finding found : differences(runs.get(i), other)) {
                    String what = found.what().startsWith(names) ? found.what() : names + ": " + found.what();
                    findings.tell(new Finding(found.depth(), found.level(), what, found.measurement()));
                }
            }
        }
    }

    private List<Finding> differences(SurveyRun first, SurveyRun second) {
        SurveyChecks checks = SurveyChecks.assumed();
        List<Finding> found = new ArrayList<>();
        try {
            found.addAll(SurveyComparison.of(first, second).findings(checks.limits()));
            found.addAll(checks.azimuthReference(first.survey(), second.survey(), hole.with(North.GRID)));
        } catch (IllegalArgumentException tooLittle) {
            found.add(Finding.ofHole(Level.INFO, "not compared further: " + tooLittle.getMessage()));
        }
        return found;
    }

    private void tellSources(List<SurveyRun> runs, CombinedSurvey combined, boolean weighs) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        runs.forEach(run -> counts.put(run.name(), 0));
        combined.stations()
                .forEach(station -> station.shares().keySet().forEach(name -> counts.merge(name, 1, Integer::sum)));
        List<String> parts = new ArrayList<>();
        counts.forEach((name, count) -> parts.add(name + " " + count));
        findings.tell(Finding.ofHole(
                Level.INFO,
                runs.size() + " surveys, "
                        + (weighs
                                ? "their weighted mean is used; stations to which each contributes: "
                                : "each used where none before it in this list covers the hole; stations from each: ")
                        + String.join(", ", parts)));
    }

    private static List<StationRow> chosen(List<SurveyRows> surveys, CombinedSurvey combined) {
        List<StationRow> chosen = new ArrayList<>();
        for (CombinedStation station : combined.stations()) {
            surveys.stream()
                    .filter(survey -> station.shares().containsKey(survey.title()))
                    .flatMap(survey -> survey.recorded().stream())
                    .filter(row -> row.depth() == station.station().depth())
                    .forEach(chosen::add);
        }
        return chosen;
    }

    private static List<StationSigma> ownSigmas(List<StationRow> stations) {
        return stations.stream()
                .filter(station ->
                        station.azimuthSigma().isPresent() || station.dipSigma().isPresent())
                .map(station -> new StationSigma(station.depth(), station.azimuthSigma(), station.dipSigma()))
                .toList();
    }

    private static StationSigma sigma(CombinedStation combined) {
        SurveyStation station = combined.station();
        double sine = Degrees.sin(station.direction().inclination());
        OptionalDouble azimuth = combined.acrossSigma().isPresent() && sine > 1e-6
                ? OptionalDouble.of(combined.acrossSigma().getAsDouble() / sine)
                : OptionalDouble.empty();
        return new StationSigma(station.depth(), azimuth, combined.alongSigma());
    }
}
