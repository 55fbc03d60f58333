package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.line.DrawnLine.Arrow;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DrawnLinesTest {

    private static final DrawnLine UP =
            new DrawnLine(20, 30, Arrow.UP_HOLE, Optional.of("fair"), Optional.of("north shed"));
    private static final DrawnLines LINES = DrawnLines.of(List.of(UP, DrawnLine.of(5, 8), DrawnLine.of(8, 12)));

    @Test
    void aLineIsWhereItWasDrawn() {
        assertFalse(LINES.isDrawnAt(4.99));
        assertTrue(LINES.isDrawnAt(5));
        assertEquals(8, LINES.at(8).orElseThrow().to());
        assertTrue(LINES.isDrawnAt(12));
        assertFalse(LINES.isDrawnAt(12.01));
        assertTrue(LINES.isDrawnAt(20));
        assertFalse(LINES.isDrawnAt(30.01));
        assertEquals(3, LINES.recorded().orElseThrow().size());
        assertTrue(DrawnLines.everywhere().isDrawnAt(1000));
        assertFalse(DrawnLines.of(List.of()).isDrawnAt(1));
    }

    @Property
    void metresDrawnAreThoseOfTheIntervals(
            @ForAll @DoubleRange(min = 0, max = 40) double one, @ForAll @DoubleRange(min = 0, max = 40) double other) {
        double from = Math.min(one, other);
        double to = Math.max(one, other);
        double sum = 0;
        for (double[] line : new double[][] {{5, 12}, {20, 30}}) {
            sum += Math.max(0, Math.min(to, line[1]) - Math.max(from, line[0]));
        }
        assertEquals(sum, LINES.length(from, to), 1e-12);
        assertEquals(to - from, DrawnLines.everywhere().length(from, to), 0);
    }

    @Test
    void metresUpTheHoleAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> LINES.length(8, 7));
        assertThrows(IllegalArgumentException.class, () -> LINES.length(8, Double.NaN));
    }

    @Test
    void aGapOnCoreThatIsNotBrokenIsADoubtfulJoin() {
        Join locked = new Join(15, JoinFit.LOCKED);
        Join broken = new Join(20, JoinFit.BROKEN);

        assertEquals(List.of(locked, new Join(12, JoinFit.DOUBTFUL)), LINES.withGaps(List.of(locked)));
        assertEquals(List.of(broken), LINES.withGaps(List.of(broken)));
    }

    @Test
    void theArrowTurnsTheLookOfTheReader() {
        assertEquals(320, LINES.lookingDownHole(Marks.mark(25, 40)).offset());
        assertEquals(0, LINES.lookingDownHole(Marks.mark(25, 0)).offset());
        OrientationMark mark = Marks.mark(6, 40);
        assertSame(mark, LINES.lookingDownHole(mark));
        assertSame(mark, DrawnLines.everywhere().lookingDownHole(mark));
    }

    @Test
    void theLineWandersWhereItIsDrawnAlone() {
        LineModel model = LineModel.assumed().withDrift(new LineDrift(2, 0.5, 3, 0.3));
        List<OrientationMark> marks = List.of(Marks.mark(0, 10), Marks.mark(1, 10), Marks.mark(40, 10));
        DrawnLines whole = DrawnLines.of(List.of(DrawnLine.of(0, 40)));
        DrawnLines part = DrawnLines.of(List.of(DrawnLine.of(0, 2), DrawnLine.of(2, 3), DrawnLine.of(39.9, 40)));
        Join gap = new Join(3, JoinFit.DOUBTFUL);

        ReferenceLine everywhere = model.reconcile(Marks.STRAIGHT, marks, List.of());
        assertEquals(
                everywhere.at(20).orElseThrow().sigma(),
                model.reconcile(Marks.STRAIGHT, marks, List.of(), whole)
                        .at(20)
                        .orElseThrow()
                        .sigma(),
                0);
        ReferenceLine drawn = model.reconcile(Marks.STRAIGHT, marks, List.of(), part);
        assertTrue(drawn.at(20).isEmpty());
        assertEquals(
                List.of(gap), drawn.joins().stream().map(JoinPosterior::join).toList());
        // 3.1 m drawn and one doubtful join, at whatever depth: the same as a short core with them
        List<OrientationMark> near = List.of(Marks.mark(0, 10), Marks.mark(1, 10), Marks.mark(3.1, 10));
        assertEquals(model.reconcile(Marks.STRAIGHT, near, List.of(gap)).logEvidence(), drawn.logEvidence(), 1e-9);
        assertEquals(part, drawn.drawn());
        // nobody said how the runs fit: marks are doubtful joins, and the gap is another
        assertEquals(4, model.reconcile(Marks.STRAIGHT, marks, part).joins().size());
    }

    @Test
    void linesDoNotOverlap() {
        List<DrawnLine> overlap = List.of(DrawnLine.of(1, 3), DrawnLine.of(2.9, 4));
        assertThrows(IllegalArgumentException.class, () -> DrawnLines.of(overlap));
        assertThrows(IllegalArgumentException.class, () -> DrawnLine.of(3, 3));
        assertThrows(IllegalArgumentException.class, () -> DrawnLine.of(-1, 3));
    }

    @Test
    void printWhatIsNoted() {
        assertEquals("line from 20.00 to 30.00 m, arrow up-hole, grade fair, drawn by north shed", UP.toString());
        assertEquals(
                "[line from 1.00 to 2.00 m]",
                DrawnLines.of(List.of(DrawnLine.of(1, 2))).toString());
        assertEquals("line everywhere", DrawnLines.everywhere().toString());
    }
}
