/**
 * Several surveys of one hole. A {@link io.github.kernlot.survey.combine.SurveyRun} is a survey with its name; {@link
 * io.github.kernlot.survey.combine.SurveyComparison} and {@link io.github.kernlot.survey.combine.PassComparison} say how far two lie
 * apart; {@link io.github.kernlot.survey.combine.SurveyCombination} makes one survey of several, which remembers where each station came
 * from.
 */
@NullMarked
package io.github.kernlot.survey.combine;

import org.jspecify.annotations.NullMarked;
