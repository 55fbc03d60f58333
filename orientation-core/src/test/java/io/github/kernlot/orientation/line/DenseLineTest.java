package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.internal.Degrees;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The inference against brute force on 7,200 angles, where a closed form does not reach: many marks, sigmas of any size. */
class DenseLineTest {

    private static final HolePath PATH = HolePath.straight(HoleDirection.ofInclination(30, 70));
    private static final LineModel MODEL = LineModel.assumed();
    private static final int FINE = 7200;

    private static void compare(LineModel model, List<OrientationMark> marks, List<Join> joins, double... depths) {
        ReferenceLine line = model.reconcile(PATH, marks, joins);
        List<DenseLine.Seen> seen = DenseLine.Seen.all(model, PATH, marks);
        DenseLine dense = new DenseLine(FINE, model.drift(), model.blunders());
        for (double depth : depths) {
            compare(model, dense.at(depth, seen, joins), line, depth);
        }
        assertEquals(dense.logEvidence(seen, joins), line.logEvidence(), 1e-3);
        int mark = marks.size() / 2;
        MarkChances chances = line.marks().get(mark).chances().orElseThrow();
        double[] expected = dense.chances(mark, seen, joins);
        assertEquals(expected[0], chances.sound(), 1e-4);
        assertEquals(expected[1], chances.flipped(), 1e-4);
        for (int i = 0; i < joins.size(); i++) {
            if (joins.get(i).fit() == JoinFit.DOUBTFUL) {
                assertEquals(dense.slip(i, seen, joins), line.joins().get(i).slipped(), 1e-4);
                return;
            }
        }
    }

    private static void compare(LineModel model, double[] density, ReferenceLine line, double depth) {
        double cosine = 0;
        double sine = 0;
        for (int i = 0; i < density.length; i++) {
            cosine += density[i] * Degrees.cos(360.0 * i / density.length) * 360 / density.length;
            sine += density[i] * Degrees.sin(360.0 * i / density.length) * 360 / density.length;
        }
        double length = Math.hypot(cosine, sine);
        double sigma = Math.hypot(
                Math.toDegrees(Math.sqrt(-2 * Math.log(length))), model.noise().bias());
        double mean = Degrees.atan2(sine, cosine);
        LinePosterior posterior = line.at(depth).orElseThrow();
        String where = "at " + depth + " m, sigma " + sigma;
        // a density without a direction has no mean to agree on
        if (length > 0.05) {
            assertEquals(
                    0, Degrees.wrap180(posterior.frame().turnFrom(PATH.carriedFrameAt(depth)) - mean), 0.02, where);
        }
        assertEquals(1, posterior.sigma() / sigma, 0.01, where);
        double radius = posterior.radius95();
        double within = 0;
        if (model.noise().bias() == 0 && radius > 2) {
            for (int i = 0; i < density.length; i++) {
                double away = Math.abs(Degrees.wrap180(360.0 * i / density.length - mean));
                within += away < radius ? density[i] * 360 / density.length : 0;
            }
            assertEquals(0.95, within, 0.01, where);
        }
    }

    private static LineModel withoutBias(LineModel model) {
        return model.withNoise(new MarkNoise(1, 2, 0.5, 1, 0));
    }

    private static List<OrientationMark> row(int count, double spacing, double sigma) {
        List<OrientationMark> marks = new ArrayList<>();
        double[] misses = {0.7, -1.2, 0.1, 1.9, -0.4, -0.9, 0.6, 0.2, -1.6, 1.1};
        for (int i = 0; i < count; i++) {
            marks.add(Marks.mark(spacing * (i + 1), Degrees.wrap360(48.3 + sigma * misses[i % 10]))
                    .withSigma(sigma));
        }
        return marks;
    }

    @Test
    void manyMarksOnAStillLine() {
        LineModel model = withoutBias(MODEL).withDrift(new LineDrift(1e-3, 0, 3, 0.3));
        compare(model, row(60, 1, 4), List.of(), 0, 30.5, 90);
    }

