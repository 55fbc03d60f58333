package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.circle.CircleGrid;
import io.github.kernlot.orientation.internal.circle.GaussianTurn;
import io.github.kernlot.orientation.internal.circle.Transition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    private final double[] joinDepths;
    private final DrawnLines drawn;
    private final CircularChain chain;

    /**
     * Reconciles the marks of one piece.
     *
     * @param model the model
     * @param sightings the used marks in the order of depth, at least one
     * @param joins the locked and doubtful joins in the order of depth
     * @param drawn where the line was drawn
     */
    LinePiece(LineModel model, List<Sighting> sightings, List<Join> joins, DrawnLines drawn) {
        this.model = model;
        this.drawn = drawn;
        this.sightings = sightings;
        this.joins = joins;
        this.joinDepths = joins.stream().mapToDouble(Join::depth).toArray();
        this.depths = sightings.stream().mapToDouble(Sighting::depth).toArray();
        this.grid = CircleGrid.resolving(narrowest());
        List<double[]> likelihoods = new ArrayList<>();
        List<Transition> transitions = new ArrayList<>();
        for (int i = 0; i < depths.length; i++) {
            likelihoods.add(likelihood(sightings.get(i)));
            if (i > 0) {
                transitions.add(transition(depths[i - 1], depths[i]));
            }
        }
        this.chain = new CircularChain(grid, likelihoods, transitions);
    }

    /**
     * The smallest standard deviation that the line has anywhere if every mark is sound and no join slipped: that of a random walk
     * seen from above (Kalman's filter) and from below.
     */
    private double narrowest() {
        double[] fromAbove = precisions(false);
        double[] fromBelow = precisions(true);
        double greatest = 0;
        for (int i = 0; i < depths.length; i++) {
            double own = 1 / (sightings.get(i).sigma() * sightings.get(i).sigma());
            greatest = Math.max(greatest, fromAbove[i] + fromBelow[i] - own);
        }
        return 1 / Math.sqrt(greatest);
    }

    /** What each mark and all on one side of it say, as one over the variance. */
    private double[] precisions(boolean fromBelow) {
        double[] precisions = new double[depths.length];
        double precision = 0;
        for (int step = 0; step < depths.length; step++) {
            int i = fromBelow ? depths.length - 1 - step : step;
            if (step > 0) {
                int upper = fromBelow ? i : i - 1;
                precision = 1 / (1 / precision + drift(depths[upper], depths[upper + 1]).variance);
            }
            precision += 1 / (sightings.get(i).sigma() * sightings.get(i).sigma());
            precisions[i] = precision;
        }
        return precisions;
    }

    private MarkBlunders blunders(Sighting sighting) {
        return sighting.mark().blunders().orElse(model.blunders());
    }

    private double[] likelihood(Sighting sighting) {
        MarkBlunders blunders = blunders(sighting);
        double[] sound = grid.gaussian(sighting.angle(), sighting.sigma());
        double[] flipped = grid.gaussian(sighting.angle() + 180, sighting.sigma());
        double[] likelihood = new double[grid.size()];
        for (int i = 0; i < likelihood.length; i++) {
            likelihood[i] = blunders.sound() * sound[i] + blunders.flipped() * flipped[i] + blunders.wrong() / 360;
        }
        return likelihood;
    }

    /** A Gaussian turn with this variance that happens with a probability, and a uniform one else. */
    private record Drift(double variance, double held) {}

    /** From one depth to another; a join at the upper depth lies between, one at the lower does not. */
    private Drift drift(double from, double to) {
        return drift(from, to, joins.subList(above(joinDepths, from), above(joinDepths, to)));
    }

    private Drift drift(double from, double to, List<Join> between) {
        double length = drawn.length(from, to);
        LineDrift drift = model.drift();
        double variance = drift.wander() * drift.wander() * length;
        double held = 1;
        for (Join join : between) {
            boolean locked = join.fit() == JoinFit.LOCKED;
            double sigma = locked ? drift.locked() : drift.doubtful();
            variance += sigma * sigma;
            held *= locked ? 1 : 1 - drift.slip();
        }
        return new Drift(variance, held);
    }

    private Transition transition(double from, double to) {
        return transition(drift(from, to));
    }

    private Transition transition(Drift drift) {
        return new GaussianTurn(grid, drift.variance, drift.held);
    }

    /** How many of some increasing depths are less than a depth. */
    private static int above(double[] depths, double depth) {
        int low = 0;
        int high = depths.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (depths[middle] < depth) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** How many marks lie above a depth or at it. */
    private int marksAbove(double depth) {
        return above(depths, Math.nextUp(depth));
    }

    /** A depth among the marks: how many lie above it, and what the line does since the last and until the next. */
    private record Place(int index, Transition since, Transition until) {}

    private Place placeOf(double depth) {
        int index = marksAbove(depth);
        return new Place(
                index,
                transition(index > 0 ? depths[index - 1] : depth, depth),
                transition(depth, index < depths.length ? depths[index] : depth));
    }

    private double[] density(double depth) {
        Place place = placeOf(depth);
        return chain.between(place.index, place.since, place.until);
    }

    boolean isWitness(int index) {
        return sightings.get(index).isWitness();
    }

    double logEvidence() {
        return chain.logEvidence();
    }

    /** The line at a depth by all marks of the piece. */
    CircularPosterior at(double depth) {
        return posterior(density(depth));
    }

    private CircularPosterior posterior(double[] density) {
        return new CircularPosterior(grid, density, model.noise().bias());
    }

    /** How far the line at a depth moves with each mark: degrees per degree by which a mark moves where it puts the line. */
    List<MarkInfluence> influences(double depth) {
        Place place = placeOf(depth);
        List<double[]> slopes = sightings.stream().map(this::slope).toList();
        double[] radians = ChainInfluence.on(grid, chain, place.index, place.since, place.until, slopes);
        List<MarkInfluence> influences = new ArrayList<>();
        for (int i = 0; i < radians.length; i++) {
            if (!isWitness(i)) {
                influences.add(new MarkInfluence(sightings.get(i).mark(), Math.toDegrees(radians[i])));
            }
        }
        return influences;
    }

    /** The derivative of a mark's likelihood by the angle at which it puts the line, per degree. */
    private double[] slope(Sighting sighting) {
        MarkBlunders blunders = blunders(sighting);
        double[] slope = new double[grid.size()];
        double[] sound = grid.gaussianSlope(sighting.angle(), sighting.sigma());
        double[] flipped = grid.gaussianSlope(sighting.angle() + 180, sighting.sigma());
        for (int i = 0; i < slope.length; i++) {
            slope[i] = blunders.sound() * sound[i] + blunders.flipped() * flipped[i];
        }
        return slope;
    }

    /** What was found of one used mark. */
    MarkPosterior mark(int index) {
        Sighting sighting = sightings.get(index);
        MarkBlunders blunders = blunders(sighting);
        double[] others = chain.withoutOwn(index);
        double sound = blunders.sound() * overlap(others, grid.gaussian(sighting.angle(), sighting.sigma()));
        double flipped = blunders.flipped() * overlap(others, grid.gaussian(sighting.angle() + 180, sighting.sigma()));
        double wrong = blunders.wrong() / 360;
        double all = sound + flipped + wrong;
        return new MarkPosterior(
                sighting.mark(),
                sighting.sigma(),
                sightings.size() > 1 ? predicted(sighting, others) : OptionalDouble.empty(),
                Optional.of(new MarkChances(sound / all, flipped / all, wrong / all)));
    }

    /** How much better one used mark agrees with the others read the other way: the logarithm of the ratio. */
    double logMirrorOdds(int index) {
        Sighting sighting = sightings.get(index);
        double[] others = chain.withoutOwn(index);
        // the mark's offset c puts the line at something - c
        double turned = 2 * sighting.mark().offset();
        Sighting mirrored = new Sighting(sighting.mark(), sighting.angle() + turned, sighting.sigma());
        double least = Double.MIN_NORMAL;
        return Math.log(
                (overlap(others, likelihood(mirrored)) + least) / (overlap(others, likelihood(sighting)) + least));
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
        return predicted(leftOut, density(leftOut.depth()));
    }

    private OptionalDouble predicted(Sighting sighting, double[] others) {
        CircularPosterior posterior = posterior(others);
        return posterior.hasMean() ? sighting.offsetFor(posterior.mean()) : OptionalDouble.empty();
    }

    /** The probability that a doubtful join slipped. */
    double slip(Join join) {
        double prior = model.drift().slip();
        int index = marksAbove(join.depth());
        if (index == 0 || index == depths.length) {
            return prior;
        }
        int place = above(joinDepths, join.depth());
        while (!joins.get(place).equals(join)) {
            place++;
        }
        double doubtful = model.drift().doubtful();
        Drift since =
                drift(depths[index - 1], join.depth(), joins.subList(above(joinDepths, depths[index - 1]), place));
        Drift until = drift(join.depth(), depths[index], joins.subList(place + 1, above(joinDepths, depths[index])));
        return chain.probabilityUniform(
                index, transition(since), transition(new Drift(doubtful * doubtful, 1)), transition(until), prior);
    }
}
