/**
 * Tables in and out as CSV: holes, surveys, marks, joins and structures are read, oriented structures and findings are
 * written. A fault in a table is reported with its file, line and column, and all faults of all tables at once.
 */
@NullMarked
package io.github.kernlot.survey.table;

import org.jspecify.annotations.NullMarked;
