package io.github.kernlot.survey.table;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One line of the settings file. The properties reader of Java keeps no lines and lets the last of two equal keys win in silence.
 *
 * @param number the line, the first being 1
 * @param key the key
 * @param value the value without the spaces round it
 */
record PropertyLine(int number, String key, String value) {

    private static final Pattern ENTRY = Pattern.compile("([^=:]*)[=:](.*)", Pattern.DOTALL);
    private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");

    /** The accepted lines by key, in the order of the file; faults are added for all others. */
    static Map<String, PropertyLine> read(Path folder, FaultList faults) {
        Map<String, PropertyLine> found = new LinkedHashMap<>();
        Map<String, Integer> seen = new LinkedHashMap<>();
        int number = 0;
        for (String text :
                LINE_END.split(TextFile.read(folder, TableForm.SETTINGS, faults).orElse(""), -1)) {
            number++;
            String line = text.strip();
            if (line.isEmpty() || line.startsWith("#") || line.startsWith("!")) {
                continue;
            }
            PropertyLine entry = of(number, line);
            Optional<String> wrong = entry.refusal(line, seen);
            wrong.ifPresent(what -> faults.add(entry.fault(what)));
            if (wrong.isEmpty()) {
                found.put(entry.key, entry);
            }
            seen.putIfAbsent(entry.key, number);
        }
        return found;
    }

    private static PropertyLine of(int number, String line) {
        Matcher entry = ENTRY.matcher(line);
        return entry.matches()
                ? new PropertyLine(
                        number, entry.group(1).strip(), entry.group(2).strip())
                : new PropertyLine(number, "", line);
    }

    private Optional<String> refusal(String line, Map<String, Integer> seen) {
        if (TextFile.hasStrayByte(line)) {
            return Optional.of("the text is not UTF-8");
        }
        if (key.isEmpty()) {
            return Optional.of("expected key = value");
        }
        JobKey known = JobKey.ALL.get(key);
        if (known == null) {
            return Optional.of("the key is not known, expected one of " + JobKey.like(key));
        }
        Integer before = seen.get(key);
        return before != null ? Optional.of("the key stands in line " + before + " already") : known.refusal(value);
    }

    Fault fault(String what) {
        return new Fault(TableForm.SETTINGS, number, key, value, what);
    }
}
