package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.hole.OrientedHole;
import io.github.kernlot.survey.hole.OrientedStructure;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterTry;
import net.jqwik.api.lifecycle.BeforeTry;

class TableProperties {

    private static final List<String> FILES =
            List.of("holes.csv", "surveys.csv", "marks.csv", "joins.csv", "structures.csv", "job.properties");
    private static final List<String> PIECES = List.of(
            "",
            " ",
            ",",
            "\"",
            "\n",
            "\r",
            "TN-1",
            "TN-2",
            "0",
            "90",
            "-90",
            "180",
            "1e308",
            "-1e-320",
            "1e9",
            "NaN",
            "1d",
            "12,5",
            "locked",
            "no",
            "=",
            "\u0000",
            "\u2028",
            "\uD83D\uDE00");

    private Path folder;

    @BeforeTry
    void open() throws IOException {
        folder = Files.createTempDirectory("tables");
    }

    @AfterTry
    void close() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).forEach(TableProperties::delete);
        }
    }

    private static void delete(Path path) {
        try {
            Files.delete(path);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private Tables tables() {
        return Tables.sound(folder.resolve("in")).settings("mark.side = low", "hand.tolerance_deg = 12");
    }

    /** Either every hole can be oriented and written, or each line of the refusal names a file. */
    private void readsOrRefuses(Tables tables) {
        try {
            Job job = tables.read();
            ResultTables.of(job, job.orient()).write(folder.resolve("out"));
        } catch (TableException refused) {
            assertFalse(refused.faults().isEmpty());
            for (Fault fault : refused.faults()) {
                assertEquals(1, fault.toString().lines().count());
                assertTrue(FILES.contains(fault.file()), fault.toString());
            }
        }
    }

    @Property(tries = 150)
    void garbageIsReadOrRefused(@ForAll byte[] garbage, @ForAll @IntRange(max = 5) int file) {
        readsOrRefuses(tables().put(FILES.get(file), garbage));
    }

    @Property(tries = 150)
    void aSoundFileWithBytesChangedIsReadOrRefused(
            @ForAll long seed, @ForAll @IntRange(max = 5) int file, @ForAll boolean setsAside) {
        Random random = new Random(seed);
        Tables tables = tables();
        if (setsAside) {
            tables.append("job.properties", "input.bad_rows = set-aside");
        }
        byte[] bytes = tables.text(FILES.get(file)).getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i <= random.nextInt(4); i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        readsOrRefuses(tables.put(FILES.get(file), bytes));
    }

    @Property(tries = 400)
    void aSoundFileWithAFieldChangedIsReadOrRefused(
            @ForAll long seed, @ForAll @IntRange(max = 5) int file, @ForAll boolean setsAside) {
        Random random = new Random(seed);
        Tables tables = tables();
        if (setsAside) {
            tables.append("job.properties", "input.bad_rows = set-aside");
        }
        for (int i = 0; i <= random.nextInt(3); i++) {
            String[] parts = tables.text(FILES.get(file)).split("(?<=[,\n=])|(?=[,\n=])");
            parts[random.nextInt(parts.length)] = PIECES.get(random.nextInt(PIECES.size()));
            tables.put(FILES.get(file), String.join("", parts));
        }
        readsOrRefuses(tables);
    }

    @Property(tries = 30)
    void theOrderOfRowsChangesNothing(@ForAll long seed) {
        List<String> before = results(tables().read());
        Tables tables = tables();
        Random random = new Random(seed);
        for (String file : FILES) {
            List<String> lines = new ArrayList<>(tables.text(file).lines().toList());
            Collections.shuffle(lines.subList(file.endsWith(".csv") ? 1 : 0, lines.size()), random);
            tables.put(file, String.join("\n", lines));
        }
        assertEquals(before, results(tables.read()));
    }

    private static List<String> results(Job job) {
        List<String> found = new ArrayList<>();
        for (OrientedHole hole : job.orient()) {
            found.add(hole.trace().toString());
            hole.line().marks().forEach(mark -> found.add(mark.toString()));
            for (OrientedStructure structure : hole.structures()) {
                found.add(structure.toString());
            }
            hole.findings().forEach(finding -> found.add(hole.log().id() + finding));
        }
        Collections.sort(found);
        return found;
    }
}
