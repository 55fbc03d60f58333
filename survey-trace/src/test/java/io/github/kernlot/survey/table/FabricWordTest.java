package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.line.Fabric;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FabricWordTest {

    @TempDir
    Path folder;

    @Test
    void kindsStandWithOrWithoutTheirFabric() {
        List<FabricWord> words = FabricWord.list(" joint A , bedding (54.5/118 scatter 4)");

        assertEquals("joint A", words.get(0).kind());
        assertEquals(Optional.empty(), words.get(0).fabric(0.1));
        assertEquals("bedding", words.get(1).kind());
        assertEquals(
                Optional.of(new Fabric(PlaneOrientation.ofDipAndDirection(54.5, 118), 4, 0.1)),
                words.get(1).fabric(0.1));
        assertTrue(FabricWord.list("  ").isEmpty());
        assertTrue(FabricWord.refusal("").isEmpty());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bedding (54)",
                "bedding (95/118 scatter 4)",
                "bedding (54/118)",
                "bedding (54/361 scatter 4)",
                "a,,b",
                "x, x",
                "bedding (54/118 scatter 0)",
                "(54/118 scatter 4)"
            })
    void whatIsNoListOfKindsIsRefused(String value) {
        assertTrue(FabricWord.refusal(value).isPresent());
    }

    @Test
    void askedForWitnessesShowInTheResults() throws IOException {
        Tables tables = Tables.sound(folder.resolve("job")).settings("fabric.kinds = bedding (40/300 scatter 20)");
        Job job = tables.read();
        ResultTables.of(job, job.orient()).write(folder.resolve("out"));

        String header = Files.readAllLines(folder.resolve("out/oriented.csv")).get(0);
        assertTrue(
                header.contains("line_high_deg,marks_only_line_angle_deg,marks_only_line_sigma_deg,dip_deg"), header);
        assertTrue(
                job.notices().toString().contains("fabric.prior_stray = 0.1"),
                job.notices().toString());
        Job silent = Tables.sound(folder.resolve("other")).read();
        assertFalse(
                silent.notices().toString().contains("fabric"), silent.notices().toString());
    }
}
