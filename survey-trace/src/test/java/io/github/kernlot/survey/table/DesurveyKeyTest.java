package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.BeyondLast;
import io.github.kernlot.survey.DesurveyMethod;
import io.github.kernlot.survey.TraceSettings;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The key survey.method. */
class DesurveyKeyTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(DesurveyMethod.class)
    void everyMethodCanBeAskedFor(DesurveyMethod method) {
        Job job = Tables.sound(folder)
                .settings("survey.method = " + method.toString().replace(' ', '-'), "survey.extrapolation_limit_m = 40")
                .read();

        assertEquals(
                new TraceSettings(method, 40, BeyondLast.STRAIGHT),
                job.hole("TN-1").trace().settings());
        assertEquals(2, job.orient().size());
    }

    @Test
    void whatAMethodSettledIsTold() {
        Tables tables = Tables.sound(folder)
                .replace("surveys.csv", "TN-1,60,94,-58", "TN-1,60,94,-90")
                .settings("survey.method = average-angle");

        assertTrue(tables.read().findings("TN-1").stream()
                .anyMatch(found -> found.toString()
                        .equals("info at 60.00 m: the hole is vertical: average angle takes its azimuth from the"
                                + " neighbouring stations")));
        assertTrue(tables.settings("survey.method = tangential").read().findings("TN-1").stream()
                .noneMatch(found -> found.what().contains("takes its azimuth")));
    }
}
