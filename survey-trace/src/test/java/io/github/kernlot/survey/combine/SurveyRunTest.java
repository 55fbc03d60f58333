package io.github.kernlot.survey.combine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SurveyRunTest {

    private static final SurveyRun RUN = Runs.of("gyro", "0 -60 90; 30 -61 91; 60 -62 92");

    @Test
    void aRunKeepsWhatIsKnownOfIt() {
        SurveyRun run = RUN.withTool("G-7")
                .withDate(LocalDate.of(2026, 3, 1))
                .withPass(SurveyPass.IN)
                .withSigma(new DirectionSigma(0.1, 0.2));
        assertEquals("G-7", run.tool());
        assertEquals(Optional.of(LocalDate.of(2026, 3, 1)), run.date());
        assertEquals(Optional.of(SurveyPass.IN), run.pass());
        assertEquals("dip 0.10, azimuth 0.20 degrees", run.sigma().toString());
        assertEquals("gyro (G-7): 3 stations to 60.00 m, azimuths from grid north", run.toString());
        assertEquals("gyro: 3 stations to 60.00 m, azimuths from grid north", RUN.toString());
    }

    @Test
    void aRangeOfARunHasTheStationsInIt() {
        assertEquals(
                List.of(SurveyStation.ofDip(30, -61, 91)),
                RUN.between(10, 30).survey().stations());
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> RUN.between(31, 59));
        assertTrue(refused.getMessage().contains("gyro has no station within [31.0, 59.0] m"), refused.getMessage());
    }

    @Test
    void whatCannotBeComparedIsRefused() {
        Survey magnetic = Survey.of(List.of(SurveyStation.ofDip(0, -60, 90)), NorthReference.magnetic(3, 0));
        assertThrows(IllegalArgumentException.class, () -> SurveyRun.of("multishot", magnetic));
        assertThrows(IllegalArgumentException.class, () -> SurveyRun.of(" ", magnetic.toGrid()));
        assertThrows(IllegalArgumentException.class, () -> new DirectionSigma(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new DirectionSigma(0.1, -1));
    }
}
