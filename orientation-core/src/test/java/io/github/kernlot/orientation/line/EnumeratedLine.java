package io.github.kernlot.orientation.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The model of the reference line in closed form, for a few marks whose sigmas are small beside the circle: every combination of
 * sound, flipped and wrong marks and of slipped and held joins is a Gaussian, and the answer their mixture. No grid, no messages.
 *
 * <p>The line at the depth asked for is the origin of a random walk; marks on one side of it share the walk up to the nearer one.
 */
final class EnumeratedLine {

    private final LineDrift drift;
    private final MarkBlunders blunders;
    private final List<DenseLine.Seen> marks;
    private final List<Join> joins;

    /** Sums over the combinations. */
    private double cosine;

    private double sine;
    private double evidence;
    private final double[][] chances;
    private final double[] slips;

    /** Works out the line at a depth. */
    EnumeratedLine(LineModel model, List<DenseLine.Seen> marks, List<Join> joins, double depth) {
        this.drift = model.drift();
        this.blunders = model.blunders();
        this.marks = marks;
        this.joins = joins;
        this.chances = new double[marks.size()][3];
        this.slips = new double[joins.size()];
        int combinations = (int) Math.pow(3, marks.size()) << joins.size();
        for (int number = 0; number < combinations; number++) {
            add(number, depth);
        }
    }

    private record Stop(double depth, int rank, int index) {}

    private void add(int number, double depth) {
        int[] kinds = new int[marks.size()];
        boolean[] slipped = new boolean[joins.size()];
        double weight = 1;
        int rest = number;
        for (int i = 0; i < kinds.length; i++, rest /= 3) {
            kinds[i] = rest % 3;
            weight *= kinds[i] == 0 ? blunders.sound() : kinds[i] == 1 ? blunders.flipped() : blunders.wrong() / 360;
        }
        for (int i = 0; i < slipped.length; i++, rest /= 2) {
            slipped[i] = rest % 2 == 1;
            double prior =
                    switch (joins.get(i).fit()) {
                        case LOCKED -> 0;
                        case DOUBTFUL -> drift.slip();
                        case BROKEN -> 1;
                    };
            weight *= slipped[i] ? prior : 1 - prior;
        }
        if (weight == 0) {
            return;
        }
        List<Stop> stops = new ArrayList<>();
        for (int i = 0; i < kinds.length; i++) {
            stops.add(new Stop(marks.get(i).depth(), 0, i));
        }
        stops.add(new Stop(depth, 1, 0));
        for (int i = 0; i < slipped.length; i++) {
            stops.add(new Stop(joins.get(i).depth(), 2, i));
        }
        stops.sort(Comparator.comparingDouble(Stop::depth).thenComparingInt(Stop::rank));
        double[] walked = new double[kinds.length];
        double variance = 0;
        double here = stops.get(0).depth();
        double origin = 0;
        boolean holdsDepth = false;
        List<Integer> piece = new ArrayList<>();
        double[] moments = {0, 0};
        for (Stop stop : stops) {
            variance += drift.wander() * drift.wander() * (stop.depth() - here);
            here = stop.depth();
            if (stop.rank() == 0) {
                walked[stop.index()] = variance;
                if (kinds[stop.index()] != 2) {
                    piece.add(stop.index());
                }
            } else if (stop.rank() == 1) {
                origin = variance;
                holdsDepth = true;
            } else if (slipped[stop.index()]) {
                weight *= piece(piece, walked, kinds, holdsDepth, origin, moments);
                piece.clear();
                holdsDepth = false;
            } else {
                double sigma = joins.get(stop.index()).fit() == JoinFit.LOCKED ? drift.locked() : drift.doubtful();
                variance += sigma * sigma;
            }
        }
        weight *= piece(piece, walked, kinds, holdsDepth, origin, moments);
        evidence += weight;
        cosine += weight * moments[0];
        sine += weight * moments[1];
        for (int i = 0; i < kinds.length; i++) {
            chances[i][kinds[i]] += weight;
        }
        for (int i = 0; i < slipped.length; i++) {
            slips[i] += slipped[i] ? weight : 0;
        }
    }

    /** The density of the marks of one piece, whose line is uniform to begin with; fills the moments of the line at the depth. */
    private double piece(
            List<Integer> piece, double[] walked, int[] kinds, boolean holdsDepth, double origin, double[] moments) {
        if (piece.isEmpty()) {
            return 1;
        }
        int count = piece.size();
        double from = holdsDepth ? origin : walked[piece.get(0)];
        double first = angle(piece.get(0), kinds);
        RealMatrix covariance = new Array2DRowRealMatrix(count, count);
        RealVector away = new ArrayRealVector(count);
        for (int i = 0; i < count; i++) {
            double one = walked[piece.get(i)] - from;
            for (int j = 0; j < count; j++) {
                double other = walked[piece.get(j)] - from;
                double shared = one * other > 0 ? Math.min(Math.abs(one), Math.abs(other)) : 0;
                double own = i == j ? Math.pow(marks.get(piece.get(i)).sigma(), 2) : 0;
                covariance.setEntry(i, j, shared + own);
            }
            away.setEntry(i, Math.IEEEremainder(angle(piece.get(i), kinds) - first, 360));
        }
        CholeskyDecomposition roots = new CholeskyDecomposition(covariance);
        RealVector ones = new ArrayRealVector(count, 1);
        RealVector weights = roots.getSolver().solve(ones);
        double information = weights.dotProduct(ones);
        double mean = weights.dotProduct(away) / information;
        RealVector residual = away.subtract(ones.mapMultiply(mean));
        double squares = residual.dotProduct(roots.getSolver().solve(residual));
        if (holdsDepth) {
            double shrunk = Math.exp(-Math.pow(Math.PI / 180, 2) / information / 2);
            moments[0] = shrunk * Math.cos(Math.toRadians(first + mean));
            moments[1] = shrunk * Math.sin(Math.toRadians(first + mean));
        }
        return Math.exp(-squares / 2)
                / 360
                / Math.sqrt(roots.getDeterminant() * information * Math.pow(2 * Math.PI, count - 1));
    }

    private double angle(int mark, int[] kinds) {
        return marks.get(mark).angle() + 180 * kinds[mark];
    }

    double mean() {
        return Math.toDegrees(Math.atan2(sine, cosine));
    }

    /** sqrt(-2 ln R) with an error added that all marks share. */
    double sigma(double bias) {
        double length = Math.hypot(sine, cosine) / evidence;
        return Math.hypot(Math.toDegrees(Math.sqrt(-2 * Math.log(length))), bias);
    }

    double logEvidence() {
        return Math.log(evidence);
    }

    double sound(int mark) {
        return chances[mark][0] / evidence;
    }

    double flipped(int mark) {
        return chances[mark][1] / evidence;
    }

    double slip(int join) {
        return slips[join] / evidence;
    }
}
