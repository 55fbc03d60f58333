/**
 * The reference line of a hole: the marks it was drawn from, the joins between pieces of core, and what both together say of
 * where the line stands at any depth, which marks not to trust, and how sure all of that is.
 *
 * <p>Beside it the records that say how far to trust a mark: where the line was drawn, the log of the runs, the checks of the tools,
 * and the audit of all marks by those who made them.
 *
 * <p>Start with a list of marks and of joins and the path of their hole; the line model reconciles the three.
 */
@NullMarked
package io.github.kernlot.orientation.line;

import org.jspecify.annotations.NullMarked;
