/**
 * The log of the runs of the core barrel, and what in it speaks against the marks that were made in them.
 *
 * <p>Start with {@link io.github.kernlot.orientation.line.runs.RunLog}; its review gives marks to reconcile, some with priors of their
 * own.
 */
@NullMarked
package io.github.kernlot.orientation.line.runs;

import org.jspecify.annotations.NullMarked;
