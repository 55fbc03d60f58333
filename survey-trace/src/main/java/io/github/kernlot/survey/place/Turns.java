package io.github.kernlot.survey.place;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** The zeros of a function of depth that changes its sign. */
final class Turns {

    private static final double DEPTH = 1e-13;
    private static final double RELATIVE = 1e-15;
    private static final double FLAT = 5e-10;
    private static final int EVALUATIONS = 1000;

    private Turns() {}

    /** Depths on a leg between which a component of the direction keeps its sign, or changes what it sums up to by no more than 1e-9 m. */
    static List<Double> on(Legs legs, int leg, DoubleUnaryOperator component) {
        double from = legs.depth(leg);
        double to = legs.depth(leg + 1);
        if (legs.curvature(leg) == 0) {
            return List.of();
        }
        if (legs.isPlane(leg)) {
            return isTurned(component, from, to) ? List.of(zero(component, from, to)) : List.of();
        }
        List<double[]> doubtful = new ArrayList<>();
        addDoubtful(component, legs.curvature(leg), from, to, doubtful);
        List<Double> found = new ArrayList<>();
        for (double[] piece : doubtful) {
            if (isTurned(component, piece[0], piece[1])) {
                found.add(zero(component, piece[0], piece[1]));
            } else {
                found.add(piece[0]);
                found.add(piece[1]);
            }
        }
        return found;
    }

    private static boolean isTurned(DoubleUnaryOperator component, double from, double to) {
        return component.applyAsDouble(from) * component.applyAsDouble(to) < 0;
    }

    /** The component changes by no more than curvature times length: where it is more than that away from zero it has none. */
    private static void addDoubtful(
            DoubleUnaryOperator component, double curvature, double from, double to, List<double[]> doubtful) {
        double length = to - from;
        double middle = from + length / 2;
        if (Math.abs(component.applyAsDouble(middle)) > curvature * length / 2) {
            return;
        }
        if (curvature * length * length > FLAT) {
            addDoubtful(component, curvature, from, middle, doubtful);
            addDoubtful(component, curvature, middle, to, doubtful);
            return;
        }
        int last = doubtful.size() - 1;
        if (last >= 0 && doubtful.get(last)[1] == from) {
            doubtful.get(last)[1] = to;
        } else {
            doubtful.add(new double[] {from, to});
        }
    }

    /** The zero of a function between two depths where its signs differ. */
    static double zero(DoubleUnaryOperator function, double above, double below) {
        return new BrentSolver(RELATIVE, DEPTH, 0).solve(EVALUATIONS, function::applyAsDouble, above, below);
    }
}
