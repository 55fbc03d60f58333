package io.github.kernlot.survey.table;

/**
 * A row that was not used because {@code input.bad_rows} is {@code set-aside}.
 *
 * @param file the name of the table
 * @param line the line of the row in the table, the header being 1
 * @param hole the hole that the row names, as it is written; may be blank
 * @param reason why the row was set aside
 */
public record SetAsideRow(String file, int line, String hole, String reason) {

    /** The row and the reason in one line. */
    @Override
    public String toString() {
        return file + ", line " + line + ", set aside: " + reason;
    }
}
