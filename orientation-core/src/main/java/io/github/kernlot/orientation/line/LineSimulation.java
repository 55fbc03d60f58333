package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.MarkPosterior.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Holes whose truth is known, by the same model that reconciles them: to try a procedure before drilling. How many marks does it
 * take, what if one in ten is wrong?
 *
 * @param model what is assumed of marks and of the line between them
 * @param path the path of the hole
 * @param diameter the diameter of the core
 * @param markDepths where marks are made, metres along the hole
 * @param joins the joins of the core
 * @param truthDepths where the true line is wanted, beside the marks
 */
public record LineSimulation(
        LineModel model,
        HolePath path,
        CoreDiameter diameter,
        List<Double> markDepths,
        List<Join> joins,
        List<Double> truthDepths) {

    /** Copies the lists, sorted by depth. */
    public LineSimulation {
        markDepths = markDepths.stream().sorted().toList();
        joins = joins.stream().sorted(Comparator.comparingDouble(Join::depth)).toList();
        truthDepths = truthDepths.stream().sorted().toList();
    }

    /**
     * Draws one hole.
     *
     * @param seed any number; the same seed draws the same hole
     * @return the hole
     * @throws IllegalArgumentException if the path does not reach a depth or the side of the marks does not exist there
     */
    public SimulatedLine run(long seed) {
        return new Draw(RandomSource.XO_RO_SHI_RO_128_PP.create(seed)).hole();
    }

    /** One hole being drawn. */
    private final class Draw {
        private final UniformRandomProvider random;
        private final ZigguratSampler.NormalizedGaussian gaussian;
        private final TreeMap<Double, Double> truth = new TreeMap<>();
        private final List<OrientationMark> marks = new ArrayList<>();
        private final List<Verdict> kinds = new ArrayList<>();
        private final List<Join> slipped = new ArrayList<>();

        private Draw(UniformRandomProvider random) {
            this.random = random;
            this.gaussian = ZigguratSampler.NormalizedGaussian.of(random);
        }

        private SimulatedLine hole() {
            walk();
            double bias = model.noise().bias() * gaussian.sample();
            for (double depth : markDepths) {
                mark(depth, bias);
            }
            return new SimulatedLine(LineSimulation.this, marks, kinds, slipped, truth);
        }

        private void walk() {
            TreeSet<Double> stops = new TreeSet<>(markDepths);
            stops.addAll(truthDepths);
            double angle = 360 * random.nextDouble();
            double here = 0;
            int next = 0;
            for (double stop : stops) {
                // a join at a depth lies below what else is there
                while (next < joins.size() && joins.get(next).depth() < stop) {
                    angle = across(joins.get(next++), angle);
                }
                angle += model.drift().wander() * Math.sqrt(stop - here) * gaussian.sample();
                truth.put(stop, Degrees.wrap360(angle));
                here = stop;
            }
        }

        private double across(Join join, double angle) {
            LineDrift drift = model.drift();
            boolean slips = join.fit() == JoinFit.BROKEN
                    || (join.fit() == JoinFit.DOUBTFUL && random.nextDouble() < drift.slip());
            if (slips) {
                slipped.add(join);
                return 360 * random.nextDouble();
            }
            double sigma = join.fit() == JoinFit.LOCKED ? drift.locked() : drift.doubtful();
            return angle + sigma * gaussian.sample();
        }

        private void mark(double depth, double bias) {
            Verdict kind = kind();
            double sigma = model.noise().sigma(path.directionAt(depth), model.side(), diameter);
            CoreFrame core = path.carriedFrameAt(depth).turned(truth.getOrDefault(depth, 0.0));
            double miss =
                    switch (kind) {
                        case SOUND, LEFT_OUT -> bias + sigma * gaussian.sample();
                        case FLIPPED -> 180 + bias + sigma * gaussian.sample();
                        case WRONG -> 360 * random.nextDouble();
                    };
            kinds.add(kind);
            marks.add(OrientationMark.of(depth, Degrees.wrap360(miss - core.lineAngle(model.side())), diameter));
        }

        private Verdict kind() {
            double drawn = random.nextDouble();
            if (drawn < model.blunders().flipped()) {
                return Verdict.FLIPPED;
            }
            return drawn < model.blunders().flipped() + model.blunders().wrong() ? Verdict.WRONG : Verdict.SOUND;
        }
    }
}
