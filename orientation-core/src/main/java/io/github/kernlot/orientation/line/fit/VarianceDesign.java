package io.github.kernlot.orientation.line.fit;

import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.fit.PieceEvidence.Link;
import io.github.kernlot.orientation.line.fit.PieceEvidence.Seen;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Which sigmas the places of the marks and joins can tell apart, whatever the marks read. The differences of neighbouring marks
 * have a covariance linear in the squares of the sigmas; their expected information, for Gaussian errors, is half the trace of
 * {@code C^-1 dC/da C^-1 dC/db}.
 */
final class VarianceDesign {

    /** Of the information scaled to a unit diagonal: two parameters whose estimates correlate by 0.95 have this least eigenvalue. */
    private static final double TOLD_APART = 0.05;

    /** Longer pieces are looked at part by part, since the work grows with the cube of the length. */
    private static final int PART = 40;

    private final List<PieceEvidence> pieces;
    private final LineModel model;

    VarianceDesign(List<PieceEvidence> pieces, LineModel model) {
        this.pieces = pieces;
        this.model = model;
    }

    /** Puts together what cannot be told apart, until the rest can. */
    List<List<LineParameter>> groups(List<LineParameter> sigmas) {
        List<List<LineParameter>> groups =
                new ArrayList<>(sigmas.stream().map(List::of).toList());
        while (groups.size() > 1) {
            EigenDecomposition eigen = new EigenDecomposition(information(groups));
            int least =
                    groups.size() - 1; // Commons Math sorts the eigenvalues of a symmetric matrix, the greatest first
            if (eigen.getRealEigenvalue(least) > TOLD_APART) {
                break;
            }
            double[] direction = eigen.getEigenvector(least).toArray();
            double greatest = eigen.getEigenvector(least).getLInfNorm();
            List<List<LineParameter>> next = new ArrayList<>();
            List<LineParameter> together = new ArrayList<>();
            for (int i = 0; i < direction.length; i++) {
                if (Math.abs(direction[i]) > 0.3 * greatest) {
                    together.addAll(groups.get(i));
                } else {
                    next.add(groups.get(i));
                }
            }
            next.add(List.copyOf(together));
            groups = next;
        }
        return groups;
    }

    private RealMatrix information(List<List<LineParameter>> groups) {
        int size = groups.size();
        RealMatrix information = new Array2DRowRealMatrix(size, size);
        for (PieceEvidence piece : pieces) {
            for (int from = 0; from < piece.links().size(); from += PART) {
                int to = Math.min(from + PART, piece.links().size());
                List<Seen> marks = piece.marks().subList(from, to + 1);
                List<Link> links = piece.links().subList(from, to);
                RealMatrix inverse = new LUDecomposition(covariance(marks, links))
                        .getSolver()
                        .getInverse();
                List<RealMatrix> products = groups.stream()
                        .map(group -> inverse.multiply(derivative(group, marks, links)))
                        .toList();
                for (int i = 0; i < size; i++) {
                    for (int j = 0; j < size; j++) {
                        information.addToEntry(i, j, traceOfProduct(products.get(i), products.get(j)) / 2);
                    }
                }
            }
        }
        RealMatrix scaled = new Array2DRowRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                double entry = (information.getEntry(i, j) + information.getEntry(j, i))
                        / (2 * Math.sqrt(information.getEntry(i, i) * information.getEntry(j, j)));
                scaled.setEntry(i, j, entry);
                scaled.setEntry(j, i, entry);
            }
        }
        return scaled;
    }

    private RealMatrix covariance(List<Seen> marks, List<Link> links) {
        return tridiagonal(
                marks.stream()
                        .mapToDouble(mark -> Math.pow(mark.sigma(model.noise()), 2))
                        .toArray(),
                links.stream().mapToDouble(link -> link.variance(model.drift())).toArray());
    }

    private RealMatrix derivative(List<LineParameter> group, List<Seen> marks, List<Link> links) {
        double[] ofMarks = new double[marks.size()];
        double[] ofLinks = new double[links.size()];
        for (LineParameter parameter : group) {
            double square = group.size() == 1 ? 1 : Math.pow(baseOf(parameter, model), 2);
            for (int i = 0; i < ofMarks.length; i++) {
                ofMarks[i] += square * marks.get(i).weight(parameter);
            }
            for (int i = 0; i < ofLinks.length; i++) {
                ofLinks[i] += square * links.get(i).weight(parameter);
            }
        }
        return tridiagonal(ofMarks, ofLinks);
    }

    /** What a parameter is reckoned with where only its share in a group counts: its value, or the assumed one in place of 0. */
    static double baseOf(LineParameter parameter, LineModel model) {
        double value = parameter.of(model);
        return value > 0 ? value : parameter.of(LineModel.assumed());
    }

    private static RealMatrix tridiagonal(double[] ofMarks, double[] ofLinks) {
        RealMatrix matrix = new Array2DRowRealMatrix(ofLinks.length, ofLinks.length);
        for (int i = 0; i < ofLinks.length; i++) {
            matrix.setEntry(i, i, ofMarks[i] + ofMarks[i + 1] + ofLinks[i]);
            if (i > 0) {
                matrix.setEntry(i, i - 1, -ofMarks[i]);
                matrix.setEntry(i - 1, i, -ofMarks[i]);
            }
        }
        return matrix;
    }

    private static double traceOfProduct(RealMatrix one, RealMatrix other) {
        double trace = 0;
        for (int i = 0; i < one.getRowDimension(); i++) {
            for (int j = 0; j < one.getColumnDimension(); j++) {
                trace += one.getEntry(i, j) * other.getEntry(j, i);
            }
        }
        return trace;
    }
}
