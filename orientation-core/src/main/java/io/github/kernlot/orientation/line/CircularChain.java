package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.circle.CircleGrid;
import io.github.kernlot.orientation.internal.circle.Transition;
import java.util.List;

/**
 * Exact inference on a chain of angles: each angle is the one before plus a random turn, and each is observed with a likelihood of
 * any shape. Messages run down and up the chain on a grid. The first angle is uniform before anything is observed.
 */
final class CircularChain {

    /** Observations that exclude each other leave no mass at all. */
    private static final double LEAST = 1e-150;

    private final CircleGrid grid;
    private final List<double[]> likelihoods;
    private final List<Transition> transitions;
    /** What an angle's own observation and all above it say, and the same from below. */
    private final double[][] fromAbove;

    private final double[][] fromBelow;

    private final double logEvidence;

    /**
     * Runs both passes, in time and memory linear in the length of the chain.
     *
     * @param grid the grid
     * @param likelihoods of each angle, as a function of the angle
     * @param transitions one less: the turn from each angle to the next
     */
    CircularChain(CircleGrid grid, List<double[]> likelihoods, List<Transition> transitions) {
        this.grid = grid;
        this.likelihoods = likelihoods;
        this.transitions = transitions;
        int length = likelihoods.size();
        fromAbove = new double[length][];
        fromBelow = new double[length][];
        double log = 0;
        for (int i = 0; i < length; i++) {
            fromAbove[i] = times(above(i), likelihoods.get(i));
            log += Math.log(normalise(fromAbove[i]));
        }
        for (int i = length - 1; i >= 0; i--) {
            fromBelow[i] = times(below(i), likelihoods.get(i));
            normalise(fromBelow[i]);
        }
        logEvidence = log;
    }

    /** The logarithm of the density of all observations. */
    double logEvidence() {
        return logEvidence;
    }

    /** The density of an angle by all observations but its own. */
    double[] withoutOwn(int index) {
        double[] density = times(above(index), below(index));
        normalise(density);
        return density;
    }

    /** The density of an angle by all observations. */
    double[] marginal(int index) {
        double[] density = times(withoutOwn(index), likelihoods.get(index));
        normalise(density);
        return density;
    }

    /** What all above an angle say of it. */
    double[] above(int index) {
        return index == 0 ? grid.uniform() : transitions.get(index - 1).down(fromAbove[index - 1]);
    }

    /** What all below an angle say of it. */
    double[] below(int index) {
        return index == likelihoods.size() - 1
                ? grid.uniform()
                : transitions.get(index).up(fromBelow[index + 1]);
    }

    /**
     * The density of an angle between two of the chain, or beyond an end, by all observations.
     *
     * @param index how many angles of the chain lie above it
     * @param since the turn from the angle above; not used where there is none
     * @param until the turn to the angle below; not used where there is none
     */
    double[] between(int index, Transition since, Transition until) {
        double[] density = times(down(index, since), up(index, until));
        normalise(density);
        return density;
    }

    /** What the first angles say of a place below them. */
    double[] down(int index, Transition since) {
        return index == 0 ? grid.uniform() : since.down(fromAbove[index - 1]);
    }

    /** What all but the first angles say of a place above them. */
    double[] up(int index, Transition until) {
        return index == likelihoods.size() ? grid.uniform() : until.up(fromBelow[index]);
    }

    double[] likelihood(int index) {
        return likelihoods.get(index);
    }

    /** The transition from an angle to the next. */
    Transition transition(int index) {
        return transitions.get(index);
    }

    int length() {
        return likelihoods.size();
    }

    /**
     * How probable all observations make it that a transition between two angles was uniform, where it is uniform with a prior
     * probability and a given one else.
     *
     * @param index how many angles of the chain lie above it, at least 1 and less than all
     * @param since the transition from the angle above to the doubtful one
     * @param doubtful the transition if it was not uniform
     * @param until the transition from the doubtful one to the angle below
     * @param prior the prior probability of the uniform one
     */
    double probabilityUniform(int index, Transition since, Transition doubtful, Transition until, double prior) {
        if (prior == 0 || prior == 1) {
            return prior;
        }
        double[] down = doubtful.down(since.down(fromAbove[index - 1]));
        double[] up = until.up(fromBelow[index]);
        double uniform = grid.mass(down) * grid.mass(up) / 360;
        double other = grid.mass(times(down, up));
        return prior * uniform / (prior * uniform + (1 - prior) * other);
    }

    private static double[] times(double[] one, double[] other) {
        double[] product = new double[one.length];
        for (int i = 0; i < product.length; i++) {
            product[i] = Math.max(one[i], LEAST) * Math.max(other[i], LEAST);
        }
        return product;
    }

    /** Makes the integral 1 and returns what it was. */
    private double normalise(double[] function) {
        double mass = grid.mass(function);
        for (int i = 0; i < function.length; i++) {
            function[i] /= mass;
        }
        return mass;
    }
}
