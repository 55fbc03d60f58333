package io.github.kernlot.survey.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** One row of a table, which gathers what is wrong with it while it is read. */
final class Row {

    private final CsvTable table;
    private final int line;
    private final List<String> fields;
    private final List<Fault> faults = new ArrayList<>();
    private boolean isFatal;

    Row(CsvTable table, int line, List<String> fields) {
        this.table = table;
        this.line = line;
        this.fields = fields;
    }

    TableForm form() {
        return table.form();
    }

    int line() {
        return line;
    }

    /** Whether the fields stand under their columns. */
    boolean isReadable() {
        return fields.size() == table.columns().size();
    }

    /** The fields without the spaces round them; equal for rows that say the same. */
    List<String> content() {
        return fields.stream().map(String::strip).toList();
    }

    boolean isSound() {
        return faults.isEmpty();
    }

    /** Whether a fault is such that the row cannot be set aside. */
    boolean isFatal() {
        return isFatal;
    }

    List<Fault> faults() {
        return faults;
    }

    /** The first fault of a column is told and not what follows from it. */
    void fault(String column, String what) {
        if (faults.stream().noneMatch(fault -> fault.column().equals(column))) {
            faults.add(new Fault(form().file(), line, column, text(column), what));
        }
    }

    void fatal(String column, String what) {
        isFatal = true;
        fault(column, what);
    }

    void cannotBeSetAside() {
        isFatal = true;
    }

    /** A field as it is written; blank where there is no such column. */
    String raw(String column) {
        int place = table.columns().indexOf(column);
        return place >= 0 && place < fields.size() ? fields.get(place) : "";
    }

    String text(String column) {
        return raw(column).strip();
    }

    boolean has(String column) {
        return !text(column).isEmpty();
    }

    /** A text that must be there, in one line. */
    Optional<String> name(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            fault(column, "blank, expected a name");
        } else if (text.chars().anyMatch(Character::isISOControl)) {
            fault(column, "expected a name without control characters");
        } else {
            return Optional.of(text);
        }
        return Optional.empty();
    }

    /** A text that may be there, in one line. */
    Optional<String> word(String column) {
        return has(column) ? name(column) : Optional.empty();
    }

    /** The hole that the row is of, where that can be told. A row whose fields are out of place is trusted in its first alone. */
    Optional<String> hole() {
        if (!isReadable() && table.columns().indexOf("hole_id") != 0) {
            return Optional.empty();
        }
        return name("hole_id");
    }

    OptionalDouble number(String column, NumberRange range) {
        return has(column) ? optionalNumber(column, range) : refused(column, range);
    }

    OptionalDouble optionalNumber(String column, NumberRange range) {
        if (!has(column)) {
            return OptionalDouble.empty();
        }
        OptionalDouble value = range.parse(text(column));
        return value.isPresent() ? value : refused(column, range);
    }

    private OptionalDouble refused(String column, NumberRange range) {
        fault(column, range.expected(text(column)));
        return OptionalDouble.empty();
    }

    /** One of a few words, in upper or lower case. */
    <T> Optional<T> word(String column, Map<String, T> words) {
        Optional<T> meaning = Optional.ofNullable(words.get(text(column).toLowerCase(Locale.ROOT)));
        if (meaning.isEmpty()) {
            String expected = words.keySet().stream().sorted().collect(Collectors.joining(", "));
            fault(column, (has(column) ? "" : "blank, ") + "expected one of " + expected);
        }
        return meaning;
    }
}
