/**
 * Tables in and out as CSV: holes, surveys, marks, joins and structures are read, oriented structures and findings are
 * written. A fault in a table is reported with its file, line and column, and all faults of all tables at once.
 *
 * <p>Start with {@link io.github.kernlot.survey.table.Job#read}; {@link io.github.kernlot.survey.table.ResultTables} writes what came
 * of it.
 */
@NullMarked
package io.github.kernlot.survey.table;

import org.jspecify.annotations.NullMarked;
