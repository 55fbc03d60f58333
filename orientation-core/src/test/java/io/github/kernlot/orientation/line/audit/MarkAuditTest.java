package io.github.kernlot.orientation.line.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.LineSimulation;
import io.github.kernlot.orientation.line.MarkPosterior;
import io.github.kernlot.orientation.line.MarkSource;
import io.github.kernlot.orientation.line.Marks;
import io.github.kernlot.orientation.line.MirroredMark;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.ReferenceLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holes are drawn from the model with what is to be found put in: the truth is known. */
class MarkAuditTest {

    private static final HolePath PATH = HolePath.straight(HoleDirection.ofInclination(35, 140));
    private static final LineModel MODEL = LineModel.assumed();
    private static final String[] TOOLS = {"T-1", "T-2", "T-3"};

    private static LineSimulation simulation() {
        List<Double> marks = new ArrayList<>();
        List<Join> joins = new ArrayList<>();
        for (int i = 1; i <= 24; i++) {
            marks.add(3.0 * i);
            joins.add(new Join(3.0 * i, i % 6 == 0 ? JoinFit.DOUBTFUL : JoinFit.LOCKED));
        }
        return new LineSimulation(MODEL, PATH, CoreDiameter.ofMillimetres(63.5), marks, joins, List.of());
    }

    /** A hole whose tools take turns, with the marks of the third changed. */
    private static ReferenceLine hole(long seed, UnaryOperator<OrientationMark> third) {
        LineSimulation simulation = simulation();
        List<OrientationMark> marks = new ArrayList<>();
        for (OrientationMark mark : simulation.run(seed).marks()) {
            int tool = marks.size() % 3;
            OrientationMark made =
                    mark.withSource(new MarkSource(Optional.of(TOOLS[tool]), Optional.empty(), Optional.of("good")));
            marks.add(tool == 2 ? third.apply(made) : made);
        }
        return MODEL.reconcile(PATH, marks, simulation.joins());
    }

    private static UnaryOperator<OrientationMark> turned(double by) {
        return mark -> mark.withOffset(Degrees.wrap360(mark.offset() + by));
    }

    private static Map<String, MarkGroup> byTool(ReferenceLine... lines) {
        return MarkAudit.of(List.of(lines)).by(MarkKey.tool()).stream()
                .collect(Collectors.toMap(MarkGroup::name, group -> group));
    }

    @Test
    void aToolThatIsEightDegreesOffShows() {
        Map<String, MarkGroup> groups = byTool(hole(1, turned(8)), hole(2, turned(8)), hole(3, turned(8)));

        GroupBias third = groups.get("T-3").bias().orElseThrow();
        assertEquals(8, third.degrees(), 1.5 * third.radius95());
        assertTrue(third.radius95() < 3, third.toString());
        assertTrue(third.probabilityOfNone() < 1e-4, third.toString());
        assertTrue(third.low95() < 8 && third.high95() > third.low95());
        assertEquals(24, groups.get("T-3").marks());
        assertTrue(groups.get("T-1").bias().orElseThrow().degrees() < 0, "the others stand on the other side");
    }

    @Test
    void aToolThatMarksTheOtherSideShows() {
        MarkGroup third = byTool(hole(1, turned(180)), hole(2, turned(180))).get("T-3");

        assertEquals(180, Math.abs(third.bias().orElseThrow().degrees()), 5);
        assertTrue(third.blunders().orElseThrow().rate() > 0.8, third.toString());
    }

    @Test
    void withoutABiasTheTestRefusesAsOftenAsItSays() {
        int refused = 0;
        int within = 0;
        int cases = 40;
        for (long seed = 1; seed <= cases; seed++) {
            GroupBias bias = byTool(hole(seed, UnaryOperator.identity()))
                    .get("T-2")
                    .bias()
                    .orElseThrow();
            refused += bias.probabilityOfNone() < 0.05 ? 1 : 0;
            within += bias.low95() <= 0 && bias.high95() >= 0 ? 1 : 0;
        }
        // of 40 with p = 0.05 seven or more are refused once in 300 times
        assertTrue(refused <= 6, refused + " refused");
        assertTrue(within >= cases - 6, within + " within");
    }

    @Test
    void aGroupThatLookedTheOtherWayShows() {
        Map<String, MarkGroup> groups = byTool(hole(5, OrientationMark::mirrored), hole(6, OrientationMark::mirrored));

        assertTrue(groups.get("T-3").logMirrorOdds() > 10, groups.toString());
        assertTrue(groups.get("T-1").logMirrorOdds() < 0, groups.toString());
        assertTrue(groups.get("T-3").toString().contains("log odds of mirrored reading"));
    }

