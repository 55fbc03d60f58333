/**
 * How much marks and the line scatter, learnt from the holes themselves: the noise by which all their marks are most probable, with
 * standard errors, and what the marks cannot tell with the reason.
 *
 * <p>Start with {@link io.github.kernlot.orientation.line.fit.LineFit} and some {@linkplain
 * io.github.kernlot.orientation.line.MarkedHole holes}.
 */
@NullMarked
package io.github.kernlot.orientation.line.fit;

import org.jspecify.annotations.NullMarked;
