package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.internal.Degrees;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The inference against the mixture of all combinations in closed form. */
class EnumeratedLineTest {

    private static final HolePath PATH = HolePath.straight(HoleDirection.ofInclination(30, 70));
    private static final LineModel MODEL = LineModel.assumed();

    private static void compare(LineModel model, List<OrientationMark> marks, List<Join> joins, double... depths) {
        compare(1e-5, model, marks, joins, depths);
    }

    private static void compare(
            double tolerance, LineModel model, List<OrientationMark> marks, List<Join> joins, double... depths) {
        ReferenceLine line = model.reconcile(PATH, marks, joins);
        List<DenseLine.Seen> seen = DenseLine.Seen.all(model, PATH, marks);
        for (double depth : depths) {
            EnumeratedLine exact = new EnumeratedLine(model, seen, joins, depth);
            LinePosterior found = line.at(depth).orElseThrow();
            String where = "at " + depth + " m";
            assertEquals(
                    0, Degrees.wrap180(found.frame().turnFrom(PATH.carriedFrameAt(depth)) - exact.mean()), 0.02, where);
            assertEquals(1, found.sigma() / exact.sigma(model.noise().bias()), 0.01, where);
            assertEquals(exact.logEvidence(), line.logEvidence(), tolerance, where);
            for (int i = 0; i < marks.size(); i++) {
                MarkChances chances = line.marks().get(i).chances().orElseThrow();
                assertEquals(exact.sound(i), chances.sound(), tolerance, where + ", mark " + i);
                assertEquals(exact.flipped(i), chances.flipped(), tolerance, where + ", mark " + i);
            }
            for (int i = 0; i < joins.size(); i++) {
                assertEquals(exact.slip(i), line.joins().get(i).slipped(), tolerance, where + ", join " + i);
            }
        }
    }

    private static OrientationMark mark(double depth, double offset, double sigma) {
        return Marks.mark(depth, offset).withSigma(sigma);
    }

    private static Join join(double depth, JoinFit fit) {
        return new Join(depth, fit);
    }

    @Test
    void marksThatAgree() {
        compare(MODEL, Marks.marks(40, 44, 37), List.of(), 0, 10, 14, 20, 29, 30, 45);
    }

    @Test
    void oneMarkAgainstItsOpposite() {
        compare(MODEL, List.of(mark(5, 20, 3), mark(9, 201, 2)), List.of(), 1, 5, 7, 9, 12);
    }

    @Test
    void aFlipAWrongMarkAndDoubtfulJoins() {
        List<Join> joins = List.of(join(12, JoinFit.DOUBTFUL), join(20, JoinFit.LOCKED), join(31, JoinFit.DOUBTFUL));
        compare(MODEL, Marks.marks(350, 174, 351, 80), joins, 3, 11, 12, 13, 25, 31, 33, 40, 50);
        compare(MODEL, Marks.marks(350, 353, 20, 24), joins, 3, 11, 12, 13, 25, 31, 33, 40, 50);
    }

    @Test
    void severalJoinsBetweenTwoMarksAndOneBroken() {
        List<Join> joins = List.of(
                join(12, JoinFit.DOUBTFUL),
                join(12, JoinFit.LOCKED),
                join(14, JoinFit.DOUBTFUL),
                join(25, JoinFit.BROKEN),
                join(33, JoinFit.DOUBTFUL));
        compare(MODEL, Marks.marks(5, 11, 100, 97), joins, 2, 11, 12, 13, 14.5, 20, 25, 26, 33, 39);
    }

    @Test
    void marksAndJoinsAtOneDepth() {
        List<OrientationMark> marks = List.of(mark(10, 33, 4), mark(10, 38, 3), mark(20, 60, 3), mark(20, 57, 5));
        List<Join> joins = List.of(join(10, JoinFit.DOUBTFUL), join(20, JoinFit.DOUBTFUL));
        compare(MODEL, marks, joins, 10, 15, 20, 20.0001);
    }

    @Test
    void oneSharpMarkBesideBluntOnes() {
        List<OrientationMark> marks =
                List.of(mark(10, 20, 10), mark(13, 31.37, 0.3), mark(16, 25, 10), mark(19, 2, 10));
        compare(MODEL, marks, List.of(join(14, JoinFit.DOUBTFUL)), 8, 10, 12, 13, 13.5, 15, 17, 19, 30);
    }

    @Test
    void noiseOfTheLineFarBelowTheGrid() {
        LineModel still = MODEL.withDrift(new LineDrift(1e-4, 1e-5, 1e-3, 0.2));
        List<Join> joins = List.of(join(12, JoinFit.LOCKED), join(22, JoinFit.DOUBTFUL));
        compare(still, Marks.marks(40, 44, 37.3, 41.2), joins, 5, 15, 25, 40);
        LineModel none = MODEL.withDrift(new LineDrift(0, 0, 0, 0)).withNoise(new MarkNoise(1, 2, 0.5, 1, 0));
        compare(none, Marks.marks(40, 44, 37.3, 41.2), joins, 5, 15, 25, 40);
    }

    /** Blunders are so rare that what four marks leave at the line of the other three, and what a turn makes of it, decides. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.1, 0.2, 0.3, 0.45, 0.6, 0.8, 1, 2, 5, 8, 12})
    void marksOnStiffCoreThatAgreeOnTwoLines(double locked) {
        LineModel model = MODEL.withBlunders(new MarkBlunders(1e-5, 1e-5))
                .withDrift(new LineDrift(0, locked, 3, 0))
                .withNoise(new MarkNoise(1, 2, 0.5, 1, 0));
        List<Join> joins = List.of(join(15, JoinFit.LOCKED), join(45, JoinFit.LOCKED), join(65, JoinFit.LOCKED));
        compare(3e-4, model, Marks.marks(40, 43, 38, 41, 62, 60, 63), joins, 5, 45, 55, 80);
    }

    @Test
    void noBlundersAndNoSlips() {
        LineModel model = MODEL.withBlunders(new MarkBlunders(0, 0)).withDrift(new LineDrift(0.4, 1, 2, 0));
        List<Join> joins = List.of(join(12, JoinFit.LOCKED), join(22, JoinFit.DOUBTFUL));
        compare(model, Marks.marks(359, 2, 5, 357), joins, 5, 15, 25, 40);
    }
}
