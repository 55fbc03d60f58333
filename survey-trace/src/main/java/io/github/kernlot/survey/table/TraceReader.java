package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.BeyondLast;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.TraceSettings;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.Finding.Level;
import io.github.kernlot.survey.uncertainty.StationSigma;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the stations of one hole and makes its trace. */
final class TraceReader {

    /** Coordinates of a branch that are farther than this from its parent's collar, metres, are told. */
    private static final double SAME_PLACE = 0.01;

    private final HoleRows rows;
    private final JobSettings settings;
    private final HoleFindings findings;
    private final List<StationRow> stations = new ArrayList<>();
    private List<StationSigma> ownSigmas = List.of();

    TraceReader(HoleRows rows, JobSettings settings, HoleFindings findings) {
        this.rows = rows;
        this.settings = settings;
        this.findings = findings;
    }

    /**
     * The trace; empty, with faults added to the rows, where there is none.
     *
     * @param collar the collar, where it could be read
     * @param parent the trace of the hole that a branch leaves
     */
    Optional<HoleTrace> read(Optional<Collar> collar, Optional<HoleTrace> parent) {
        for (Row row : rows.stations()) {
            if (row.isReadable()) {
                StationRow.read(row, settings, findings).ifPresent(stations::add);
            }
        }
        List<SurveyRows> surveys = SurveyRows.of(stations);
        surveys.forEach(SurveyRows::check);
        if (settings.isSound()) {
            collar.ifPresent(hole -> surveys.forEach(survey -> survey.checkNorths(hole.north())));
        }
        if (stations.isEmpty() || !areSound() || !settings.isSound() || collar.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble kickOff = collar.get().kickOff();
        return kickOff.isPresent()
                ? parent.flatMap(trace -> branch(collar.get(), trace, kickOff.getAsDouble(), surveys))
                : fromCollar(collar.get(), surveys);
    }

    /** What the stations of the trace have in place of the sigmas of the settings. */
    List<StationSigma> ownSigmas() {
        return ownSigmas;
    }

    private boolean areSound() {
        return rows.stations().stream().allMatch(Row::isSound);
    }

    private Optional<HoleTrace> fromCollar(Collar collar, List<SurveyRows> surveys) {
        StationRow first = stations.stream()
                .min(Comparator.comparingDouble(StationRow::depth))
                .orElseThrow();
        if (first.depth() > settings.trace().extrapolationLimit()) {
            first.row()
                    .fault(
                            "depth_m",
                            "the first station of the hole, expected at most "
                                    + NumberRange.text(settings.trace().extrapolationLimit())
                                    + " m from the collar (survey.extrapolation_limit_m)");
            return Optional.empty();
        }
        SurveyFindings checks = new SurveyFindings(settings, collar.end());
        for (SurveyRows survey : surveys) {
            tell(survey, surveys, checks.of(onGrid(survey, collar.north())));
        }
        return merged(surveys, collar).map(survey -> told(HoleTrace.of(collar.position(), survey, settings(survey))));
    }

    /** Tells what the checks found in one survey, by its name where there are several. */
    private void tell(SurveyRows survey, List<SurveyRows> surveys, List<Finding> found) {
        String whose = surveys.size() > 1 ? "survey " + survey.title() + ": " : "";
        found.forEach(finding -> findings.tell(
                new Finding(finding.depth(), finding.level(), whose + finding.what(), finding.measurement())));
    }

    /** One survey of all; empty, with a fault added, where they contradict each other. */
    private Optional<Survey> merged(List<SurveyRows> surveys, Collar collar) {
        try {
            SurveyMerger.Merged merged = new SurveyMerger(settings, collar.north(), findings).merge(surveys);
            ownSigmas = merged.ownSigmas();
            return Optional.of(merged.survey());
        } catch (IllegalArgumentException contradiction) {
            surveys.get(surveys.size() - 1)
                    .recorded()
                    .get(0)
                    .row()
                    .fault("survey", "the surveys of the hole do not go together: " + contradiction.getMessage());
            return Optional.empty();
        }
    }

    private static List<SurveyStation> onGrid(SurveyRows survey, NorthReference north) {
        return survey.recorded().stream().map(station -> station.onGrid(north)).toList();
    }

    /** One station has no curvature to go on with. */
    private TraceSettings settings(Survey survey) {
        if (survey.stations().size() > 1 || settings.trace().beyondLast() == BeyondLast.STRAIGHT) {
            return settings.trace();
        }
        findings.tell(Finding.ofHole(Level.INFO, "the hole has one station: taken as straight below it"));
        return settings.trace().withBeyondLast(BeyondLast.STRAIGHT);
    }

    private HoleTrace told(HoleTrace trace) {
        trace.survey()
                .conversions()
                .forEach(conversion ->
                        findings.tell(Finding.ofHole(Level.INFO, "azimuths were converted: " + conversion)));
        trace.notes().forEach(note -> findings.tell(Finding.at(note.depth(), Level.INFO, note.what())));
        return trace;
    }

    private Optional<HoleTrace> branch(Collar collar, HoleTrace parent, double kickOff, List<SurveyRows> whole) {
        Row row = rows.collars().get(0);
        if (kickOff > parent.reach()) {
            row.fault(
                    "kick_off_m",
                    "beyond the survey of the hole that it leaves, expected at most " + NumberRange.text(parent.reach())
                            + " m");
            return Optional.empty();
        }
        tellPlace(row, parent.collar());
        stations.stream()
                .filter(station -> station.depth() <= kickOff)
                .forEach(station -> findings.tell(
                        station.row(),
                        Level.WARNING,
                        "not used: it lies above the kick-off, where the stations of the hole that it leaves count"));
        List<SurveyRows> surveys = whole.stream()
                .map(survey -> survey.below(kickOff))
                .filter(survey -> !survey.recorded().isEmpty())
                .toList();
        if (surveys.isEmpty()) {
            row.fault("kick_off_m", "the hole has no station below its kick-off, expected one or more");
            return Optional.empty();
        }
        SurveyStation leaving = new SurveyStation(kickOff, parent.directionAt(kickOff));
        SurveyFindings checks = new SurveyFindings(settings, collar.end());
        for (SurveyRows survey : surveys) {
            StationRow first = survey.byDepth().get(0);
            SurveyRows.checkDogleg(leaving, "the direction at the kick-off", first.row(), first.onGrid(collar.north()));
            tell(survey, surveys, checks.ofBranch(parent, kickOff, onGrid(survey, collar.north())));
        }
        return areSound()
                ? merged(surveys, collar)
                        .map(survey -> told(HoleTrace.branch(parent, kickOff, survey, settings.trace())))
                : Optional.empty();
    }

    private void tellPlace(Row row, Position collar) {
        OptionalDouble easting = row.optionalNumber("easting_m", NumberRange.COORDINATE);
        OptionalDouble northing = row.optionalNumber("northing_m", NumberRange.COORDINATE);
        OptionalDouble elevation = row.optionalNumber("elevation_m", NumberRange.COORDINATE);
        double away = Math.max(
                Math.abs(easting.orElse(collar.easting()) - collar.easting()),
                Math.max(
                        Math.abs(northing.orElse(collar.northing()) - collar.northing()),
                        Math.abs(elevation.orElse(collar.elevation()) - collar.elevation())));
        if (away > SAME_PLACE) {
            findings.tell(Finding.ofHole(
                    Level.WARNING,
                    String.format(
                            Locale.ROOT,
                            "its coordinates in holes.csv are up to %.2f m from the collar of the hole that it leaves, from which its"
                                    + " depths are counted; they are not used",
                            away)));
        }
    }
}
