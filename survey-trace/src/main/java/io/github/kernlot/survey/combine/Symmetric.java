package io.github.kernlot.survey.combine;

import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.uncertainty.Covariance;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/** What is asked of a covariance of three components. Directions in which it leaves no room take no part. */
final class Symmetric {

    /** A variance less than this share of the greatest is rounding. */
    private static final double NOTHING = 1e-12;

    private final double[] variances = new double[3];
    private final double[][] axes = new double[3][];
    private final double greatest;

    Symmetric(Covariance covariance) {
        this(new DMatrixRMaj(covariance.toArray()));
    }

    private Symmetric(DMatrixRMaj matrix) {
        EigenDecomposition_F64<DMatrixRMaj> decomposition = DecompositionFactory_DDRM.eig(3, true, true);
        if (!decomposition.decompose(matrix)) {
            throw new IllegalArgumentException("the axes of a covariance were not found; expected finite numbers");
        }
        for (int i = 0; i < 3; i++) {
            variances[i] = decomposition.getEigenvalue(i).getReal();
            axes[i] = decomposition.getEigenVector(i).getData();
        }
        greatest = Math.max(variances[0], Math.max(variances[1], variances[2]));
    }

    /** The part of a covariance that is perpendicular to a unit vector. */
    static Symmetric across(Covariance covariance, Vector axis) {
        DMatrixRMaj projector = new DMatrixRMaj(3, 3);
        Vector[] rows = {new Vector(1, 0, 0), new Vector(0, 1, 0), new Vector(0, 0, 1)};
        for (int i = 0; i < 3; i++) {
            Vector row = rows[i].across(axis);
            projector.set(i, 0, row.north());
            projector.set(i, 1, row.east());
            projector.set(i, 2, row.down());
        }
        DMatrixRMaj half = new DMatrixRMaj(3, 3);
        DMatrixRMaj whole = new DMatrixRMaj(3, 3);
        CommonOps_DDRM.mult(projector, new DMatrixRMaj(covariance.toArray()), half);
        CommonOps_DDRM.mult(half, projector, whole);
        return new Symmetric(whole);
    }

    /** A difference held against the covariance; empty where it is null, and so leaves nothing to compare. */
    Optional<ChiSquare> test(double[] difference) {
        double sum = 0;
        int rank = 0;
        double beside = 0;
        double length = 0;
        for (int i = 0; i < 3; i++) {
            double along = along(i, difference);
            length += along * along;
            if (isOpen(i)) {
                rank++;
                sum += along * along / variances[i];
            } else {
                beside += along * along;
            }
        }
        if (rank == 0) {
            return Optional.empty();
        }
        return Optional.of(
                new ChiSquare(beside > NOTHING * Math.max(length, greatest) ? Double.POSITIVE_INFINITY : sum, rank));
    }

    /** The inverse times a vector, within the directions that take part. */
    double[] solve(double[] vector) {
        double[] solved = new double[3];
        for (int i = 0; i < 3; i++) {
            if (isOpen(i)) {
                double along = along(i, vector) / variances[i];
                for (int j = 0; j < 3; j++) {
                    solved[j] += along * axes[i][j];
                }
            }
        }
        return solved;
    }

    private boolean isOpen(int axis) {
        return variances[axis] > NOTHING * greatest;
    }

    private double along(int axis, double[] vector) {
        return axes[axis][0] * vector[0] + axes[axis][1] * vector[1] + axes[axis][2] * vector[2];
    }
}
