/**
 * The reference line of a hole: the marks it was drawn from, the joins between pieces of core, and what both together say of
 * where the line stands at any depth, which marks not to trust, and how sure all of that is.
 *
 * <p>Start with a list of marks and of joins and the path of their hole; the {@linkplain
 * io.github.kernlot.orientation.line.LineModel line model} reconciles the three. The rooms beside this one build on it: {@code fit}
 * learns the noise of marks from holes, {@code audit} compares those who made the marks and their tools, {@code runs} reads the log
 * of the runs.
 */
@NullMarked
package io.github.kernlot.orientation.line;

import org.jspecify.annotations.NullMarked;
