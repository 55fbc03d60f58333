/**
 * How well the place and the direction of a hole are known: survey error sources that propagate along the hole at random, by leg,
 * by well or everywhere, and the covariance that follows at any depth.
 *
 * <p>Start with a {@link io.github.kernlot.survey.uncertainty.SurveyErrorModel} and ask a
 * {@link io.github.kernlot.survey.uncertainty.TraceUncertainty} at a depth.
 */
@NullMarked
package io.github.kernlot.survey.uncertainty;

import org.jspecify.annotations.NullMarked;
