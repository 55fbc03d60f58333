package io.github.kernlot.orientation.line.runs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.line.LogTime;
import io.github.kernlot.orientation.line.MarkBlunders;
import io.github.kernlot.orientation.line.MarkSource;
import io.github.kernlot.orientation.line.Marks;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.runs.RunFinding.Kind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** What a log contradicts itself by: common practice, no source. */
class RunLogTest {

    private static final MarkBlunders PRIORS = MarkBlunders.assumed();

    private static Optional<String> text(String text) {
        return Optional.of(text).filter(Predicate.not(String::isEmpty));
    }

    private static Optional<LogTime> time(String clock) {
        return text(clock).map(known -> LogTime.parse("2026-03-01T" + known));
    }

    private static CoreRun run(
            double from, double to, String tools, String prepared, String still, String read, String marked) {
        String[] both = tools.split(" ");
        return new CoreRun(
                from,
                to,
                OptionalDouble.empty(),
                text(both[0]),
                text(both.length > 1 ? both[1] : ""),
                time(prepared),
                time(still),
                time(read),
                time(marked));
    }

    private static CoreRun recovered(double from, double to, double core) {
        return new CoreRun(
                from,
                to,
                OptionalDouble.of(core),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static List<Kind> kinds(CoreRun... runs) {
        return RunLog.of(List.of(runs)).findings().stream()
                .map(RunFinding::kind)
                .toList();
    }

    @Test
    void aLogInOrderHasNoFindings() {
        assertEquals(
                List.of(),
                kinds(
                        run(0, 3, "A A", "06:00", "06:50", "06:52", "07:20"),
                        run(3, 6, "A A", "07:00", "07:50", "07:50", "08:20"),
                        run(6, 9, "", "", "", "", "")));
    }

    @Test
    void readingBeforeTheRodsWereStillIsTold() {
        CoreRun run = run(3, 6, "A A", "06:00", "06:50", "06:49", "07:20");
        assertEquals(List.of(Kind.READ_WHILE_TURNING), kinds(run));
        RunFinding finding = RunLog.of(List.of(run)).findings().get(0);
        assertEquals(6, finding.depth());
        assertEquals(
                "6.00 m: run from 3.00 to 6.00 m: read at 2026-03-01T06:49 before the rods were still at 2026-03-01T06:50",
                finding.toString());
    }

    @Test
    void anotherToolIsTold() {
        assertEquals(List.of(Kind.OTHER_TOOL), kinds(run(3, 6, "A B", "", "", "", "")));
        assertEquals(List.of(), kinds(run(3, 6, "A", "", "", "", "")));
    }

    @Test
    void markingBeforeReadingIsTold() {
        assertEquals(List.of(Kind.MARKED_BEFORE_READ), kinds(run(3, 6, "A A", "", "", "07:00", "06:59")));
    }

    @Test
    void aToolThatWasNotPreparedAgainIsTold() {
        CoreRun first = run(0, 3, "A A", "06:00", "", "06:52", "");
        assertEquals(List.of(Kind.NOT_PREPARED), kinds(first, run(3, 6, "A A", "06:00", "", "07:52", "")));
        assertEquals(List.of(Kind.NOT_PREPARED), kinds(first, run(3, 6, "A A", "06:30", "", "07:52", "")));
        assertEquals(List.of(Kind.NOT_PREPARED), kinds(run(3, 6, "A A", "08:30", "", "07:52", "")));
        // a second tool is prepared while the first is down the hole
        assertEquals(List.of(), kinds(first, run(3, 6, "B B", "06:30", "", "07:52", "")));
        assertEquals(
                List.of(Kind.NOT_PREPARED),
                kinds(first, run(3, 6, "B B", "06:30", "", "07:52", ""), run(6, 9, "A A", "06:00", "", "08:52", "")));
        assertEquals(List.of(), kinds(first, run(3, 6, "A A", "", "", "07:52", "")));
        // of tools that nobody noted there may be two
        assertEquals(
                List.of(), kinds(run(0, 3, "", "06:00", "", "06:52", ""), run(3, 6, "", "06:30", "", "07:52", "")));
    }

    @Test
    void depthsThatDoNotAdvanceAreTold() {
        assertEquals(List.of(Kind.NO_ADVANCE), kinds(CoreRun.of(3, 3)));
        assertEquals(List.of(Kind.NO_ADVANCE), kinds(CoreRun.of(6, 3)));
        assertEquals(
                List.of(Kind.NO_ADVANCE),
                kinds(run(0, 3, "A", "", "", "09:00", ""), run(3, 6, "B", "", "", "08:00", "")));
        assertEquals(List.of(Kind.OVERLAP), kinds(CoreRun.of(0, 3), CoreRun.of(2.5, 6)));
        assertEquals(List.of(), kinds(CoreRun.of(0, 3), CoreRun.of(2.95, 6)));
    }

    @Test
    void coreIsComparedWithTheDrillersDepth() {
        assertEquals(List.of(Kind.CORE_LOSS), kinds(recovered(0, 3, 2.6)));
        assertEquals(List.of(Kind.CORE_GAIN), kinds(recovered(0, 3, 3.2)));
        assertEquals(List.of(), kinds(recovered(0, 3, 2.95)));
        assertEquals(
                "run from 0.00 to 3.00 m: 2.60 m of core from 3.00 m drilled (87 %); depths in it are uncertain by 0.40 m",
                RunLog.of(List.of(recovered(0, 3, 2.6))).findings().get(0).text());
        assertEquals(List.of(), new RunLog(List.of(recovered(0, 3, 2.6)), 0.5).findings());
    }

    @Test
    void aMarkOfARunWithAFindingIsTheMoreProbablyWrong() {
        RunLog log = RunLog.of(List.of(
                run(0, 3, "A A", "", "", "", ""),
                run(3, 6, "A B", "", "07:00", "06:59", ""),
                run(6, 9, "A A", "", "", "", "")));
        List<OrientationMark> marks =
                List.of(Marks.mark(3, 10), Marks.mark(6.05, 10), Marks.mark(9, 10), Marks.mark(12, 10));
        RunReview review = log.review(marks, PRIORS, 3);

        // the mark at 6.05 m is made at the end of a run that goes to 6 m, but lies in the next one by its depth
        assertEquals(Optional.empty(), review.marks().get(0).blunders());
        assertEquals(Optional.empty(), review.marks().get(1).blunders());
        assertEquals(Optional.empty(), review.marks().get(2).blunders());
        assertEquals(0.15, review.marks().get(3).blunders().orElseThrow().wrong(), 1e-12);
        assertEquals(List.of(Kind.READ_WHILE_TURNING, Kind.OTHER_TOOL, Kind.NO_RUN), kinds(review));
        assertEquals(
                "mark at 12.00 m, offset 010.0: prior of a wrong mark 0.0500 raised to 0.150 because of"
                        + " mark at 12.00 m, offset 010.0 lies in no run of the log",
                review.changes().get(0).toString());
        assertEquals("3 findings, priors of 1 of 4 marks changed", review.toString());
    }

    private static List<Kind> kinds(RunReview review) {
        return review.findings().stream().map(RunFinding::kind).toList();
    }

    @Test
    void aMarkAtASharedDepthBelongsToTheUpperRun() {
        RunLog log = RunLog.of(List.of(run(3, 6, "A B", "", "", "", ""), CoreRun.of(6, 9)));

        assertEquals(3, log.at(6).orElseThrow().from());
        assertEquals(3, log.at(2.95).orElseThrow().from());
        assertTrue(log.at(2.8).isEmpty());
        assertEquals(
                1, log.review(List.of(Marks.mark(6, 0)), PRIORS, 3).changes().size());
        assertEquals(
                0, log.review(List.of(Marks.mark(6, 0)), PRIORS, 1).changes().size());
    }

    @Test
    void aMarkThatNamesNoToolTakesThatOfItsRun() {
        RunLog log = RunLog.of(List.of(run(0, 3, "A", "", "", "", ""), run(3, 6, "A B", "", "", "", "")));
        MarkSource c = new MarkSource(Optional.of("C"), Optional.of("day"), Optional.empty());
        OrientationMark other = Marks.mark(2, 10).withSource(c);
        OrientationMark leftOut = Marks.mark(5, 10).leftOutFor("rods turning");
        RunReview review = log.review(List.of(Marks.mark(3, 10), other, leftOut), PRIORS, 3);

        assertEquals(Optional.of("A"), review.marks().get(0).source().tool());
        assertEquals(c, review.marks().get(1).source());
        assertEquals(Optional.of("B"), review.marks().get(2).source().tool());
        assertEquals(
                "mark at 2.00 m, offset 010.0 names tool C and its run tool A",
                review.findings().get(0).text());
        assertEquals(
                List.of(2.0),
                review.changes().stream().map(change -> change.mark().depth()).toList());
    }

    @Property
    void priorsStayProbabilities(
            @ForAll @DoubleRange(min = 0, max = 1) double flipped,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = 1, max = 1e6) double factor) {
        MarkBlunders priors = new MarkBlunders(flipped, (1 - flipped) * share);
        MarkBlunders raised = priors.withWrongTimes(factor);

        assertTrue(raised.wrong() >= priors.wrong() && raised.flipped() == flipped);
        assertTrue(raised.sound() >= -1e-15 && raised.sound() <= 1);
    }

    @Test
    void refusesWhatCannotBeRead() {
        assertThrows(IllegalArgumentException.class, () -> CoreRun.of(-1, 2));
        assertThrows(IllegalArgumentException.class, () -> CoreRun.of(1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> recovered(1, 2, -1));
        assertThrows(IllegalArgumentException.class, () -> run(0, 3, "A", "06:00", "06:50Z", "", ""));
        List<CoreRun> mixed = Stream.of("06:00", "06:50Z")
                .map(at -> run(0, 3, "A", at, "", "", ""))
                .toList();
        assertThrows(IllegalArgumentException.class, () -> RunLog.of(mixed));
        assertThrows(IllegalArgumentException.class, () -> new RunLog(List.of(), -1));
        RunLog log = RunLog.of(List.of());
        assertThrows(IllegalArgumentException.class, () -> log.review(List.of(), PRIORS, 0.5));
    }
}
