package io.github.kernlot.survey.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The rows of all tables that name one hole.
 *
 * @param id the hole; blank for rows that do not tell theirs
 * @param collars rows of holes.csv
 * @param stations rows of surveys.csv
 * @param marks rows of marks.csv
 * @param joins rows of joins.csv
 * @param structures rows of structures.csv
 * @param runs rows of runs.csv
 * @param lines rows of lines.csv
 */
record HoleRows(
        String id,
        List<Row> collars,
        List<Row> stations,
        List<Row> marks,
        List<Row> joins,
        List<Row> structures,
        List<Row> runs,
        List<Row> lines) {

    private static HoleRows of(String id) {
        return new HoleRows(
                id,
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>());
    }

    /** Sorts the rows of tables by hole, holes in the order in which they are first named. */
    static Map<String, HoleRows> byHole(List<CsvTable> tables) {
        Map<String, HoleRows> holes = new LinkedHashMap<>();
        for (CsvTable table : tables) {
            for (Row row : table.rows()) {
                String id = row.hole().orElse("");
                holes.computeIfAbsent(id, HoleRows::of).rowsOf(table.form()).add(row);
            }
        }
        return holes;
    }

    private List<Row> rowsOf(TableForm form) {
        return Map.of(
                        TableForm.HOLES, collars,
                        TableForm.SURVEYS, stations,
                        TableForm.MARKS, marks,
                        TableForm.JOINS, joins,
                        TableForm.RUNS, runs,
                        TableForm.LINES, lines)
                .getOrDefault(form, structures);
    }

    Stream<Row> all() {
        return Stream.of(collars, stations, marks, joins, structures, runs, lines)
                .flatMap(List::stream);
    }

    /** The rows without any of which the hole cannot be worked. */
    Stream<Row> needed() {
        return Stream.of(collars, stations, joins, runs, lines).flatMap(List::stream);
    }
}
