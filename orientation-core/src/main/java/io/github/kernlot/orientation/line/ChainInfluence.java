package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.circle.CircleGrid;
import io.github.kernlot.orientation.internal.circle.Transition;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * How far the mean direction of one angle moves when the observations of a chain do. With g = exp(i angle) and s the slope of the
 * logarithm of a likelihood, E[g] changes by the covariance of g with s; g is carried along the chain to where s is.
 */
final class ChainInfluence {

    /** Added to cos and sin, which changes no covariance: a turn is exact for small values of what is positive. */
    private static final double ABOVE = 2;

    private final CircleGrid grid;
    private final CircularChain chain;
    private final List<double[]> slopes;
    private final double[] mean;
    private final double[] influences;

    /** Messages of 1, 2 + cos and 2 + sin of the angle in question, carried to another angle. */
    private double[][] carried = {};

    private ChainInfluence(CircleGrid grid, CircularChain chain, List<double[]> slopes, double[] posterior) {
        this.grid = grid;
        this.chain = chain;
        this.slopes = slopes;
        this.mean = integrals(posterior);
        this.influences = new double[chain.length()];
    }

    /**
     * The influences on an angle between two of the chain, or beyond an end.
     *
     * @param index how many angles of the chain lie above it
     * @param since the transition from the angle above; not used where there is none
     * @param until the transition to the angle below; not used where there is none
     * @param slopes the derivatives of the likelihoods by what changes
     * @return the change of the mean in radians per unit, for each angle of the chain
     */
    static double[] on(
            CircleGrid grid,
            CircularChain chain,
            int index,
            Transition since,
            Transition until,
            List<double[]> slopes) {
        ChainInfluence influence = new ChainInfluence(grid, chain, slopes, chain.between(index, since, until));
        influence.start(chain.down(index, since));
        for (int i = index; i < chain.length(); i++) {
            Transition step = i == index ? until : chain.transition(i - 1);
            influence.visit(i, step::down, chain.below(i));
        }
        influence.start(chain.up(index, until));
        for (int i = index - 1; i >= 0; i--) {
            Transition step = i == index - 1 ? since : chain.transition(i);
            influence.visit(i, step::up, chain.above(i));
        }
        return influence.influences;
    }

    private void start(double[] message) {
        double[] cosine = new double[grid.size()];
        double[] sine = new double[grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            double angle = Math.toRadians(grid.angle(i));
            cosine[i] = message[i] * (ABOVE + Math.cos(angle));
            sine[i] = message[i] * (ABOVE + Math.sin(angle));
        }
        carried = new double[][] {message, cosine, sine};
    }

    private void visit(int index, UnaryOperator<double[]> step, double[] beyond) {
        for (int part = 0; part < carried.length; part++) {
            carried[part] = step.apply(carried[part]);
        }
        double whole = overlap(carried[0], chain.likelihood(index), beyond);
        if (!(whole > 0)) {
            // marks that exclude each other: nothing is carried past them
            carried = new double[][] {new double[grid.size()], new double[grid.size()], new double[grid.size()]};
            return;
        }
        double slope = overlap(carried[0], slopes.get(index), beyond) / whole;
        double cosine = overlap(carried[1], slopes.get(index), beyond) / whole - (ABOVE + mean[0]) * slope;
        double sine = overlap(carried[2], slopes.get(index), beyond) / whole - (ABOVE + mean[1]) * slope;
        influences[index] = (sine * mean[0] - cosine * mean[1]) / (mean[0] * mean[0] + mean[1] * mean[1]);
        for (double[] part : carried) {
            for (int i = 0; i < part.length; i++) {
                part[i] *= chain.likelihood(index)[i] / whole;
            }
        }
    }

    private double[] integrals(double[] density) {
        double cosine = 0;
        double sine = 0;
        for (int i = 0; i < density.length; i++) {
            double angle = Math.toRadians(grid.angle(i));
            cosine += density[i] * Math.cos(angle) * grid.step();
            sine += density[i] * Math.sin(angle) * grid.step();
        }
        return new double[] {cosine, sine};
    }

    private double overlap(double[] message, double[] seen, double[] beyond) {
        double sum = 0;
        for (int i = 0; i < message.length; i++) {
            sum += message[i] * seen[i] * beyond[i];
        }
        return sum * grid.step();
    }
}
