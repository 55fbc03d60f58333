package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.line.CircleGrid.Pair;
import io.github.kernlot.orientation.line.CircleGrid.Spectrum;
import java.util.List;

/**
 * Exact inference on a chain of angles: each angle is the one before plus a random turn, and each is observed with a likelihood of
 * any shape. Messages run down and up the chain on a grid; a transition is a convolution, and so a product of Fourier
 * coefficients. The first angle is uniform before anything is observed.
 */
final class CircularChain {

    /** Rounding can leave a positive function negative by as little, and observations that exclude each other no mass at all. */
    private static final double LEAST = 1e-150;

    private final CircleGrid grid;
    private final List<double[]> likelihoods;
    private final List<Spectrum> transitions;
    /** What an angle's own observation and all above it say, and the same from below. */
    private final Spectrum[] fromAbove;

    private final Spectrum[] fromBelow;

    private final double logEvidence;

    /**
     * Runs both passes, in time and memory linear in the length of the chain.
     *
     * @param grid the grid
     * @param likelihoods of each angle, as a function of the angle
     * @param transitions one less: the coefficients of the probability of each turn of the grid, which sum to 1
     */
    CircularChain(CircleGrid grid, List<double[]> likelihoods, List<Spectrum> transitions) {
        this.grid = grid;
        this.likelihoods = likelihoods;
        this.transitions = transitions;
        int length = likelihoods.size();
        fromAbove = new Spectrum[length];
        fromBelow = new Spectrum[length];
        double log = 0;
        for (int step = 0; step < length; step++) {
            int upwards = length - 1 - step;
            Pair<double[]> arriving = grid.functions(fromAboveAt(step), fromBelowAt(upwards));
            double[] down = times(arriving.one(), likelihoods.get(step));
            double[] up = times(arriving.other(), likelihoods.get(upwards));
            log += Math.log(normalise(down));
            normalise(up);
            Pair<Spectrum> leaving = grid.spectra(down, up);
            fromAbove[step] = leaving.one();
            fromBelow[upwards] = leaving.other();
        }
        logEvidence = log;
    }

    /** The logarithm of the density of all observations. */
    double logEvidence() {
        return logEvidence;
    }

    /** The density of an angle by all observations but its own. */
    double[] withoutOwn(int index) {
        return product(fromAboveAt(index), fromBelowAt(index));
    }

    /** The density of an angle by all observations. */
    double[] marginal(int index) {
        double[] density = times(withoutOwn(index), likelihoods.get(index));
        normalise(density);
        return density;
    }

    /** What all above an angle say of it. */
    double[] above(int index) {
        return grid.function(fromAboveAt(index));
    }

    /** What all below an angle say of it. */
    double[] below(int index) {
        return grid.function(fromBelowAt(index));
    }

    private Spectrum fromAboveAt(int index) {
        return index == 0 ? grid.uniformSpectrum() : fromAbove[index - 1].through(transitions.get(index - 1));
    }

    private Spectrum fromBelowAt(int index) {
        return index == likelihoods.size() - 1
                ? grid.uniformSpectrum()
                : fromBelow[index + 1].back(transitions.get(index));
    }

    private double[] product(Spectrum one, Spectrum other) {
        Pair<double[]> functions = grid.functions(one, other);
        double[] density = times(functions.one(), functions.other());
        normalise(density);
        return density;
    }

    /**
     * The density of an angle between two of the chain, or beyond an end, by all observations.
     *
     * @param index how many angles of the chain lie above it
     * @param since the transition from the angle above; not used where there is none
     * @param until the transition to the angle below; not used where there is none
     */
    double[] between(int index, Spectrum since, Spectrum until) {
        return product(downSpectrum(index, since), upSpectrum(index, until));
    }

    /** What the first angles say of a place below them. */
    double[] down(int index, Spectrum since) {
        return grid.function(downSpectrum(index, since));
    }

    private Spectrum downSpectrum(int index, Spectrum since) {
        return index == 0 ? grid.uniformSpectrum() : fromAbove[index - 1].through(since);
    }

    /** What all but the first angles say of a place above them. */
    double[] up(int index, Spectrum until) {
        return grid.function(upSpectrum(index, until));
    }

    private Spectrum upSpectrum(int index, Spectrum until) {
        return index == likelihoods.size() ? grid.uniformSpectrum() : fromBelow[index].back(until);
    }

    double[] likelihood(int index) {
        return likelihoods.get(index);
    }

    /** The transition from an angle to the next. */
    Spectrum transition(int index) {
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
    double probabilityUniform(int index, Spectrum since, Spectrum doubtful, Spectrum until, double prior) {
        if (prior == 0 || prior == 1) {
            return prior;
        }
        Spectrum down = fromAbove[index - 1].through(since).through(doubtful).through(until);
        Spectrum up = fromBelow[index];
        double sum = 0;
        for (int k = 1; k < down.real().length; k++) {
            double twice = 2 * k == grid.size() ? 1 : 2;
            sum += twice * (down.real()[k] * up.real()[k] + down.imaginary()[k] * up.imaginary()[k]);
        }
        double uniform = down.real()[0] * up.real()[0];
        double other = Math.max(0, uniform + sum);
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