    @Test
    void aSingleMarkThatWasReadTheOtherWayShows() {
        ReferenceLine line = hole(11, UnaryOperator.identity());
        OrientationMark victim = line.marks().get(10).mark();
        assertEquals(MarkPosterior.Verdict.SOUND, line.marks().get(10).verdict());
        ReferenceLine read = line.withMarks(mark -> mark.equals(victim) ? mark.mirrored() : mark);

        List<MirroredMark> mirrored = MarkAudit.of(List.of(read)).mirrored(50);
        assertEquals(
                List.of(victim.mirrored()),
                mirrored.stream().map(MirroredMark::mark).toList());
        // one number by two ways: the others' prediction, and the evidence of the whole
        double whole = line.logEvidence() - read.logEvidence();
        assertEquals(whole, mirrored.get(0).logOdds(), 1e-4);
        assertTrue(mirrored.get(0).toString().endsWith(":1 read the other way"), mirrored.toString());
        assertTrue(new MirroredMark(victim, -1).toString().endsWith("1:3 read the other way"));

        // the signature: the residual is minus twice the true offset
        double residual = read.marks().get(10).residual().orElseThrow();
        double predicted = read.marks().get(10).predicted().orElseThrow();
        assertEquals(0, Degrees.wrap180(residual + 2 * predicted), 12);
    }

    @Test
    void theEvidenceWithChangedMarksIsThatOfALineOfThem() {
        List<Join> joins = List.of(new Join(30, JoinFit.BROKEN), new Join(40, JoinFit.LOCKED));
        List<OrientationMark> marks = simulation().run(4).marks();
        ReferenceLine line = MODEL.reconcile(PATH, marks, joins);
        UnaryOperator<OrientationMark> change =
                mark -> mark.depth() > 40 ? turned(5).apply(mark) : mark;
        ReferenceLine changed = MODEL.reconcile(PATH, marks.stream().map(change).toList(), joins);

        assertEquals(changed.logEvidence(), line.withMarks(change).logEvidence(), 1e-12);
        assertEquals(changed.marks(), line.withMarks(change).marks());
        assertEquals(
                line.logEvidence(), line.withMarks(UnaryOperator.identity()).logEvidence(), 0);
    }

    @Test
    void aGroupAloneOnItsCoreHasNoBias() {
        List<OrientationMark> marks = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            MarkSource source =
                    new MarkSource(Optional.empty(), Optional.of(i < 2 ? "day" : "night"), Optional.empty());
            marks.add(Marks.mark(3.0 * i, 20).withSource(source));
        }
        ReferenceLine line = MODEL.reconcile(PATH, marks, List.of(new Join(4, JoinFit.BROKEN)));
        List<MarkGroup> crews = MarkAudit.of(List.of(line)).by(MarkKey.crew());

        assertEquals(
                List.of("day", "night"), crews.stream().map(MarkGroup::name).toList());
        assertTrue(crews.stream().allMatch(crew -> crew.bias().isEmpty()));
        assertEquals(0, crews.get(0).logMirrorOdds(), 1e-9);
        assertTrue(crews.get(0).trend().isEmpty());
        assertTrue(MarkAudit.of(List.of(line)).by(MarkKey.grade()).isEmpty());
    }

    @Test
    void aLoneMarkIsComparedWithNothing() {
        ReferenceLine line = MODEL.reconcile(PATH, Marks.marks(30), List.of());
        MarkGroup all = MarkAudit.of(List.of(line)).by(MarkKey.depthClass(100)).get(0);

        assertEquals("0 to 100 m", all.name());
        assertTrue(all.residuals().isEmpty()
                && all.bias().isEmpty()
                && all.blunders().isEmpty());
    }

    @Test
    void marksThatWereLeftOutCountInNoGroup() {
        ReferenceLine line = hole(1, mark -> mark.leftOutFor("rods turning"));

        assertEquals(
                List.of("T-1", "T-2"), byTool(line).keySet().stream().sorted().toList());
    }

    @Test
    void aDriftWithDepthShows() {
        List<OrientationMark> marks = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            boolean drifts = i % 2 == 1;
            MarkSource source = new MarkSource(Optional.of(drifts ? "B" : "A"), Optional.empty(), Optional.empty());
            marks.add(Marks.mark(3.0 * i, 100 + (drifts ? 0.2 * 3 * i - 6 : 0)).withSource(source));
        }
        ReferenceLine line = MODEL.reconcile(PATH, marks, List.of());
        MarkGroup group = byTool(line).get("B");

        // half of it, since the predictions share in it
        assertTrue(group.trend().orElseThrow().slope() > 0.05, group.toString());
        assertTrue(group.trend().orElseThrow().probabilityOfNone() < 0.01, group.toString());
    }

    @Test
    void depthClassesHaveAWidth() {
        assertThrows(IllegalArgumentException.class, () -> MarkKey.depthClass(0));
        assertFalse(MarkAudit.of(List.of(hole(1, UnaryOperator.identity())))
                .by(MarkKey.depthClass(25))
                .isEmpty());
    }

    @Test
    void evidenceThatDoesNotDependOnTheTurnHasNoBias() {
        assertTrue(BiasSearch.find(by -> -3, 5).isEmpty());
    }
}
