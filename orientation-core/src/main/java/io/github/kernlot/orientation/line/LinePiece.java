package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.CircleGrid.Spectrum;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The line on one piece of core, between two broken joins or an end of the hole: the chain of its used marks. Angles are those of
 * the drawn line in the carried frame.
 */
final class LinePiece {

    private final LineModel model;
    private final CircleGrid grid;
    private final List<Sighting> sightings;
    private final double[] depths;
    private final List<Join> joins;
    private final CircularChain chain;

    /**
     * Reconciles the marks of one piece.
     *
     * @param model the model
     * @param sightings the used marks in the order of depth, at least one
     * @param joins the locked and doubtful joins in the order of depth
     */
    LinePiece(LineModel model, List<Sighting> sightings, List<Join> joins) {
        this.model = model;
        this.sightings = sightings;
        this.joins = joins;
        this.depths = sightings.stream().mapToDouble(Sighting::depth).toArray();
        this.grid = CircleGrid.resolving(
                sightings.stream().mapToDouble(Sighting::sigma).min().orElseThrow());
        List<double[]> likelihoods = new ArrayList<>();
        List<Spectrum> transitions = new ArrayList<>();
        for (int i = 0; i < depths.length; i++) {
            likelihoods.add(likelihood(sightings.get(i)));
            if (i > 0) {
                transitions.add(transition(depths[i - 1], depths[i]));
            }
        }
        this.chain = new CircularChain(grid, likelihoods, transitions);
    }

    private double[] likelihood(Sighting sighting) {
        MarkBlunders blunders = model.blunders();
        double[] sound = grid.gaussian(sighting.angle(), sighting.sigma());
        double[] flipped = grid.gaussian(sighting.angle() + 180, sighting.sigma());
        double[] likelihood = new double[grid.size()];
        for (int i = 0; i < likelihood.length; i++) {
            likelihood[i] = blunders.sound() * sound[i] + blunders.flipped() * flipped[i] + blunders.wrong() / 360;
        }
        return likelihood;
    }

    /** From one depth to another; a join at the upper depth lies between, one at the lower does not. */
    private Spectrum transition(double from, double to) {
        return transition(to - from, joins.subList(joinsAbove(from), joinsAbove(to)));
    }

    private int joinsAbove(double depth) {
        int low = 0;
        int high = joins.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (joins.get(middle).depth() < depth) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private Spectrum transition(double length, List<Join> between) {
        LineDrift drift = model.drift();
        double variance = drift.wander() * drift.wander() * length;
        double held = 1;
        for (Join join : between) {
            boolean locked = join.fit() == JoinFit.LOCKED;
            double sigma = locked ? drift.locked() : drift.doubtful();
            variance += sigma * sigma;
            held *= locked ? 1 : 1 - drift.slip();
        }
        return gaussian(variance, held);
    }

    /** A Gaussian turn that happens with a probability, and a uniform one else. */
    private Spectrum gaussian(double variance, double held) {
        double[] real = new double[grid.size() / 2 + 1];
        double rate = variance * Math.pow(Math.PI / 180, 2) / 2;
        real[0] = 1;
        for (int k = 1; k < real.length; k++) {
            real[k] = held * Math.exp(-rate * k * k);
        }
        return new Spectrum(real, new double[real.length]);
    }

    /** How many marks lie above a depth or at it. */
    private int marksAbove(double depth) {
        int index = Arrays.binarySearch(depths, Math.nextUp(depth));
        index = index >= 0 ? index : -index - 1;
        while (index > 0 && depths[index - 1] > depth) {
            index--;
        }
        return index;
    }

    double logEvidence() {
        return chain.logEvidence();
    }

    /** The line at a depth by all marks of the piece. */
    CircularPosterior at(double depth) {
        int index = marksAbove(depth);
        Spectrum since = transition(index > 0 ? depths[index - 1] : depth, depth);
        Spectrum until = transition(depth, index < depths.length ? depths[index] : depth);
        return posterior(chain.between(index, since, until));
    }

    private CircularPosterior posterior(double[] density) {
        return new CircularPosterior(grid, density, model.noise().bias());
    }

    /** How far the line at a depth moves with each mark: degrees per degree by which a mark moves where it puts the line. */
    List<MarkInfluence> influences(double depth) {
        int index = marksAbove(depth);
        double[] radians = ChainInfluence.on(
                grid,
                chain,
                index,
                transition(index > 0 ? depths[index - 1] : depth, depth),
                transition(depth, index < depths.length ? depths[index] : depth),
                sightings.stream().map(this::slope).toList());
        List<MarkInfluence> influences = new ArrayList<>();
        for (int i = 0; i < radians.length; i++) {
            influences.add(new MarkInfluence(sightings.get(i).mark(), Math.toDegrees(radians[i])));
        }
        return influences;
    }

    /** The derivative of a mark's likelihood by the angle at which it puts the line, per degree. */
    private double[] slope(Sighting sighting) {
        double[] slope = new double[grid.size()];
        double[] sound = grid.gaussianSlope(sighting.angle(), sighting.sigma());
        double[] flipped = grid.gaussianSlope(sighting.angle() + 180, sighting.sigma());
        for (int i = 0; i < slope.length; i++) {
            slope[i] = model.blunders().sound() * sound[i] + model.blunders().flipped() * flipped[i];
        }
        return slope;
    }

    /** What was found of one used mark. */
    MarkPosterior mark(int index) {
        Sighting sighting = sightings.get(index);
        double[] others = chain.withoutOwn(index);
        double sound = model.blunders().sound() * overlap(others, grid.gaussian(sighting.angle(), sighting.sigma()));
        double flipped =
                model.blunders().flipped() * overlap(others, grid.gaussian(sighting.angle() + 180, sighting.sigma()));
        double wrong = model.blunders().wrong() / 360;
        double all = sound + flipped + wrong;
        return new MarkPosterior(
                sighting.mark(),
                sighting.sigma(),
                predicted(sighting, others),
                sound / all,
                flipped / all,
                wrong / all);
    }

    private double overlap(double[] density, double[] likelihood) {
        double sum = 0;
        for (int i = 0; i < density.length; i++) {
            sum += density[i] * likelihood[i];
        }
        return sum * grid.step();
    }

    /** What a mark that was left out should have read. */
    OptionalDouble predicted(Sighting leftOut) {
        int index = marksAbove(leftOut.depth());
        double depth = leftOut.depth();
        Spectrum since = transition(index > 0 ? depths[index - 1] : depth, depth);
        Spectrum until = transition(depth, index < depths.length ? depths[index] : depth);
        return predicted(leftOut, chain.between(index, since, until));
    }

    private OptionalDouble predicted(Sighting sighting, double[] others) {
        CircularPosterior posterior = posterior(others);
        return posterior.hasMean()
                ? OptionalDouble.of(Degrees.wrap360(sighting.mark().offset() + sighting.angle() - posterior.mean()))
                : OptionalDouble.empty();
    }

    /** The probability that a doubtful join slipped. */
    double slip(Join join) {
        double prior = model.drift().slip();
        int index = marksAbove(join.depth());
        if (index == 0 || index == depths.length) {
            return prior;
        }
        int place = joins.indexOf(join);
        double doubtful = model.drift().doubtful();
        return chain.probabilityUniform(
                index,
                transition(join.depth() - depths[index - 1], joins.subList(joinsAbove(depths[index - 1]), place)),
                gaussian(doubtful * doubtful, 1),
                transition(depths[index] - join.depth(), joins.subList(place + 1, joinsAbove(depths[index]))),
                prior);
    }
}
