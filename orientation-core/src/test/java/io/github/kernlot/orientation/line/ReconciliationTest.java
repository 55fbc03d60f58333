package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.line.MarkJudgement.Verdict;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Six marks in a hole that curves, the fourth made on the top for the bottom. The data were derived from the closed form of the
 * drift of a straight line, {@code phi = -integral of cos I dA}, and checked numerically apart from this library; the line stands
 * 25 degrees from the low side at the collar.
 */
class ReconciliationTest {

    private static final double[][] PLUNGES = {
        {0, 60, 90}, {30, 60.2, 90.6}, {60, 60.5, 91.4}, {90, 60.4, 92.5}, {120, 60.9, 93.9}, {150, 61.3, 95.2}
    };
    private static final double[] OFFSETS = {337.000, 334.020, 336.715, 158.172, 336.393, 340.531};
    private static final HandLine LINE = reconciled();

    private static HandLine reconciled() {
        List<OrientationMark> marks = new ArrayList<>();
        for (int i = 0; i < OFFSETS.length; i++) {
            marks.add(Marks.mark(PLUNGES[i][0], OFFSETS[i]).withSigma(2));
        }
        return HandMethod.assumed().reconcile(BentPath.ofPlunges(PLUNGES), marks, List.of());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "reconciliation.csv", useHeadersInDisplayName = true)
    void theLineIsFoundWithTheDriftTakenOff(ArgumentsAccessor row) {
        double depth = row.getDouble(0);
        double drift = row.getDouble(1);
        double residual = row.getDouble(2);

        // x at a depth is x at the collar and the drift; both were given to four places
        assertEquals(25 + drift, LINE.angleAt(depth).orElseThrow().mean(), 1e-3, row.getString(4));

        MarkJudgement mark = LINE.marks().stream()
                .filter(judgement -> judgement.mark().depth() == depth)
                .findFirst()
                .orElseThrow();
        assertEquals(Verdict.valueOf(row.getString(3)), mark.verdict());
        // the prediction leaves the mark itself out, so that of five good marks each residual stands 5/4 as far off
        double expected = mark.verdict() == Verdict.AGREES ? residual * 5 / 4 : residual;
        assertEquals(expected, mark.residual().orElseThrow(), 2e-3, row.getString(4));
    }

    @Test
    void theDriftThatIsNotTakenOffMovesTheLineByTwoDegrees() {
        double sum = 0;
        for (double offset : OFFSETS) {
            sum += offset > 300 ? 360 - offset : 0;
        }

        // what the trade would get without it: 23.07 instead of 25.00
        assertEquals(23.07, sum / 5, 0.005);
        assertEquals(25.00, LINE.angleAt(0).orElseThrow().mean(), 0.005);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "reconciliation.csv", useHeadersInDisplayName = true)
    void theInferenceFindsTheSameLineAndTheFlip(ArgumentsAccessor row) {
        double depth = row.getDouble(0);
        double residual = row.getDouble(2);
        List<OrientationMark> marks = new ArrayList<>();
        for (int i = 0; i < OFFSETS.length; i++) {
            marks.add(Marks.mark(PLUNGES[i][0], OFFSETS[i]).withSigma(2));
        }
        // the worked example has a line that is straight: no wander
        LineModel straight = LineModel.assumed().withDrift(new LineDrift(0, 0, 0, 0));
        ReferenceLine line = straight.reconcile(BentPath.ofPlunges(PLUNGES), marks, List.of());
        MarkPosterior mark = line.marks().stream()
                .filter(found -> found.mark().depth() == depth)
                .findFirst()
                .orElseThrow();

        // by hand the flip is left out; here it tells as much as a sound mark, and its 1 degree moves the mean by a
        // sixth
        double sixth = (2.0 - 1.5 + 0.5 + 1.0 - 2.0 + 1.0) / 6;
        assertEquals(25 + row.getDouble(1) - sixth, line.at(depth).orElseThrow().mean(), 0.02, row.getString(4));
        assertTrue(Math.abs(sixth) < line.at(depth).orElseThrow().sigma());
        boolean flipped = row.getString(3).equals("DISAGREES");
        assertEquals(flipped ? MarkPosterior.Verdict.FLIPPED : MarkPosterior.Verdict.SOUND, mark.verdict());
        // the prediction leaves the mark itself out, so that of six marks each residual stands 6/5 as far off
        double own = Math.IEEEremainder(residual - (flipped ? 180 : 0), 360);
        double expected = (own - sixth) * 6 / 5 + (flipped ? 180 : 0);
        assertEquals(0, Marks.apart(expected, mark.residual().orElseThrow()), 0.05, row.getString(4));
    }
}
