/**
 * Findings: what a user should know about a hole before its results are used. Each is a {@link
 * io.github.kernlot.survey.check.Finding} with its depth, its level and one sentence.
 */
@NullMarked
package io.github.kernlot.survey.check;

import org.jspecify.annotations.NullMarked;
