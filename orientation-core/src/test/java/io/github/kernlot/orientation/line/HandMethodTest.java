package io.github.kernlot.orientation.line;

import static io.github.kernlot.orientation.line.Marks.STRAIGHT;
import static io.github.kernlot.orientation.line.Marks.mark;
import static io.github.kernlot.orientation.line.Marks.marks;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.line.MarkJudgement.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules of the trade's method by hand, as its Javadoc states them: common practice, no source. */
class HandMethodTest {

    private static final HandMethod METHOD = HandMethod.assumed();
    private static final Join BROKEN_AT_25 = new Join(25, JoinFit.BROKEN);

    private static List<Verdict> verdicts(HandLine line) {
        return line.marks().stream().map(MarkJudgement::verdict).toList();
    }

    private static double lineAngle(HandLine line, double depth) {
        return line.angleAt(depth).orElseThrow().mean();
    }

    @Test
    void aMarkOfTheLowSideReadsMinusTheLineAngle() {
        HandLine line = METHOD.reconcile(STRAIGHT, marks(335, 335), List.of());

        assertEquals(25, lineAngle(line, 12), 1e-9);
        assertEquals(WallReference.lowSide(), line.angleAt(12).orElseThrow().reference());
    }

    @Test
    void aMarkOfTheHighSideReads180MinusTheLineAngle() {
        HandLine line = Marks.of(WallReference.highSide()).reconcile(STRAIGHT, marks(155, 155), List.of());

        assertEquals(25, lineAngle(line, 12), 1e-9);
        assertEquals(WallReference.lowSide(), line.angleAt(12).orElseThrow().reference());
    }

    @Test
    void aMarkOfNorthReadsMinusTheLineAngleFromNorthInAVerticalHole() {
        HolePath vertical = HolePath.straight(HoleDirection.ofDip(-90, 0));

        HandLine line = Marks.of(WallReference.north()).reconcile(vertical, marks(335, 335), List.of());

        assertEquals(25, lineAngle(line, 12), 1e-9);
        assertEquals(WallReference.north(), line.angleAt(12).orElseThrow().reference());
    }

    @Test
    void theMeanOfMarksIsTakenRoundTheCircle() {
        HandLine line = METHOD.reconcile(STRAIGHT, marks(358, 2), List.of());

        assertEquals(0, Marks.apart(lineAngle(line, 12), 0), 1e-9);
    }

    @Test
    void aLoneMarkIsAloneAndGivesNoLine() {
        HandLine line = METHOD.reconcile(STRAIGHT, marks(335), List.of());

        assertEquals(List.of(Verdict.ALONE), verdicts(line));
        assertTrue(line.angleAt(10).isEmpty());
        assertTrue(line.marks().get(0).predicted().isEmpty());
        assertTrue(line.marks().get(0).residual().isEmpty());
    }

    @Test
    void noMarksGiveNoLine() {
        HandLine line = METHOD.reconcile(STRAIGHT, List.of(), List.of());

        assertTrue(line.marks().isEmpty());
        assertTrue(line.angleAt(10).isEmpty());
    }

    @Test
    void aFlippedMarkAmongGoodOnesDisagreesAndLeavesTheLineWhereItWas() {
        HandLine good = METHOD.reconcile(STRAIGHT, marks(335, 337, 336, 334), List.of());
        List<OrientationMark> withFlip = new ArrayList<>(marks(335, 337, 336, 334));
        withFlip.add(mark(25, 156));

        HandLine line = METHOD.reconcile(STRAIGHT, withFlip, List.of());

        assertEquals(
                List.of(Verdict.AGREES, Verdict.AGREES, Verdict.DISAGREES, Verdict.AGREES, Verdict.AGREES),
                verdicts(line));
        for (double depth : new double[] {0, 15, 25, 35, 100}) {
            assertEquals(good.angleAt(depth), line.angleAt(depth));
        }
        // the others stand at 335.5 on average
        assertEquals(-179.5, line.marks().get(2).residual().orElseThrow(), 1e-9);
    }

