package io.github.kernlot.orientation.line.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.line.DrawnLine;
import io.github.kernlot.orientation.line.DrawnLines;
import io.github.kernlot.orientation.line.Holes;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.MarkBlunders;
import io.github.kernlot.orientation.line.MarkedHole;
import io.github.kernlot.orientation.line.Marks;
import io.github.kernlot.orientation.line.OrientationMark;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.MultivariateNormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PieceEvidenceTest {

    private static double evidence(MarkedHole hole, LineModel model) {
        return PieceEvidence.of(hole, model).stream()
                .mapToDouble(piece -> piece.logEvidence(model))
                .sum();
    }

    @Test
    void itIsTheEvidenceOfTheReconciledLine() {
        SplittableRandom random = new SplittableRandom(3);
        LineModel model = LineModel.assumed();
        DrawnLines drawn = DrawnLines.of(List.of(DrawnLine.of(20, 120), DrawnLine.of(150, 290)));
        for (int i = 0; i < 40; i++) {
            List<OrientationMark> marks = new ArrayList<>(Marks.random(new Random(random.nextLong())));
            marks.set(0, marks.get(0).withBlunders(new MarkBlunders(0.3, 0.2)));
            List<Join> joins = Marks.randomJoins(new Random(random.nextLong()));
            MarkedHole hole = MarkedHole.of(Marks.STRAIGHT, marks, joins);
            DrawnLines lines = i % 2 == 0 ? DrawnLines.everywhere() : drawn;
            double expected =
                    model.reconcile(Marks.STRAIGHT, marks, joins, lines).logEvidence();
            assertEquals(expected, evidence(i % 2 == 0 ? hole : hole.withDrawn(drawn), model), 2e-4);
        }
    }

    @Test
    void aMarkAloneSaysNothing() {
        MarkedHole hole = MarkedHole.of(Marks.STRAIGHT, Marks.marks(40));
        assertEquals(-Math.log(360), evidence(hole, LineModel.assumed()), 1e-12);
    }

    @Test
    void aMarkOfGreatSigmaIsUniform() {
        MarkedHole hole =
                MarkedHole.of(Marks.STRAIGHT, List.of(Marks.mark(1, 20).withSigma(1e5), Marks.mark(2, 90)), List.of());
        assertEquals(-2 * Math.log(360), evidence(hole, LineModel.assumed()), 1e-9);
    }

    /** Reference: the multivariate normal density of Commons Math 3.6.1, of the differences of neighbouring marks. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 1})
    void onStiffCoreItIsTheGaussianDensity(double wander) {
        LineModel model = Holes.plain(3, 0.2, wander);
        int count = 40;
        MarkedHole hole = Holes.one(
                model, Marks.STRAIGHT, Holes.every(2, count), Holes.joins(JoinFit.LOCKED, Holes.every(5, 15)), 11);
        List<PieceEvidence.Seen> marks = PieceEvidence.of(hole, model).get(0).marks();
        double[] differences = new double[count - 1];
        double[][] covariance = new double[count - 1][count - 1];
        for (int i = 0; i < count - 1; i++) {
            int upper = i;
            differences[i] =
                    Math.IEEEremainder(marks.get(i + 1).angle() - marks.get(i).angle(), 360);
            long locked = hole.joins().stream()
                    .filter(join -> join.depth() >= 2 * upper + 2 && join.depth() < 2 * upper + 4)
                    .count();
            covariance[i][i] = 2 * 9 + 2 * wander * wander + 0.04 * locked;
            if (i > 0) {
                covariance[i][i - 1] = -9;
                covariance[i - 1][i] = -9;
            }
        }
        double density = new MultivariateNormalDistribution(new double[count - 1], covariance).density(differences);
        assertEquals(Math.log(density) - Math.log(360), evidence(hole, model), 1e-6);
    }
}
