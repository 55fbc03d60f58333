package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.internal.Degrees;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MarkInfluenceTest {

    private static final HolePath PATH = HolePath.straight(HoleDirection.ofInclination(35, 140));
    private static final List<Join> JOINS = List.of(new Join(7, JoinFit.LOCKED), new Join(13, JoinFit.DOUBTFUL));
    private static final double[] OFFSETS = {10, 14, 7, 187, 2, 95};

    private static List<OrientationMark> marks(int moved, double by) {
        List<OrientationMark> marks = new ArrayList<>();
        for (int i = 0; i < OFFSETS.length; i++) {
            double offset = OFFSETS[i] - (i == moved ? by : 0);
            OrientationMark mark =
                    OrientationMark.of(3.0 * (i + 1), Degrees.wrap360(offset), CoreDiameter.ofMillimetres(63.5));
            // two marks with priors of their own
            marks.add(i == 1 || i == 3 ? mark.withBlunders(new MarkBlunders(0.1, 0.4)) : mark);
        }
        return marks;
    }

    @Test
    void theInfluenceOfEachMarkIsTheFiniteDifferenceOfTheLine() {
        LineModel model = LineModel.assumed();
        double step = 1e-3;
        for (double depth : new double[] {1, 9, 12.5, 13.5, 18, 20}) {
            List<MarkInfluence> influences =
                    model.reconcile(PATH, marks(-1, 0), JOINS).influences(depth);
            for (int i = 0; i < OFFSETS.length; i++) {
                double plus = model.reconcile(PATH, marks(i, step), JOINS)
                        .at(depth)
                        .orElseThrow()
                        .mean();
                double minus = model.reconcile(PATH, marks(i, -step), JOINS)
                        .at(depth)
                        .orElseThrow()
                        .mean();
                assertEquals(
                        Degrees.wrap180(plus - minus) / (2 * step),
                        influences.get(i).weight(),
                        5e-5);
            }
        }
    }

    @Test
    void withoutBlundersAndSlipsTheInfluencesSumToOne() {
        LineModel model =
                LineModel.assumed().withBlunders(new MarkBlunders(0, 0)).withDrift(new LineDrift(0.2, 0.5, 3, 0));
        List<OrientationMark> near = marks(-1, 0).subList(0, 3).stream()
                .map(mark -> mark.withBlunders(model.blunders()))
                .toList();
        double sum = model.reconcile(PATH, near, JOINS).influences(8).stream()
                .mapToDouble(MarkInfluence::weight)
                .sum();
        assertEquals(1, sum, 1e-9);
    }
}
