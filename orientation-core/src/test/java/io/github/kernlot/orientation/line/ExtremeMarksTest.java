package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Valid input at its edges. */
class ExtremeMarksTest {

    private static final HolePath PATH = Marks.STRAIGHT;
    private static final LineModel CREDULOUS = LineModel.assumed()
            .withBlunders(new MarkBlunders(0, 0))
            .withDrift(new LineDrift(0, 0, 0, 0))
            .withNoise(new MarkNoise(1, 2, 0.5, 1, 0));

    private static double mean(ReferenceLine line, double depth) {
        return line.at(depth).orElseThrow().mean();
    }

    @Test
    void sharpMarksThatContradictEachOtherAndAreAllBelieved() {
        List<OrientationMark> marks = List.of(
                Marks.mark(1, 0).withSigma(0.5),
                Marks.mark(2, 90).withSigma(0.5),
                Marks.mark(3, 270).withSigma(0.5));
        List<Join> joins = List.of(new Join(1.5, JoinFit.DOUBTFUL), new Join(2.5, JoinFit.DOUBTFUL));
        ReferenceLine line = CREDULOUS.reconcile(PATH, marks, joins);

        assertTrue(Double.isFinite(line.logEvidence()));
        assertTrue(line.joins().stream().allMatch(join -> join.slipped() == 0));
        assertTrue(Double.isFinite(mean(line, 2)));
        assertTrue(Double.isFinite(line.at(2).orElseThrow().sigma()));
        assertTrue(line.influences(2).stream().allMatch(influence -> Double.isFinite(influence.weight())));
        assertTrue(line.marks().stream()
                .allMatch(mark -> mark.chances().orElseThrow().sound() == 1));
    }

    @Test
    void aMarkSharperThanAnyGridDecidesAlone() {
        List<OrientationMark> marks = List.of(
                Marks.mark(1, 0).withSigma(0.001),
                Marks.mark(1, 5.0321).withSigma(3),
                Marks.mark(1, 3).withSigma(1e4));
        ReferenceLine line = CREDULOUS.reconcile(PATH, marks, List.of());

        assertEquals(0, Marks.apart(0, mean(line, 1)), 0.005);
        assertTrue(line.at(1).orElseThrow().sigma() < 0.1);
    }

    @Test
    void twoThousandMarks() {
        List<OrientationMark> marks = new ArrayList<>();
        List<Join> joins = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            marks.add(Marks.mark(i + 1, Marks.wrapped(40 + 7 * (i % 5 - 2) + (i % 50 == 2 ? 180 : 0))));
            joins.add(new Join(i + 1, i % 10 == 0 ? JoinFit.DOUBTFUL : JoinFit.LOCKED));
        }
        ReferenceLine line = LineModel.assumed().reconcile(PATH, marks, joins);

        assertEquals(0, Marks.apart(-40, mean(line, 1000.5)), 6);
        assertEquals(
                40,
                line.marks().stream()
                        .filter(mark -> mark.verdict() == MarkPosterior.Verdict.FLIPPED)
                        .count());
    }

    @Test
    void noMarks() {
        ReferenceLine line = LineModel.assumed().reconcile(PATH, List.of(), List.of(new Join(3, JoinFit.DOUBTFUL)));

        assertTrue(line.at(3).isEmpty());
        assertTrue(line.marks().isEmpty());
        assertEquals(0, line.logEvidence());
        assertEquals(0.3, line.joins().get(0).slipped());
    }

    @Test
    void aMarkThatSaysNothingHasOneModeAndNoPeaksOfRounding() {
        LineModel model = LineModel.assumed().withBlunders(new MarkBlunders(0.1, 0.6));
        List<LineMode> modes = model.reconcile(PATH, List.of(Marks.mark(5, 20).withSigma(20)), List.of())
                .at(5)
                .orElseThrow()
                .modes();

        assertEquals(2, modes.size(), modes::toString);
        assertEquals(1, modes.get(0).weight() + modes.get(1).weight(), 1e-9);
    }

    /** An inclined hole that turns down; in its vertical part there is no low side, and the marks above orient the core. */
    @Test
    void aVerticalStretchIsOrientedThroughTheCarriedFrame() {
        BentPath path = BentPath.ofPlunges(new double[][] {{0, 60, 40}, {30, 60, 40}, {60, 90, 0}, {200, 90, 0}});
        List<OrientationMark> marks = new ArrayList<>();
        for (int i = 1; i <= 8; i++) {
            marks.add(Marks.mark(3 * i, 350));
        }
        LinePosterior posterior =
                LineModel.assumed().reconcile(path, marks, List.of()).at(100).orElseThrow();

        assertTrue(!posterior.hasMean());
        assertTrue(posterior.sigma() < 15);
        // the hole turned down in its own plane: what was 10 degrees from the low side, which lay towards azimuth 220,
        // is now the wall at azimuth 220 turned by 10
        CoreFrame vertical = CoreFrame.at(HoleDirection.ofInclination(0, 0), WallReference.azimuth(220), 10);
        assertEquals(0, Marks.apart(0, posterior.frame().turnFrom(vertical)), 0.05);
    }
}