    @Test
    void theResidualIsTheOffsetMinusWhatTheOthersPredict() {
        HandLine line = METHOD.reconcile(STRAIGHT, marks(336, 337, 334), List.of());

        assertEquals(335.5, line.marks().get(0).predicted().orElseThrow(), 1e-9);
        assertEquals(0.5, line.marks().get(0).residual().orElseThrow(), 1e-9);
        assertEquals(-2.5, line.marks().get(2).residual().orElseThrow(), 1e-9);
    }

    @Test
    void aBrokenJoinBeginsANewLine() {
        HandLine line = METHOD.reconcile(STRAIGHT, marks(335, 335, 100, 100), List.of(BROKEN_AT_25));

        assertEquals(25, lineAngle(line, 0), 1e-9);
        assertEquals(260, lineAngle(line, 26), 1e-9);
    }

    @Test
    void theCoreAtABrokenJoinBelongsToThePieceOnItsCollarSide() {
        HandLine line = METHOD.reconcile(STRAIGHT, marks(335, 335, 100, 100), List.of(BROKEN_AT_25));

        assertEquals(25, lineAngle(line, 25), 1e-9);
        assertEquals(260, lineAngle(line, Math.nextUp(25)), 1e-9);
    }

    @Test
    void aMarkAtABrokenJoinBelongsToThePieceOnItsCollarSide() {
        HandLine line = METHOD.reconcile(STRAIGHT, marks(335, 335, 100, 100), List.of(new Join(20, JoinFit.BROKEN)));

        assertEquals(List.of(Verdict.AGREES, Verdict.AGREES, Verdict.AGREES, Verdict.AGREES), verdicts(line));
    }

    @Test
    void marksAcrossABrokenJoinAreNotCompared() {
        HandLine line = METHOD.reconcile(STRAIGHT, marks(335, 335, 335), List.of(BROKEN_AT_25));

        assertEquals(List.of(Verdict.AGREES, Verdict.AGREES, Verdict.ALONE), verdicts(line));
        assertTrue(line.angleAt(40).isEmpty());
    }

    @Test
    void lockedAndDoubtfulJoinsDoNotMatterByHand() {
        List<Join> joins = List.of(new Join(25, JoinFit.LOCKED), new Join(25, JoinFit.DOUBTFUL));

        HandLine line = METHOD.reconcile(STRAIGHT, marks(335, 335, 335), joins);

        assertEquals(METHOD.reconcile(STRAIGHT, marks(335, 335, 335), List.of()).marks(), line.marks());
    }

    @Test
    void aPieceBetweenTwoBrokenJoinsWithoutMarksHasNoLine() {
        List<Join> joins = List.of(new Join(27, JoinFit.BROKEN), BROKEN_AT_25);

        HandLine line = METHOD.reconcile(STRAIGHT, marks(335, 335, 335, 335), joins);

        assertTrue(line.angleAt(26).isEmpty());
        assertEquals(25, lineAngle(line, 25), 1e-9);
        assertEquals(25, lineAngle(line, 28), 1e-9);
    }

    @Test
    void betweenTwoRunsThatContradictEachOtherThereIsNoLine() {
        HandLine line = METHOD.reconcile(STRAIGHT, marks(335, 335, 300, 300), List.of());

        assertEquals(25, lineAngle(line, 20), 1e-9);
        assertTrue(line.angleAt(20.01).isEmpty());
        assertTrue(line.angleAt(29.99).isEmpty());
        assertEquals(60, lineAngle(line, 30), 1e-9);
    }

    @Test
    void beyondTheFirstAndTheLastRunTheNearestHolds() {
        HandLine line = METHOD.reconcile(STRAIGHT, marks(335, 335, 300, 300), List.of());

        assertEquals(25, lineAngle(line, 0), 1e-9);
        assertEquals(60, lineAngle(line, 1000), 1e-9);
    }

