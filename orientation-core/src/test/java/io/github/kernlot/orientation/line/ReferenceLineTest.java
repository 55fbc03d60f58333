package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.internal.Degrees;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReferenceLineTest {

    private static final HolePath PATH = HolePath.straight(HoleDirection.ofInclination(20, 40));
    private static final LineModel MODEL = LineModel.assumed();
    private static final CoreDiameter CORE = CoreDiameter.ofMillimetres(63.5);

    private static LineSimulation simulation() {
        List<Double> marks = new ArrayList<>();
        List<Double> wanted = new ArrayList<>();
        List<Join> joins = new ArrayList<>();
        for (int i = 1; i <= 16; i++) {
            marks.add(3.0 * i);
            wanted.add(3.0 * i - 1.3);
            JoinFit fit = i == 11 ? JoinFit.BROKEN : i % 4 == 0 ? JoinFit.DOUBTFUL : JoinFit.LOCKED;
            joins.add(new Join(3.0 * i, fit));
        }
        return new LineSimulation(MODEL, PATH, CORE, marks, joins, wanted);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void theLineIsThatOfADensePass(long seed) {
        LineSimulation simulation = simulation();
        SimulatedLine hole = simulation.run(seed);
        ReferenceLine line = MODEL.reconcile(PATH, hole.marks(), simulation.joins());
        List<DenseLine.Seen> seen = DenseLine.Seen.all(MODEL, PATH, hole.marks());
        DenseLine dense = new DenseLine(1440, MODEL.drift(), MODEL.blunders());
        double shared = Math.exp(-Math.pow(Math.toRadians(MODEL.noise().bias()), 2) / 2);
        for (double depth : simulation.truthDepths()) {
            double[] density = dense.at(depth, seen, simulation.joins());
            double cosine = 0;
            double sine = 0;
            for (int i = 0; i < density.length; i++) {
                double angle = 2 * Math.PI * i / density.length;
                cosine += density[i] * Math.cos(angle) * 360 / density.length;
                sine += density[i] * Math.sin(angle) * 360 / density.length;
            }
            double sigma = Math.toDegrees(Math.sqrt(-2 * Math.log(Math.hypot(cosine, sine) * shared)));
            LinePosterior posterior = line.at(depth).orElseThrow();
            double mean = posterior.frame().turnFrom(PATH.carriedFrameAt(depth));

            assertEquals(0, Degrees.wrap180(mean - Math.toDegrees(Math.atan2(sine, cosine))), 0.02);
            assertEquals(1, posterior.sigma() / sigma, 0.01);
        }
    }

    @Test
    void aSimulatedBlunderIsFound() {
        LineSimulation simulation = simulation();
        int found = 0;
        int blunders = 0;
        for (long seed = 1; seed <= 20; seed++) {
            SimulatedLine hole = simulation.run(seed);
            List<MarkPosterior> marks =
                    MODEL.reconcile(PATH, hole.marks(), simulation.joins()).marks();
            for (int i = 0; i < marks.size(); i++) {
                if (hole.kinds().get(i) != MarkPosterior.Verdict.SOUND) {
                    blunders++;
                    found += marks.get(i).verdict() == MarkPosterior.Verdict.SOUND ? 0 : 1;
                }
            }
        }
        assertTrue(blunders > 10, blunders + " blunders");
        assertTrue(found > 0.8 * blunders, found + " of " + blunders);
    }

    @Test
    void withoutAMarkThePieceIsUnanchored() {
        List<Join> joins = List.of(new Join(10, JoinFit.BROKEN));
        ReferenceLine line = MODEL.reconcile(PATH, List.of(OrientationMark.of(5, 20, CORE)), joins);

        assertTrue(line.at(10).isPresent());
        assertTrue(line.at(10.001).isEmpty());
        assertTrue(line.influences(11).isEmpty());
    }

    @Test
    void aLoneMarkNeverOrientsCoreWithTheAssumedPriors() {
        ReferenceLine line = MODEL.reconcile(PATH, List.of(OrientationMark.of(5, 20, CORE)), List.of());

        LinePosterior posterior = line.at(5).orElseThrow();
        assertEquals(25, posterior.sigma(), 3);
        assertTrue(line.marks().get(0).predicted().isEmpty());
        assertEquals(
                MODEL.blunders().sound(),
                line.marks().get(0).chances().orElseThrow().sound(),
                1e-9);
    }

    @Test
    void oneMarkAgainstItsOppositeHasTwoModes() {
        List<OrientationMark> marks = List.of(OrientationMark.of(5, 20, CORE), OrientationMark.of(6, 200, CORE));
        LinePosterior posterior =
                MODEL.reconcile(PATH, marks, List.of()).at(5.5).orElseThrow();

        List<LineMode> modes = posterior.modes();
        assertEquals(2, modes.size());
        assertEquals(0.5, modes.get(0).weight(), 0.02);
        assertEquals(
                180,
                Math.abs(Degrees.wrap180(modes.get(0).angle() - modes.get(1).angle())),
                0.1);
    }

    @Test
    void aMarksOwnPriorsReplaceThoseOfTheModel() {
        OrientationMark doubted = OrientationMark.of(5, 20, CORE).withBlunders(new MarkBlunders(0.1, 0.6));
        ReferenceLine line = MODEL.reconcile(PATH, List.of(doubted), List.of());
        ReferenceLine model = MODEL.withBlunders(new MarkBlunders(0.1, 0.6))
                .reconcile(PATH, List.of(OrientationMark.of(5, 20, CORE)), List.of());

        assertEquals(model.at(5).orElseThrow().sigma(), line.at(5).orElseThrow().sigma(), 0);
        assertEquals(
                new MarkChances(0.3, 0.1, 0.6).wrong(),
                line.marks().get(0).chances().orElseThrow().wrong(),
                1e-9);
        assertEquals(0, MODEL.reconcile(PATH, List.of(doubted), List.of()).logEvidence() - model.logEvidence(), 1e-12);
    }

    @Test
    void linesAndInfluencesPrintWhatAGeologistAsks() {
        List<OrientationMark> marks = List.of(
                OrientationMark.of(5, 20, CORE), OrientationMark.of(6, 200, CORE), OrientationMark.of(7, 20, CORE));
        ReferenceLine line = MODEL.reconcile(PATH, marks, List.of());

        assertEquals("reference line: 2 of 3 marks are sound", line.toString());
        assertEquals(
                "line by hand: 0 of 3 marks agree",
                HandMethod.assumed().reconcile(PATH, marks, List.of()).toString());
        assertTrue(
                line.influences(5).get(0).toString().matches("0\\.[0-9]{2} for the mark at 5\\.00 m"),
                line.influences(5).get(0).toString());
    }
}
