package io.github.kernlot.survey.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes tables beside the place where they belong, and moves them there when all are whole. */
final class FolderWriter {

    private FolderWriter() {}

    /** Writes the tables that have rows, and removes those of the same name that have none. */
    static List<Path> write(Path folder, Path source, Map<String, List<List<String>>> tables) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw refused(folder, "is not a folder, expected a folder to write into");
        }
        try {
            Files.createDirectories(folder);
            if (Files.exists(source) && Files.isSameFile(folder, source)) {
                throw refused(folder, "is the folder that was read, expected another one to write into");
            }
            for (String file : tables.keySet()) {
                if (Files.isDirectory(folder.resolve(file))) {
                    throw refused(folder.resolve(file), "is a folder, expected a file to replace or none");
                }
            }
            return replace(folder, tables);
        } catch (IOException | UncheckedIOException failed) {
            throw refused(
                    folder,
                    "cannot be written into (" + failed.getClass().getSimpleName() + ", " + failed.getMessage() + ")");
        }
    }

    private static TableException refused(Path place, String what) {
        return new TableException(new Fault(place.toString(), 0, "", "", what));
    }

    private static List<Path> replace(Path folder, Map<String, List<List<String>>> tables) throws IOException {
        Path beside = Files.createTempDirectory(folder, ".writing-");
        List<Path> written = new ArrayList<>();
        try {
            for (Map.Entry<String, List<List<String>>> table : tables.entrySet()) {
                if (!table.getValue().isEmpty()) {
                    write(beside.resolve(table.getKey()), table.getValue());
                }
            }
            for (String file : tables.keySet()) {
                Path target = folder.resolve(file);
                if (Files.exists(beside.resolve(file))) {
                    Files.move(beside.resolve(file), target, StandardCopyOption.REPLACE_EXISTING);
                    written.add(target);
                } else {
                    Files.deleteIfExists(target);
                }
            }
        } finally {
            for (String file : tables.keySet()) {
                Files.deleteIfExists(beside.resolve(file));
            }
            Files.deleteIfExists(beside);
        }
        return List.copyOf(written);
    }

    private static void write(Path file, List<List<String>> rows) throws IOException {
        try (CsvWriter writer =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(file, StandardCharsets.UTF_8)) {
            rows.forEach(writer::writeRecord);
        }
    }
}
