/**
 * Findings: what a user should know about a hole before its results are used. Start at {@link
 * io.github.kernlot.survey.check.SurveyChecks}, which holds a survey as it was recorded ({@link
 * io.github.kernlot.survey.check.RawSurvey}) against limits whose standing is told ({@link
 * io.github.kernlot.survey.check.SurveyLimits}). Each {@link io.github.kernlot.survey.check.Finding} has its depth, its level, one
 * sentence, and the number behind it where there is one.
 */
@NullMarked
package io.github.kernlot.survey.check;

import org.jspecify.annotations.NullMarked;
