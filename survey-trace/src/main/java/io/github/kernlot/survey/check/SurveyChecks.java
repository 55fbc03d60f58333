package io.github.kernlot.survey.check;

import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.check.Finding.Level;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The checks of a survey, made before it is used. Nothing is repaired: each finding says what a qualified person should look at.
 *
 * @param limits what the survey is held against
 */
public record SurveyChecks(SurveyLimits limits) {

    /**
     * The checks with the limits to begin with.
     *
     * @return the checks
     */
    public static SurveyChecks assumed() {
        return new SurveyChecks(SurveyLimits.assumed());
    }

    /**
     * The same checks with another limit.
     *
     * @param which the limit
     * @param value its value, in {@link SurveyLimit#unit}, 0 or more
     * @return the checks
     * @throws IllegalArgumentException if the value is negative or not finite
     */
    public SurveyChecks with(SurveyLimit which, double value) {
        return new SurveyChecks(limits.with(which, value));
    }

    /**
     * All that is to be said of a survey.
     *
     * @param survey the survey as it was recorded
     * @return what was found: of the whole hole first, then by depth; empty where there is nothing to say
     */
    public List<Finding> findings(RawSurvey survey) {
        List<Finding> found = new ArrayList<>(new DepthFindings(survey, limits).all());
        found.addAll(new ReadingFindings(survey, limits).all());
        found.addAll(new BendFindings(survey, limits).all());
        found.sort(Comparator.comparingDouble(finding -> finding.depth().orElse(-1)));
        return List.copyOf(found);
    }

    /**
     * All that is to be said of a survey in use.
     *
     * @param survey the survey
     * @return what was found
     */
    public List<Finding> findings(Survey survey) {
        return findings(RawSurvey.of(survey));
    }

    /**
     * The stations that their neighbours do not bear out, as far as the limits {@link SurveyLimit#OUTLIER} and
     * {@link SurveyLimit#OUTLIER_FLOOR} let them pass. A run of stations that are wrong alike is not among them: it looks like a bend
     * of the hole. With fewer than four stations none is.
     *
     * @param survey the survey as it was recorded; of rows at one depth the first counts
     * @return the outlying stations by depth
     */
    public List<OutlyingStation> outlying(RawSurvey survey) {
        return List.copyOf(new BendFindings(survey, limits).outlying());
    }

    /**
     * Whether the azimuths of two surveys of one hole differ by a constant, which is not noise: by more than three standard errors and
     * more than {@link SurveyLimit#AZIMUTH_OFFSET}. Half of that limit is also how exactly a mistake must explain it.
     *
     * @param first a survey
     * @param second another survey of the same hole, its azimuths from the same north
     * @param place the north that both should count from, with its declination and convergence as far as they are known
     * @return what was found; empty where there is nothing to say
     * @throws IllegalArgumentException if the norths differ, fewer than three stations can be compared, or all are vertical
     */
    public List<Finding> azimuthReference(Survey first, Survey second, NorthReference place) {
        AzimuthOffset offset = AzimuthOffset.between(first, second);
        Optional<Limit> limit = limits.of(SurveyLimit.AZIMUTH_OFFSET)
                .filter(greatest ->
                        Math.abs(offset.degrees()) > Math.max(greatest.value(), 3 * offset.standardError()));
        return limit.map(exceeded -> {
                    List<String> candidates = offset.candidates(place, exceeded.value() / 2);
                    String why = candidates.isEmpty()
                            ? "no mistake with declination or convergence explains it"
                            : "perhaps " + String.join(", or ", candidates);
                    return List.of(Finding.ofHole(
                                    Level.WARNING,
                                    "the azimuths of two surveys differ by " + offset
                                            + " throughout (second less first); " + why)
                            .measured(new Measurement("offset", offset.degrees(), exceeded)));
                })
                .orElse(List.of());
    }
}
