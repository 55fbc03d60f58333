package io.github.kernlot.survey.place;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** The zeros of a function of depth that changes its sign. */
final class Turns {

    private static final double DEPTH = 1e-13;
    private static final double RELATIVE = 1e-15;
    private static final int EVALUATIONS = 1000;

    private Turns() {}

    /** The depths on a leg, its ends apart, where a component of the direction changes its sign. */
    static List<Double> on(Legs legs, int leg, DoubleUnaryOperator component) {
        double from = legs.depth(leg);
        double to = legs.depth(leg + 1);
        if (legs.curvature(leg) == 0) {
            return List.of();
        }
        double above = component.applyAsDouble(from);
        double below = component.applyAsDouble(to);
        return above * below < 0 ? List.of(zero(component, from, to)) : List.of();
    }

    /** The zero of a function between two depths where its signs differ. */
    static double zero(DoubleUnaryOperator function, double above, double below) {
        return new BrentSolver(RELATIVE, DEPTH, 0).solve(EVALUATIONS, function::applyAsDouble, above, below);
    }
}
