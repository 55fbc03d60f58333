package io.github.kernlot.survey.combine;

import io.github.kernlot.survey.North;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One survey of a hole among several.
 *
 * @param name its name, which tells it from the others
 * @param tool the tool; empty where it is not known
 * @param date when it was run; empty where it is not known
 * @param pass which way the tool went; empty where it is not known or there was one pass only
 * @param sigma how far one station misses by chance
 * @param survey the survey with azimuths from grid north
 */
public record SurveyRun(
        String name,
        String tool,
        Optional<LocalDate> date,
        Optional<SurveyPass> pass,
        DirectionSigma sigma,
        Survey survey) {

    /**
     * Checks the name and the north.
     *
     * @throws IllegalArgumentException if the name is blank, or the survey's north is not the grid's ({@link Survey#toGrid})
     */
    public SurveyRun {
        if (name.isBlank()) {
            throw new IllegalArgumentException("the name of a survey is blank; expected one that tells it from others");
        }
        if (survey.north().north() != North.GRID) {
            throw new IllegalArgumentException("survey " + name + " counts azimuths from " + survey.north()
                    + "; expected grid north (Survey.toGrid())");
        }
    }

    /**
     * A survey of which nothing else is known, with the sigmas to begin with.
     *
     * @param name its name
     * @param survey the survey with azimuths from grid north
     * @return the run
     * @throws IllegalArgumentException if the name is blank, or the survey's north is not the grid's ({@link Survey#toGrid})
     */
    public static SurveyRun of(String name, Survey survey) {
        return new SurveyRun(name, "", Optional.empty(), Optional.empty(), DirectionSigma.assumed(), survey);
    }

    /**
     * The same run with its tool.
     *
     * @param other the tool
     * @return the run
     */
    public SurveyRun withTool(String other) {
        return new SurveyRun(name, other, date, pass, sigma, survey);
    }

    /**
     * The same run with its date.
     *
     * @param day when it was run
     * @return the run
     */
    public SurveyRun withDate(LocalDate day) {
        return new SurveyRun(name, tool, Optional.of(day), pass, sigma, survey);
    }

    /**
     * The same run with its pass.
     *
     * @param way which way the tool went
     * @return the run
     */
    public SurveyRun withPass(SurveyPass way) {
        return new SurveyRun(name, tool, date, Optional.of(way), sigma, survey);
    }

    /**
     * The same run with other sigmas.
     *
     * @param other how far one station misses by chance
     * @return the run
     */
    public SurveyRun withSigma(DirectionSigma other) {
        return new SurveyRun(name, tool, date, pass, other, survey);
    }

    /**
     * The same run with the stations of a range of depths only.
     *
     * @param from the least depth, metres along the hole
     * @param to the greatest depth, metres along the hole
     * @return the run
     * @throws IllegalArgumentException if no station lies in the range
     */
    public SurveyRun between(double from, double to) {
        List<SurveyStation> kept = survey.stations().stream()
                .filter(station -> station.depth() >= from && station.depth() <= to)
                .toList();
        if (kept.isEmpty()) {
            throw new IllegalArgumentException(
                    "survey " + name + " has no station within [" + from + ", " + to + "] m; it covers " + range());
        }
        return new SurveyRun(name, tool, date, pass, sigma, Survey.of(kept, survey.north()));
    }

    double first() {
        return survey.stations().get(0).depth();
    }

    double last() {
        return survey.stations().get(survey.stations().size() - 1).depth();
    }

    boolean covers(double depth) {
        return depth >= first() && depth <= last();
    }

    String range() {
        return first() + " to " + last() + " m";
    }

    /** The name and the survey. */
    @Override
    public String toString() {
        return name + (tool.isEmpty() ? "" : " (" + tool + ")") + ": " + survey;
    }
}
