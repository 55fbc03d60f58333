package io.github.kernlot.survey.hole;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.line.DrawnLine;
import io.github.kernlot.orientation.line.DrawnLines;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.runs.CoreRun;
import io.github.kernlot.orientation.line.runs.RunLog;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HoleLogTest {

    @Test
    void aLogPrintsHowMuchWasRecorded() {
        HoleTrace trace = HoleTrace.minimumCurvature(
                Position.ofEastingNorthingElevation(0, 0, 0),
                Survey.of(
                        List.of(SurveyStation.ofDip(0, -60, 90), SurveyStation.ofDip(90, -58, 92)),
                        NorthReference.grid()));
        OrientationMark mark = OrientationMark.of(10, 338, CoreDiameter.ofMillimetres(63.5));
        HoleLog bare = new HoleLog("RQ-1", trace, List.of(mark), Optional.empty(), List.of());
        HoleLog full = new HoleLog(
                        "RQ-2",
                        trace,
                        List.of(mark, mark),
                        Optional.of(List.of(new Join(5, JoinFit.LOCKED))),
                        List.of())
                .withDrawn(DrawnLines.of(List.of(DrawnLine.of(0, 20))))
                .withRuns(RunLog.of(List.of(CoreRun.of(0, 3), CoreRun.of(3, 6))));

        assertEquals("RQ-1: surveyed to 90.00 m, 1 mark, joins not recorded, 0 structures", bare.toString());
        assertEquals("RQ-2: surveyed to 90.00 m, 2 marks, 1 join, 0 structures, 1 drawn line, 2 runs", full.toString());
    }
}
