package io.github.kernlot.survey.table;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** One table as it stands in its file: the header and the rows with their lines. */
final class CsvTable {

    private final TableForm form;
    private final List<String> columns;
    private final List<Row> rows = new ArrayList<>();

    private CsvTable(TableForm form, List<String> columns) {
        this.form = form;
        this.columns = columns;
    }

    /** A table, or nothing and a fault added where its rows cannot be told. */
    static Optional<CsvTable> read(Path folder, TableForm form, FaultList faults, List<String> notices) {
        return TextFile.read(folder, form.file(), faults).flatMap(text -> parse(text, form, faults, notices));
    }

    private static Optional<CsvTable> parse(String text, TableForm form, FaultList faults, List<String> notices) {
        Records records = new Records();
        List<Records.Line> lines = new ArrayList<>();
        Optional<Fault> broken = Optional.empty();
        try (CsvReader<Records.Line> reader = CsvReader.builder()
                .trimWhitespacesAroundQuotes(true)
                .allowUnclosedQuote(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .build(records, text)) {
            reader.forEach(lines::add);
        } catch (CsvParseException fault) {
            broken = Optional.of(records.broken(form, lines, fault));
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        broken.ifPresent(faults::add);
        lines.removeIf(line -> line.isBlank() && line.fields().size() == 1);
        if (lines.isEmpty()) {
            if (broken.isEmpty()) {
                faults.add(new Fault(
                        form.file(),
                        1,
                        form.required().get(0),
                        "",
                        "the file is empty, " + TableHeader.expected(form)));
            }
            return Optional.empty();
        }
        Optional<CsvTable> table = TableHeader.read(
                        form, lines.get(0).number(), lines.get(0).fields(), faults)
                .map(columns -> new CsvTable(form, columns));
        table.ifPresent(found -> {
            lines.subList(1, lines.size()).forEach(found::add);
            found.tellBlankRows(lines, notices);
            found.tellColumns(notices);
        });
        // a table that ends early would seem to lack rows
        return broken.isPresent() ? Optional.empty() : table;
    }

    private void tellBlankRows(List<Records.Line> lines, List<String> notices) {
        String blank = lines.stream()
                .filter(Records.Line::isBlank)
                .map(line -> Integer.toString(line.number()))
                .collect(Collectors.joining(", "));
        if (!blank.isEmpty()) {
            notices.add(form.file() + ": rows without a value, in lines " + blank);
        }
    }

    private void add(Records.Line line) {
        if (line.isBlank()) {
            return;
        }
        Row row = new Row(this, line.number(), line.fields());
        rows.add(row);
        if (!row.isReadable()) {
            int count = line.fields().size();
            row.fault(
                    columns.get(Math.min(count, columns.size() - 1)),
                    "the row has " + count + (count == 1 ? " field" : " fields") + ", expected " + columns.size()
                            + " as in the header" + (count < columns.size() ? "" : excess(line.fields())));
        }
        for (int i = 0; i < Math.min(columns.size(), line.fields().size()); i++) {
            check(row, columns.get(i), line.fields().get(i), line.strayQuotes().contains(i));
        }
    }

    private String excess(List<String> fields) {
        boolean isBlank = fields.subList(columns.size(), fields.size()).stream().allMatch(String::isBlank);
        return isBlank ? " (a comma at the end begins one more)" : " (a decimal comma makes two of one)";
    }

    private void check(Row row, String column, String field, boolean hasStrayQuote) {
        if (TextFile.hasStrayByte(field)) {
            row.fatal(column, "the text is not UTF-8");
        } else if (hasStrayQuote) {
            row.fault(column, "a quote stands in a field without quotes, expected it doubled in a field within quotes");
        } else if (column.isEmpty() && !field.isBlank()) {
            row.fault("number " + (columns.indexOf(column) + 1), "the column has no name in the header");
        } else if (field.chars().anyMatch(code -> Character.isISOControl(code) && "\t\n\r".indexOf(code) < 0)) {
            row.fault(column, "expected a text without control characters");
        }
    }

    private void tellColumns(List<String> notices) {
        List<String> unused = columns.stream()
                .filter(column ->
                        form.unused().contains(column) || form.unusedSigmas().contains(column))
                .toList();
        if (!unused.isEmpty()) {
            notices.add(form.file() + ": not used yet: " + String.join(", ", unused));
        }
        List<String> unknown = unknownColumns();
        if (!unknown.isEmpty()) {
            String fate = "they are not used";
            if (form.equals(TableForm.STRUCTURES)) {
                List<String> names = ResultTables.carriedNames(unknown);
                fate = "they are carried along"
                        + (names.equals(unknown) ? "" : " and come out as " + String.join(", ", names));
            }
            notices.add(form.file() + ": columns that are not known: " + String.join(", ", unknown) + "; " + fate);
        }
    }

    TableForm form() {
        return form;
    }

    List<String> columns() {
        return columns;
    }

    List<String> unknownColumns() {
        return columns.stream()
                .filter(column -> !column.isEmpty() && !form.knows(column))
                .toList();
    }

    List<Row> rows() {
        return rows;
    }

    /** Builds lines of the reader's fields, and knows where it stood when the reader gave up. */
    private static final class Records extends AbstractBaseCsvCallbackHandler<Records.Line> {

        private List<String> fields = new ArrayList<>();
        private Set<Integer> strayQuotes = new HashSet<>();
        private int line;

        record Line(int number, List<String> fields, Set<Integer> strayQuotes) {
            boolean isBlank() {
                return fields.stream().allMatch(String::isBlank);
            }
        }

        @Override
        protected void handleBegin(long startingLineNumber) {
            line = (int) startingLineNumber;
            fields = new ArrayList<>();
            strayQuotes = new HashSet<>();
        }

        @Override
        protected void handleField(int fieldIdx, char[] buf, int offset, int len, boolean quoted) {
            String field = new String(buf, offset, len);
            if (!quoted && field.indexOf('"') >= 0) {
                strayQuotes.add(fieldIdx);
            }
            fields.add(field);
        }

        @Override
        protected Line buildRecord() {
            return new Line(line, fields, strayQuotes);
        }

        Fault broken(TableForm form, List<Line> before, CsvParseException reason) {
            List<String> header = before.isEmpty() ? List.of() : before.get(0).fields();
            String column =
                    fields.size() < header.size() ? header.get(fields.size()).strip() : "";
            String message = String.valueOf(reason.getMessage()).replaceAll(" \\(record.*", "");
            return new Fault(
                    form.file(),
                    line,
                    column,
                    "",
                    message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1)
                            + ", expected quotes as in RFC 4180; nothing after it was read");
        }
    }
}
