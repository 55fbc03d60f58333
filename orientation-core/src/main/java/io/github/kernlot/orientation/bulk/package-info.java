/**
 * The conversions of {@code CoreFrame} over columns of the caller, without memory for a row. They answer to the last bit what the
 * scalar ones answer, a bad row is told and the others go on.
 *
 * <p>Start with {@code FrameColumns}; {@code RowStatus} says what became of a row.
 */
@NullMarked
package io.github.kernlot.orientation.bulk;

import org.jspecify.annotations.NullMarked;
