package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.line.MarkJudgement.Verdict;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * What must hold of any marks. The marks come from a seed and not from jqwik's own generators, whose edge cases would put many a
 * mismatch exactly on the tolerance, where rounding decides.
 */
class HandLineProperties {

    private static HolePath path(Random random) {
        return HolePath.straight(HoleDirection.ofInclination(1 + 178 * random.nextDouble(), 360 * random.nextDouble()));
    }

    private static HandMethod method(Random random) {
        return Marks.withNeighbours(1 + random.nextInt(3));
    }

    private static void assertSameLine(HandLine expected, HandLine found, double turn) {
        for (double depth = 0; depth <= 310; depth += 5.3) {
            Optional<LineAngle> one = expected.angleAt(depth);
            Optional<LineAngle> other = found.angleAt(depth);
            assertEquals(one.isPresent(), other.isPresent());
            if (one.isPresent()) {
                assertEquals(
                        0,
                        Marks.apart(one.get().mean() + turn, other.orElseThrow().mean()),
                        1e-9);
                assertEquals(one.get().sigma(), other.orElseThrow().sigma(), 1e-9);
            }
        }
    }

    private static List<Verdict> verdicts(HandLine line) {
        return line.marks().stream().map(MarkJudgement::verdict).toList();
    }

    @Property
    void turningAllMarksTurnsTheLineTheOtherWay(@ForAll long seed) {
        Random random = new Random(seed);
        HolePath path = path(random);
        HandMethod method = method(random);
        List<OrientationMark> marks = Marks.random(random);
        List<Join> joins = Marks.randomJoins(random);
        double turn = 360 * random.nextDouble();

        HandLine line = method.reconcile(path, marks, joins);
        HandLine turned = method.reconcile(path, Marks.turned(marks, turn), joins);

        assertSameLine(line, turned, -turn);
    }

    @Property
    void marksOfTheHighSideAreMarksOfTheLowSideTurnedByHalf(@ForAll long seed) {
        Random random = new Random(seed);
        HolePath path = path(random);
        List<OrientationMark> marks = Marks.random(random);
        List<Join> joins = Marks.randomJoins(random);

        HandLine low = Marks.of(WallReference.lowSide()).reconcile(path, marks, joins);
        HandLine high = Marks.of(WallReference.highSide()).reconcile(path, Marks.turned(marks, 180), joins);

        assertSameLine(low, high, 0);
        assertEquals(verdicts(low), verdicts(high));
    }

    @Property
    void theOrderOfMarksAndJoinsDoesNotMatter(@ForAll long seed) {
        Random random = new Random(seed);
        HolePath path = path(random);
        HandMethod method = method(random);
        List<OrientationMark> marks = Marks.random(random);
        List<Join> joins = Marks.randomJoins(random);
        HandLine line = method.reconcile(path, marks, joins);
        List<OrientationMark> shuffledMarks = new ArrayList<>(marks);
        Collections.shuffle(shuffledMarks, random);
        List<Join> shuffledJoins = new ArrayList<>(joins);
        Collections.shuffle(shuffledJoins, random);

        HandLine shuffled = method.reconcile(path, shuffledMarks, shuffledJoins);

        assertEquals(line.marks(), shuffled.marks());
        assertSameLine(line, shuffled, 0);
    }

    @Property
    void marksLeftOutChangeNothing(@ForAll long seed) {
        Random random = new Random(seed);
        HolePath path = path(random);
        HandMethod method = method(random);
        List<OrientationMark> marks = Marks.random(random);
        List<Join> joins = Marks.randomJoins(random);
        List<OrientationMark> more = new ArrayList<>(marks);
        Marks.random(random).forEach(mark -> more.add(mark.leftOutFor("")));

        HandLine line = method.reconcile(path, marks, joins);
        HandLine withMore = method.reconcile(path, more, joins);

        assertSameLine(line, withMore, 0);
        assertEquals(
                line.marks(),
                withMore.marks().stream()
                        .filter(judgement -> judgement.verdict() != Verdict.LEFT_OUT)
                        .toList());
    }

    @Property
    void aMarkIsAloneExactlyWhereNoOtherUsedMarkIsOnItsPiece(@ForAll long seed) {
        Random random = new Random(seed);
        List<OrientationMark> marks = Marks.random(random);
        List<Join> joins = Marks.randomJoins(random);

        HandLine line = method(random).reconcile(path(random), marks, joins);

        for (MarkJudgement judgement : line.marks()) {
            long together = marks.stream()
                    .filter(mark -> pieceAbove(joins, mark.depth())
                            == pieceAbove(joins, judgement.mark().depth()))
                    .count();
            assertEquals(together == 1, judgement.verdict() == Verdict.ALONE);
        }
    }

    private static long pieceAbove(List<Join> joins, double depth) {
        return joins.stream()
                .filter(join -> join.fit() == JoinFit.BROKEN && join.depth() < depth)
                .count();
    }
}