    @Test
    void aMarkBetweenTwoRunsThatContradictEachOtherIsNotPredicted() {
        HandLine line = METHOD.reconcile(STRAIGHT, marks(335, 335, 100, 300, 300), List.of());

        assertEquals(Verdict.DISAGREES, line.marks().get(2).verdict());
        assertTrue(line.marks().get(2).predicted().isEmpty());
    }

    @Test
    void withTwoNeighboursAMarkNeedsBothOfThem() {
        List<OrientationMark> marks = marks(335, 335, 335, 200, 335);

        HandLine line = Marks.withNeighbours(2).reconcile(STRAIGHT, marks, List.of());

        // the last looks at the wild one and at the third alone
        assertEquals(
                List.of(Verdict.AGREES, Verdict.AGREES, Verdict.AGREES, Verdict.DISAGREES, Verdict.DISAGREES),
                verdicts(line));
        assertEquals(
                List.of(Verdict.DISAGREES, Verdict.DISAGREES),
                verdicts(Marks.withNeighbours(2).reconcile(STRAIGHT, marks(335, 335), List.of())));
    }

    @Test
    void manyNeighboursAreNotMoreThanThereAreMarks() {
        HandLine line = Marks.withNeighbours(Integer.MAX_VALUE).reconcile(STRAIGHT, marks(335, 335), List.of());

        assertEquals(List.of(Verdict.DISAGREES, Verdict.DISAGREES), verdicts(line));
    }

    @Test
    void aMismatchOfTheToleranceItselfAgrees() {
        HandMethod method = new HandMethod(WallReference.lowSide(), MarkNoise.assumed(), 90, 1);

        assertTrue(method.reconcile(STRAIGHT, marks(0, 89.999), List.of())
                .angleAt(10)
                .isPresent());
        assertTrue(method.reconcile(STRAIGHT, marks(0, 90.001), List.of())
                .angleAt(10)
                .isEmpty());
    }

    @Test
    void aMarkLeftOutIsListedAndSaysNothing() {
        List<OrientationMark> marks = new ArrayList<>(marks(335, 335));
        marks.add(mark(15, 345).leftOutFor("the barrel still turned"));

        HandLine line = METHOD.reconcile(STRAIGHT, marks, List.of());

        assertEquals(List.of(Verdict.AGREES, Verdict.LEFT_OUT, Verdict.AGREES), verdicts(line));
        assertEquals(25, lineAngle(line, 15), 1e-9);
        assertEquals(10, line.marks().get(1).residual().orElseThrow(), 1e-9);
    }

    @Test
    void marksThatScatterMoreThanTheirSigmasWidenTheSigmaOfTheirMean() {
        HandMethod unbiased = new HandMethod(WallReference.lowSide(), new MarkNoise(1, 2, 0.5, 1, 0), 10, 1);
        List<OrientationMark> close =
                marks(335, 335.2).stream().map(mark -> mark.withSigma(2)).toList();
        List<OrientationMark> wide =
                marks(335, 343).stream().map(mark -> mark.withSigma(2)).toList();

        // the ratio of R. T. Birge, 1932, Physical Review 40, 207 (from memory): sqrt(chi-square / (n - 1)), never
        // below 1
        assertEquals(2 / Math.sqrt(2), sigma(unbiased.reconcile(STRAIGHT, close, List.of())), 1e-12);
        assertEquals(
                2 / Math.sqrt(2) * Math.sqrt(2 * Math.pow(4 / 2.0, 2)),
                sigma(unbiased.reconcile(STRAIGHT, wide, List.of())),
                1e-12);
    }

    private static double sigma(HandLine line) {
        return line.angleAt(10).orElseThrow().sigma();
    }

