package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.line.MarkPosterior.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Are the intervals and the probabilities what they say? Holes drawn from the model, with the bias that their marks share: inclined,
 * steep and wandering, upward.
 */
class LineCalibrationTest {

    private static final LineModel MODEL = LineModel.assumed();
    private static final int STRUCTURES = 10;

    /** Probabilities that were given, and how often the thing was so. */
    private static final class Forecast {
        private double expected;
        private double variance;
        private double squares;
        private int happened;
        private int count;

        void add(double probability, boolean so) {
            expected += probability;
            variance += probability * (1 - probability);
            squares += Math.pow(probability - (so ? 1 : 0), 2);
            happened += so ? 1 : 0;
            count++;
        }

        /** Forecasts that are right miss the number of events by 3 standard deviations in 3 of 1,000 trials. */
        void assertReliable(String what) {
            assertEquals(expected, happened, 3.3 * Math.sqrt(variance) + 1, what);
        }

        double brier() {
            return squares / count;
        }

        double baseRate() {
            return (double) happened / count;
        }
    }

    private final Forecast covered = new Forecast();
    private final Forecast flips = new Forecast();
    private final Forecast wrongs = new Forecast();
    private final Forecast slips = new Forecast();
    /** What was said with a probability between 0.1 and 0.9: neither all too easy. */
    private final Forecast doubts = new Forecast();

    private void add(Forecast forecast, double probability, boolean so) {
        forecast.add(probability, so);
        if (probability > 0.1 && probability < 0.9) {
            doubts.add(probability, so);
        }
    }

    private static LineSimulation simulation(long number) {
        Random random = new Random(number);
        int kind = (int) (number % 3);
        double inclination = kind == 0 ? 30 : kind == 1 ? 5 : 120;
        double azimuth = 360 * random.nextDouble();
        BentPath path = new BentPath(new TreeMap<>());
        for (double depth = 0; depth <= 120; depth += 15) {
            path.stations().put(depth, HoleDirection.ofInclination(inclination, Marks.wrapped(azimuth)));
            azimuth += (kind == 1 ? 25 : 1) * random.nextGaussian();
            inclination = Math.max(2, inclination + random.nextGaussian());
        }
        List<Double> marks = new ArrayList<>();
        List<Join> joins = new ArrayList<>();
        for (double depth = 3 + 3 * random.nextDouble(); depth < 120; depth += 3 + 3 * random.nextDouble()) {
            marks.add(depth);
            double drawn = random.nextDouble();
            JoinFit fit = drawn < 0.03 ? JoinFit.BROKEN : drawn < 0.15 ? JoinFit.DOUBTFUL : JoinFit.LOCKED;
            joins.add(new Join(depth, fit));
        }
        List<Double> structures = new ArrayList<>();
        for (int i = 0; i < STRUCTURES; i++) {
            structures.add(120 * random.nextDouble());
        }
        return new LineSimulation(MODEL, path, Marks.DIAMETER, marks, joins, structures);
    }

    private void holes(int from, int to) {
        for (int number = from; number < to; number++) {
            LineSimulation simulation = simulation(number);
            SimulatedLine hole = simulation.run(number);
            ReferenceLine line = MODEL.reconcile(simulation.path(), hole.marks(), simulation.joins());
            for (double depth : simulation.truthDepths()) {
                line.at(depth).ifPresent(posterior -> {
                    double error = posterior.frame().turnFrom(hole.frameAt(depth));
                    covered.add(0.95, Marks.apart(error, 0) <= posterior.radius95());
                });
            }
            for (int i = 0; i < hole.kinds().size(); i++) {
                MarkChances chances = line.marks().get(i).chances().orElseThrow();
                add(flips, chances.flipped(), hole.kinds().get(i) == Verdict.FLIPPED);
                add(wrongs, chances.wrong(), hole.kinds().get(i) == Verdict.WRONG);
            }
            for (JoinPosterior join : line.joins()) {
                if (join.join().fit() == JoinFit.DOUBTFUL) {
                    add(slips, join.slipped(), hole.slipped().contains(join.join()));
                }
            }
        }
    }

    private void assertCalibrated(double lowest, double highest) {
        assertTrue(
                covered.baseRate() >= lowest && covered.baseRate() <= highest,
                () -> "95 % intervals hold " + covered.baseRate());
        flips.assertReliable("flipped");
        wrongs.assertReliable("wrong");
        slips.assertReliable("slipped");
        doubts.assertReliable("in doubt");
        // knowing the rates alone would score p (1 - p)
        assertTrue(flips.brier() < 0.4 * flips.baseRate(), "Brier of flips " + flips.brier());
        assertTrue(wrongs.brier() < 0.5 * wrongs.baseRate(), "Brier of wrong marks " + wrongs.brier());
        assertTrue(slips.brier() < 0.4 * slips.baseRate(), "Brier of slips " + slips.brier());
    }

    @Test
    void fiftyHolesAreCovered() {
        holes(0, 50);
        assertCalibrated(0.90, 0.99);
    }

    @Test
    @Tag("slow")
    void aThousandHolesAreCovered() {
        holes(100, 1100);
        assertCalibrated(0.94, 0.96);
    }

    /** In one hole a mark can disappoint; over many it must help. */
    @Test
    void oneMarkMoreNarrowsTheIntervalOnAverage() {
        double narrower = 0;
        int count = 0;
        for (long number = 0; number < 12; number++) {
            LineSimulation simulation = simulation(number);
            List<OrientationMark> marks = simulation.run(number).marks();
            ReferenceLine with = MODEL.reconcile(simulation.path(), marks, simulation.joins());
            for (int left : new int[] {3, 9, 15}) {
                List<OrientationMark> fewer = new ArrayList<>(marks);
                double depth = fewer.remove(left).depth();
                ReferenceLine without = MODEL.reconcile(simulation.path(), fewer, simulation.joins());
                if (with.at(depth).isPresent() && without.at(depth).isPresent()) {
                    narrower += without.at(depth).orElseThrow().radius95()
                            - with.at(depth).orElseThrow().radius95();
                    count++;
                }
            }
        }
        assertTrue(count > 20 && narrower / count > 0.1, narrower + " degrees over " + count);
    }
}
