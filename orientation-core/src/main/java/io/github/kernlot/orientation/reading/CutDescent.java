package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.internal.Vector;
import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/** The cut at which the sum of costs is least, from one near it, by damped least squares (Levenberg 1944, Marquardt 1963; from memory). */
final class CutDescent {

    private static final int STEPS = 200;
    private static final double STILL = 1e-13;

    private final Wall wall;
    private final Loss loss;

    CutDescent(Wall wall, Loss loss) {
        this.wall = wall;
        this.loss = loss;
    }

    double cost(Cut cut) {
        double sum = 0;
        for (int i = 0; i < wall.size(); i++) {
            sum += loss.cost(wall.residual(cut, i));
        }
        return sum;
    }

    Cut from(Cut start) {
        Cut here = start;
        double cost = cost(here);
        double damping = 1e-4;
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.leastSquares(wall.size() + 3, 3);
        for (int step = 0; step < STEPS && damping < 1e12; step++) {
            Vector one = across(here.normal());
            Vector two = here.normal().cross(one);
            DMatrixRMaj design = new DMatrixRMaj(wall.size() + 3, 3);
            DMatrixRMaj right = new DMatrixRMaj(wall.size() + 3, 1);
            double[] lengths = fill(here, one, two, design, right);
            boolean settled = false;
            boolean better = false;
            while (!better && !settled && damping < 1e12) {
                DMatrixRMaj move = solved(solver, design, right, lengths, damping);
                Cut next = here.moved(one, two, move.get(0), move.get(1), move.get(2));
                double there = cost(next);
                settled = Math.abs(move.get(0)) + Math.abs(move.get(1)) < STILL
                        && Math.abs(move.get(2)) < STILL * (1 + Math.abs(here.offset()));
                if (there < cost) {
                    better = true;
                    settled = settled || cost - there < STILL * STILL * cost;
                    here = next;
                    cost = there;
                    damping /= 10;
                } else {
                    damping *= 10;
                }
            }
            if (settled) {
                break;
            }
        }
        return here.facingDownHole();
    }

    /** Weighted rows of the derivatives with the residuals beside them; returns the lengths of the columns. */
    private double[] fill(Cut cut, Vector one, Vector two, DMatrixRMaj design, DMatrixRMaj right) {
        double[] row = new double[4];
        double[] squares = new double[3];
        for (int i = 0; i < wall.size(); i++) {
            wall.row(cut, one, two, i, row);
            double weight = Math.sqrt(loss.weight(row[0]));
            right.set(i, 0, -weight * row[0]);
            for (int k = 0; k < 3; k++) {
                double entry = weight * row[k + 1];
                design.set(i, k, entry);
                squares[k] += entry * entry;
            }
        }
        // a column of nothing is damped too
        double least = Math.max(1e-18 * Math.max(squares[0], Math.max(squares[1], squares[2])), Double.MIN_NORMAL);
        return Arrays.stream(squares)
                .map(square -> Math.sqrt(Math.max(least, square)))
                .toArray();
    }

    private DMatrixRMaj solved(
            LinearSolverDense<DMatrixRMaj> solver,
            DMatrixRMaj design,
            DMatrixRMaj right,
            double[] lengths,
            double damping) {
        for (int k = 0; k < 3; k++) {
            design.set(wall.size() + k, k, Math.sqrt(damping) * lengths[k]);
        }
        DMatrixRMaj move = new DMatrixRMaj(3, 1);
        solver.setA(solver.modifiesA() ? design.copy() : design);
        solver.solve(solver.modifiesB() ? right.copy() : right, move);
        return move;
    }

    private static Vector across(Vector pole) {
        Vector other = Math.abs(pole.north()) < 0.6 ? new Vector(1, 0, 0) : new Vector(0, 1, 0);
        return other.across(pole).unit();
    }
}
