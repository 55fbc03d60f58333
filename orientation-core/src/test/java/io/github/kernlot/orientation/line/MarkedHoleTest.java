package io.github.kernlot.orientation.line;

import static io.github.kernlot.orientation.line.Marks.mark;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class MarkedHoleTest {

    private static final Join BROKEN = new Join(20, JoinFit.BROKEN);
    private static final Join LOCKED = new Join(12, JoinFit.LOCKED);

    @Test
    void whatLiesAtABreakBelongsToThePieceAboveIt() {
        OrientationMark left = mark(30, 5).leftOutFor("smeared");
        List<OrientationMark> marks = List.of(left, mark(20, 3), mark(10, 1), mark(20.01, 4));
        Join doubtful = new Join(20, JoinFit.DOUBTFUL);

        List<CorePiece> pieces = MarkedHole.of(Marks.STRAIGHT, marks, List.of(BROKEN, doubtful, LOCKED))
                .pieces();

        assertEquals(
                List.of(
                        new CorePiece(List.of(mark(10, 1), mark(20, 3)), List.of(LOCKED, doubtful)),
                        new CorePiece(List.of(mark(20.01, 4), left), List.of())),
                pieces);
    }

    @Test
    void aGapInTheDrawnLineIsADoubtfulJoinUnlessItIsBroken() {
        MarkedHole hole = MarkedHole.of(Marks.STRAIGHT, Marks.marks(1, 2, 3), List.of(BROKEN))
                .withDrawn(DrawnLines.of(List.of(DrawnLine.of(0, 15), DrawnLine.of(25, 28), DrawnLine.of(29, 40))));

        assertEquals(
                List.of(List.of(), List.of(new Join(28, JoinFit.DOUBTFUL))),
                hole.pieces().stream().map(CorePiece::joins).toList());
    }

    @Test
    void joinsPrintWithTheirFit() {
        assertEquals("locked join at 12.00 m", LOCKED.toString());
        assertEquals(
                "doubtful join at 12.08 m: slipped with 37 %",
                new JoinPosterior(new Join(12.08, JoinFit.DOUBTFUL), 0.37).toString());
    }

    @Test
    void aHoleWithoutAMarkIsOnePiece() {
        assertEquals(
                List.of(new CorePiece(List.of(), List.of())),
                MarkedHole.of(Marks.STRAIGHT, List.of()).pieces());
    }
}
