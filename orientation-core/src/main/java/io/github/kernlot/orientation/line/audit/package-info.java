/**
 * How far to trust those who made the marks, and their tools: the marks of reconciled holes compared by tool, crew or grade, and each
 * tool by its checks in a cradle.
 *
 * <p>Start with {@link io.github.kernlot.orientation.line.audit.MarkAudit} for marks and {@link
 * io.github.kernlot.orientation.line.audit.CheckedTool} for tools.
 */
@NullMarked
package io.github.kernlot.orientation.line.audit;

import org.jspecify.annotations.NullMarked;