    @Test
    void manyMarksOnALineWithoutNoise() {
        LineModel model = withoutBias(MODEL).withDrift(new LineDrift(0, 0, 3, 0.3));
        compare(model, row(25, 3, 3), List.of(new Join(31, JoinFit.DOUBTFUL)), 0, 30.5);
    }

    @Test
    void oneSharpMarkBesideManyBluntOnes() {
        List<OrientationMark> marks = new ArrayList<>(row(8, 3, 10));
        marks.set(4, marks.get(4).withSigma(0.3));
        compare(withoutBias(MODEL), marks, List.of(new Join(13, JoinFit.DOUBTFUL)), 0, 12, 15, 15.5, 24);
    }

    @Test
    void bluntMarksOfASteepHole() {
        List<OrientationMark> marks = new ArrayList<>();
        double[] sigmas = {60, 45, 200, 30, 700, 80, 25, 90};
        for (int i = 0; i < sigmas.length; i++) {
            marks.add(Marks.mark(3.0 * (i + 1), Degrees.wrap360(330 + 23 * i)).withSigma(sigmas[i]));
        }
        compare(withoutBias(MODEL), marks, List.of(new Join(9, JoinFit.DOUBTFUL)), 1, 10, 24);
    }

    /** What is left far from many marks that agree, 1e-30 of the peak, decides here which side is believed where. */
    @Test
    void coreThatSlippedWhereItSeemedToFit() {
        List<OrientationMark> marks = new ArrayList<>();
        List<Join> joins = new ArrayList<>();
        for (OrientationMark mark : row(19, 3, 3)) {
            double slipped = mark.depth() < 30 ? 0 : 70;
            marks.add(Marks.mark(mark.depth(), Degrees.wrap360(mark.offset() + slipped)));
            joins.add(new Join(mark.depth() + 1, JoinFit.LOCKED));
        }
        compare(withoutBias(MODEL), marks, joins, 3, 20, 26, 27.5, 28.7, 30, 32, 40, 57);
    }

    @ParameterizedTest
    @ValueSource(longs = {11})
    void aSimulatedHole(long seed) {
        simulated(seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {12, 13, 14, 15, 16, 17, 18, 19})
    @Tag("slow")
    void moreSimulatedHoles(long seed) {
        simulated(seed);
    }

    private static void simulated(long seed) {
        List<Double> depths = new ArrayList<>();
        List<Join> joins = new ArrayList<>();
        for (int i = 1; i <= 12; i++) {
            depths.add(3.0 * i);
            joins.add(new Join(3.0 * i - (i % 3), i % 4 == 1 ? JoinFit.DOUBTFUL : JoinFit.LOCKED));
        }
        joins.add(new Join(29.2, JoinFit.BROKEN));
        LineModel model = MODEL.withBlunders(new MarkBlunders(0.1, 0.2));
        SimulatedLine hole = new LineSimulation(model, PATH, Marks.DIAMETER, depths, joins, List.of()).run(seed);
        List<Join> sorted =
                joins.stream().sorted(Comparator.comparingDouble(Join::depth)).toList();
        compare(model, hole.marks(), sorted, 3, 7.5, 20, 29.2, 40);
    }

    @Test
    void aGridOfAQuarterOfThatChangesNothing() {
        List<DenseLine.Seen> seen = DenseLine.Seen.all(MODEL, PATH, row(6, 3, 3));
        double[] coarse = new DenseLine(1800, MODEL.drift(), MODEL.blunders()).at(10, seen, List.of());
        double[] fine = new DenseLine(FINE, MODEL.drift(), MODEL.blunders()).at(10, seen, List.of());
        assertEquals(
                Arrays.stream(coarse).max().orElseThrow(),
                Arrays.stream(fine).max().orElseThrow(),
                1e-4);
    }
}
