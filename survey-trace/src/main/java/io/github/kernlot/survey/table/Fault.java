package io.github.kernlot.survey.table;

import java.util.Locale;

/**
 * What is wrong at one place of the tables or of the settings.
 *
 * @param file the name of the file, or the folder where the fault is one of the folder
 * @param line the line in the file, its first being 1 (in a table the header); a row that goes over several lines is named by its
 *     first; 0 for the file as a whole
 * @param column the column, or the key of a settings file; empty for the line or the file as a whole
 * @param value what stands there; empty where nothing does
 * @param what what is wrong and what was expected
 */
public record Fault(String file, int line, String column, String value, String what) {

    private static final int LONGEST_VALUE = 60;

    /** The fault in one line of text: {@code surveys.csv, line 5, column dip_deg: "-95", expected a number within [-90, 90]}. */
    @Override
    public String toString() {
        String place = line > 0 ? file + ", line " + line : file;
        return oneLine(place) + (column.isEmpty() ? ": " : ", ") + inLine();
    }

    /** The fault to one who knows the line. */
    String inLine() {
        StringBuilder text = new StringBuilder();
        if (!column.isEmpty()) {
            text.append(file.endsWith(".properties") ? "key " : "column ")
                    .append(column)
                    .append(": ");
        }
        if (!value.isEmpty()) {
            text.append('"').append(shortened(value)).append("\", ");
        }
        return oneLine(text.append(what).toString());
    }

    private static String shortened(String value) {
        return value.length() <= LONGEST_VALUE ? value : value.substring(0, LONGEST_VALUE) + "...";
    }

    /** Characters that would break the line, or that a terminal would obey, are written as their codes. */
    private static String oneLine(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        text.codePoints().forEach(code -> {
            if (TextFile.isStrayByte(code)) {
                plain.append(String.format(Locale.ROOT, "\\x%02X", TextFile.strayByte(code)));
            } else if (isPrintable(code)) {
                plain.appendCodePoint(code);
            } else {
                plain.append(String.format(Locale.ROOT, "\\u%04X", code));
            }
        });
        return plain.toString();
    }

    private static boolean isPrintable(int code) {
        return switch (Character.getType(code)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.UNASSIGNED -> false;
            case Character.SPACE_SEPARATOR -> code == ' ';
            default -> true;
        };
    }
}