    @Test
    void theBiasThatAllMarksShareIsAddedInQuadratureAndIsNotAveraged() {
        HandMethod biased = new HandMethod(WallReference.lowSide(), new MarkNoise(1, 2, 0.5, 1, 3), 10, 1);
        List<OrientationMark> marks = marks(335, 335, 335, 335).stream()
                .map(mark -> mark.withSigma(8))
                .toList();

        assertEquals(5, sigma(biased.reconcile(STRAIGHT, marks, List.of())), 1e-12);
    }

    @Test
    void aSurerMarkWeighsMore() {
        List<OrientationMark> marks =
                List.of(mark(10, 330).withSigma(1), mark(20, 335).withSigma(2));

        HandLine line = METHOD.reconcile(STRAIGHT, marks, List.of());

        // weights 4 to 1; the mean of the vectors departs from the mean of the angles by far less than 0.01 degrees
        assertEquals(29, lineAngle(line, 10), 0.01);
    }

    @Test
    void aMarkOfTheLowSideInAVerticalHoleIsRefused() {
        HolePath vertical = HolePath.straight(HoleDirection.ofDip(-90, 0));

        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> METHOD.reconcile(vertical, marks(335, 335), List.of()));

        assertTrue(refused.getMessage().contains("low side"), refused.getMessage());
        assertTrue(refused.getMessage().contains("WallReference.north()"), refused.getMessage());
        assertTrue(refused.getMessage().contains("mark at 10.00 m"), refused.getMessage());
    }

    @Test
    void aMarkOfTheLowSideInAVerticalStretchMayBeLeftOut() {
        BentPath path =
                BentPath.ofPlunges(new double[] {0, 60, 90}, new double[] {30, 90, 0}, new double[] {60, 60, 90});
        List<OrientationMark> marks = List.of(mark(0, 335), mark(30, 10).leftOutFor("no low side"), mark(60, 335));

        HandLine line = METHOD.reconcile(path, marks, List.of());

        // twice
        assertEquals(List.of(Verdict.AGREES, Verdict.LEFT_OUT, Verdict.AGREES), verdicts(line));
        assertEquals(Double.POSITIVE_INFINITY, line.marks().get(1).sigma());
        assertTrue(line.marks().get(1).predicted().isEmpty());
    }

    @Test
    void aVerticalStretchIsOrientedByMarksInAnInclinedOne() {
        BentPath path = BentPath.ofPlunges(
                new double[] {0, 60, 90}, new double[] {30, 75, 90}, new double[] {60, 90, 0}, new double[] {90, 90, 0
                });

        HandLine line = METHOD.reconcile(path, List.of(mark(0, 335), mark(20, 335)), List.of());

        LineAngle angle = line.angleAt(80).orElseThrow();
        assertFalse(angle.hasMean());
        assertThrows(IllegalArgumentException.class, angle::mean);
        // a hole that steepens without leaving azimuth 090 has its low side to the west at last, and the line 25
        // clockwise of it
        assertEquals(295, angle.frame().lineAngle(WallReference.north()), 1e-9);
        assertEquals("no low side, sigma 2.0", new LineAngle(angle.frame(), angle.reference(), 2).toString());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 180.001, Double.NaN, Double.POSITIVE_INFINITY})
    void aToleranceOutsideItsRangeIsRefused(double tolerance) {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> new HandMethod(WallReference.lowSide(), MarkNoise.assumed(), tolerance, 1));

        assertTrue(refused.getMessage().contains("tolerance"), refused.getMessage());
        assertTrue(refused.getMessage().contains("180"), refused.getMessage());
    }

    @Test
    void noNeighbourAtAllIsRefused() {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> Marks.withNeighbours(0));

        assertTrue(refused.getMessage().contains("neighbours is 0"), refused.getMessage());
    }

    @Test
    void theVerdictStandsBesideTheMarkWithItsSigma() {
        OrientationMark mark = mark(10, 335).withSigma(4);

        HandLine line = METHOD.reconcile(STRAIGHT, List.of(mark), List.of());

        assertEquals(List.of(new MarkJudgement(mark, 4, OptionalDouble.empty(), Verdict.ALONE)), line.marks());
    }
}
