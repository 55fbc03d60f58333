package io.github.kernlot.survey.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The header of a table: which columns stand there, and what is wrong with them. */
final class TableHeader {

    private final TableForm form;
    private final int line;
    private final List<String> columns;
    private final List<Fault> wrong = new ArrayList<>();

    private TableHeader(TableForm form, int line, List<String> columns) {
        this.form = form;
        this.line = line;
        this.columns = columns;
    }

    /** The names of the columns; empty, with faults added, where the table cannot be read by them. */
    static Optional<List<String>> read(TableForm form, int line, List<String> fields, FaultList faults) {
        List<String> columns = fields.stream().map(String::strip).toList();
        TableHeader header = new TableHeader(form, line, columns);
        header.check();
        header.wrong.forEach(faults::add);
        return header.wrong.isEmpty() ? Optional.of(columns) : Optional.empty();
    }

    static String expected(TableForm form) {
        return "expected a header with " + String.join(", ", form.required());
    }

    private void check() {
        String only = columns.get(0);
        if (columns.stream().noneMatch(this::isKnown) && (columns.size() > 1 || !isSeparatedOtherwise(only))) {
            wrong.add(new Fault(form.file(), line, form.required().get(0), String.join(",", columns), expected(form)));
        } else if (columns.size() == 1 && isSeparatedOtherwise(only)) {
            String separator = only.contains(";") ? "semicolons" : only.contains("\t") ? "tabs" : "bars";
            fault(only.replace('\t', ' '), "expected columns separated by commas, not by " + separator);
        } else {
            checkNames();
            form.required().forEach(column -> checkPresent(List.of(column), expected(form)));
            if (!form.oneOf().isEmpty()) {
                checkPresent(form.oneOf(), "expected one of " + String.join(", ", form.oneOf()));
            }
        }
    }

    private boolean isKnown(String column) {
        return form.knows(column.toLowerCase(Locale.ROOT));
    }

    /** Whether a header without a comma has another separator; the line by which spreadsheets are told theirs is none. */
    private static boolean isSeparatedOtherwise(String header) {
        return header.matches("(?s).*[;\t|].*") && !header.startsWith("sep=");
    }

    private void checkNames() {
        Set<String> seen = new HashSet<>();
        for (String column : columns) {
            if (!seen.add(column) && !column.isEmpty()) {
                fault(column, "the column stands twice in the header");
            } else if (column.chars().anyMatch(Character::isISOControl)) {
                fault(column, "expected a name without control characters");
            } else if (TextFile.hasStrayByte(column)) {
                fault(column, "the name is not UTF-8 text");
            }
        }
    }

    private void checkPresent(List<String> oneOf, String expected) {
        if (oneOf.stream().noneMatch(columns::contains)) {
            Optional<String> capital = columns.stream()
                    .filter(column -> oneOf.contains(column.toLowerCase(Locale.ROOT)))
                    .findFirst();
            if (capital.isPresent()) {
                fault(capital.get(), "expected " + capital.get().toLowerCase(Locale.ROOT) + " in lower case");
            } else {
                fault(oneOf.get(0), "the column is missing, " + expected);
            }
        }
    }

    private void fault(String column, String what) {
        wrong.add(new Fault(form.file(), line, column, "", what));
    }
}
