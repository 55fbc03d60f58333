package io.github.kernlot.orientation.line.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.line.LogTime;
import io.github.kernlot.orientation.line.Marks;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CheckedToolTest {

    private static ToolCheck check(String tool, int day, double known, double off) {
        LogTime at = LogTime.parse(String.format("2026-03-%02dT06:30", day));
        return new ToolCheck(tool, at, known, Marks.wrapped(known + off));
    }

    private static CheckedTool tool(double... off) {
        List<ToolCheck> checks = new ArrayList<>();
        for (double each : off) {
            checks.add(check("T-2", checks.size() + 1, 70.0 * checks.size() % 360, each));
        }
        return CheckedTool.of(checks).get(0);
    }

    @Test
    void aToolsBiasIsTheMeanOfItsDifferences() {
        CheckedTool tool = tool(7, 8, 9, 8, 7.5, 8.5, 187);

        assertEquals(8, tool.differences().mean().orElseThrow(), 1e-3);
        GroupBias bias = tool.bias().orElseThrow();
        assertEquals(8, bias.degrees(), 1e-3);
        assertTrue(bias.probabilityOfNone() < 1e-4);
        // Student's t with 5 degrees of freedom, 2.5706 (table, from memory), times the standard error of 7, 8, 9, 8,
        // 7.5, 8.5
        assertEquals(2.5706 * Math.sqrt(0.5 / 6), bias.radius95(), 1e-3);
        assertEquals("8.0 degrees (7.3 to 8.7 with 95 %), p of none 0.0000", bias.toString());
        assertEquals(1, tool.blunders().size());
        assertEquals(1.0 / 7, tool.blunderRate().rate(), 1e-12);
        assertTrue(tool.toString().endsWith("of 6, 1 blunder"), tool.toString());
    }

    @Test
    void toolsComeInTheOrderOfTheirNames() {
        List<CheckedTool> tools = CheckedTool.of(List.of(check("B", 2, 10, 1), check("A", 1, 10, 1)));

        assertEquals(List.of("A", "B"), tools.stream().map(CheckedTool::name).toList());
        assertTrue(tools.get(0).drift().isEmpty());
        assertTrue(tools.get(0).bias().isEmpty());
        assertTrue(tools.get(0).clearestChange().isEmpty());
        assertTrue(tool(1, 1, 1).toString().endsWith("of 3"));
    }

    @Test
    void aDriftIsPerDay() {
        CheckedTool tool = tool(0, 0.5, 1, 1.5, 2, 2.5);

        assertEquals(0.5, tool.drift().orElseThrow().slope(), 1e-6);
        assertTrue(CheckedTool.of(List.of(check("A", 1, 0, 0), check("A", 1, 0, 0), check("A", 1, 0, 0)))
                .get(0)
                .drift()
                .isEmpty());
    }

    @Test
    void aSuddenChangeIsFoundWhereItHappened() {
        CheckedTool tool = tool(0.3, -0.5, 0.1, 0.4, 6.1, 5.7, 6.4, 5.9);

        ToolChange change = tool.clearestChange().orElseThrow();
        assertEquals("2026-03-05T06:30", change.from().toString());
        assertEquals(5.95, change.degrees(), 1e-3);
        assertTrue(change.probability() < 0.001);
        ToolChange known = tool.changeAt(LogTime.parse("2026-03-05T06:30")).orElseThrow();
        assertEquals(7 * known.probability(), change.probability(), 1e-12);
        assertTrue(tool.changeAt(LogTime.parse("2026-02-01T00:00")).isEmpty());
        assertTrue(change.toString().startsWith("5.9 degrees from 2026-03-05T06:30 on"), change.toString());
    }

    @Test
    void readingsThatStandStillHaveNoChange() {
        assertEquals(1, tool(2, 2, 2, 2).clearestChange().orElseThrow().probability());
    }

    @Test
    void timesWithAndWithoutAnOffsetAreNotMixed() {
        ToolCheck local = check("A", 1, 0, 0);
        ToolCheck utc = new ToolCheck("A", LogTime.parse("2026-03-01T06:30Z"), 0, 0);

        assertThrows(IllegalArgumentException.class, () -> CheckedTool.of(List.of(local, utc)));
        assertThrows(IllegalArgumentException.class, () -> new ToolCheck("A", local.at(), -1, 0));
        assertThrows(IllegalArgumentException.class, () -> new ToolCheck("A", local.at(), 0, 361));
        assertEquals("A at 2026-03-01T06:30Z, known 000.0, read 000.0", utc.toString());
        assertEquals(-170, new ToolCheck("A", local.at(), 180, 10).difference());
    }
}
