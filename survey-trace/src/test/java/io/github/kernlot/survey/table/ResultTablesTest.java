package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultTablesTest {

    @TempDir
    Path folder;

    @Test
    void aSoundJobIsWritten() throws IOException {
        Job job = Tables.sound(folder.resolve("in")).read();
        List<Path> written = ResultTables.of(job, job.orient()).write(folder.resolve("out"));
        assertEquals(
                List.of("oriented.csv", "marks.csv", "trace.csv", "findings.csv"),
                written.stream().map(file -> file.getFileName().toString()).toList());
        for (Path file : written) {
            assertTrue(Files.size(file) > 0);
        }
    }
}
