package io.github.kernlot.orientation.line.fit;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.circle.CircleGrid;
import io.github.kernlot.orientation.line.CorePiece;
import io.github.kernlot.orientation.line.DrawnLines;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.LineDrift;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.MarkBlunders;
import io.github.kernlot.orientation.line.MarkNoise;
import io.github.kernlot.orientation.line.MarkedHole;
import io.github.kernlot.orientation.line.OrientationMark;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * The evidence of one piece of core for any noise: what a reference line finds by the way, without the rest. The first half of the
 * marks is worked down and the second half up, both as one complex function, so that each transform serves two.
 */
final class PieceEvidence {

    /** As in the chain of a reference line. */
    private static final double LEAST = 1e-150;

    /** A wrapped Gaussian wider than this, degrees, is uniform. */
    private static final double UNIFORM_SIGMA = 600;

    /** A mark as it stands in the hole. */
    record Seen(OrientationMark mark, double angle, HoleDirection direction, WallReference side) {

        double depth() {
            return mark.depth();
        }

        double sigma(MarkNoise noise) {
            return mark.sigma().orElseGet(() -> noise.sigma(direction, side, mark.diameter()));
        }

        MarkBlunders blunders(LineModel model) {
            return mark.blunders().orElse(model.blunders());
        }

        /** By how much a parameter's square counts in the mark's variance, or whether it counts in its priors. */
        double weight(LineParameter parameter) {
            if (parameter == LineParameter.FLIPPED || parameter == LineParameter.WRONG) {
                return mark.blunders().isPresent() ? 0 : 1;
            }
            if (mark.sigma().isPresent() || !parameter.isOfMark()) {
                return 0;
            }
            return parameter == LineParameter.LEVEL ? 1 : Math.pow(side.sharpness(direction), -2);
        }
    }

    /** What lies between two neighbouring marks: the metres drawn and the joins. */
    record Link(double length, int locked, int doubtful) {

        double variance(LineDrift drift) {
            return drift.wander() * drift.wander() * length
                    + drift.locked() * drift.locked() * locked
                    + drift.doubtful() * drift.doubtful() * doubtful;
        }

        /** By how much a parameter's square counts in the variance of the turn. */
        double weight(LineParameter parameter) {
            return switch (parameter) {
                case WANDER -> length;
                case LOCKED -> locked;
                case DOUBTFUL -> doubtful;
                default -> 0;
            };
        }
    }

    private final List<Seen> marks;
    private final List<Link> links;

    /** A piece with its marks in the order of depth, at least one, and one link less. */
    PieceEvidence(List<Seen> marks, List<Link> links) {
        this.marks = marks;
        this.links = links;
    }

    List<Seen> marks() {
        return marks;
    }

    List<Link> links() {
        return links;
    }

    private static int count(List<Join> joins, JoinFit fit, double from, double to) {
        return (int) joins.stream()
                .filter(join -> join.fit() == fit && join.depth() >= from && join.depth() < to)
                .count();
    }

    /** The pieces of a hole that have a mark in use. */
    static List<PieceEvidence> of(MarkedHole hole, LineModel model) {
        // a mark that was left out must lie on the path too, as where the line is reconciled
        hole.marks().forEach(mark -> hole.path().directionAt(mark.depth()));
        List<PieceEvidence> pieces = new ArrayList<>();
        for (CorePiece piece : hole.pieces()) {
            List<Seen> marks = piece.marks().stream()
                    .filter(mark -> mark.leftOut().isEmpty())
                    .map(mark -> seen(mark, hole.path(), model.side()))
                    .sorted(Comparator.comparingDouble(Seen::depth).thenComparingDouble(Seen::angle))
                    .toList();
            if (!marks.isEmpty()) {
                pieces.add(new PieceEvidence(marks, links(marks, piece.joins(), hole.drawn())));
            }
        }
        return pieces;
    }

    private static Seen seen(OrientationMark mark, HolePath path, WallReference side) {
        double angle = mark.frameBy(path, side).turnFrom(path.carriedFrameAt(mark.depth()));
        return new Seen(mark, angle, path.directionAt(mark.depth()), side);
    }

    private static List<Link> links(List<Seen> marks, List<Join> joins, DrawnLines drawn) {
        List<Link> links = new ArrayList<>();
        for (int i = 1; i < marks.size(); i++) {
            double from = marks.get(i - 1).depth();
            double to = marks.get(i).depth();
            links.add(new Link(
                    drawn.length(from, to),
                    count(joins, JoinFit.LOCKED, from, to),
                    count(joins, JoinFit.DOUBTFUL, from, to)));
        }
        return links;
    }

    /** The logarithm of the density of all marks, per degree each. */
    double logEvidence(LineModel model) {
        int count = marks.size();
        double[] sigmas =
                marks.stream().mapToDouble(mark -> mark.sigma(model.noise())).toArray();
        int size = CircleGrid.resolving(narrowest(
                        sigmas,
                        links.stream()
                                .mapToDouble(link -> link.variance(model.drift()))
                                .toArray()))
                .size();
        int half = count / 2;
        double[][] both = {uniform(size), uniform(size)};
        double log = half > 0 ? observe(both[0], 0, sigmas, model) : 0;
        log += observe(both[1], count - 1, sigmas, model);
        for (int i = 0; i < half; i++) {
            int upwards = count - 2 - i;
            transport(both, spectrum(i, size, model), upwards >= half ? spectrum(upwards, size, model) : ones(size));
            if (i + 1 < half) {
                log += observe(both[0], i + 1, sigmas, model);
            }
            if (upwards >= half) {
                log += observe(both[1], upwards, sigmas, model);
            }
        }
        double overlap = 0;
        for (int i = 0; i < size; i++) {
            overlap += Math.max(both[0][i], LEAST) * Math.max(both[1][i], LEAST);
        }
        // the upper half holds the uniform density of the first angle, the lower one counts as a likelihood
        return log + Math.log(overlap * 360.0 / size) + Math.log(360);
    }

    /** The standard deviation that the grid must resolve: of a mark, or of what many marks on stiff core say together. */
    static double narrowest(double[] sigmas, double[] turnVariances) {
        double narrowest = sigmas[0];
        double variance = sigmas[0] * sigmas[0];
        for (int i = 1; i < sigmas.length; i++) {
            double before = variance + turnVariances[i - 1];
            variance = 1 / (1 / before + 1 / (sigmas[i] * sigmas[i]));
            narrowest = Math.min(narrowest, Math.min(sigmas[i], Math.sqrt(2 * variance)));
        }
        return narrowest;
    }

    private static double[] uniform(int size) {
        double[] function = new double[size];
        Arrays.fill(function, 1 / 360.0);
        return function;
    }

    private static double[] ones(int size) {
        double[] ones = new double[size / 2 + 1];
        Arrays.fill(ones, 1);
        return ones;
    }

    /** Multiplies by the likelihood of a mark, makes the integral 1 and returns the logarithm of what it was. */
    private double observe(double[] density, int index, double[] sigmas, LineModel model) {
        MarkBlunders blunders = marks.get(index).blunders(model);
        int size = density.length;
        double[] sound = gaussian(marks.get(index).angle(), sigmas[index], size, blunders.wrong() > 1e-9 ? 9 : 38);
        double floor = blunders.wrong() / 360;
        double mass = 0;
        for (int i = 0; i < size; i++) {
            double likelihood = blunders.sound() * sound[i] + blunders.flipped() * sound[(i + size / 2) % size] + floor;
            density[i] = Math.max(density[i], LEAST) * Math.max(likelihood, LEAST);
            mass += density[i];
        }
        mass *= 360.0 / size;
        for (int i = 0; i < size; i++) {
            density[i] /= mass;
        }
        return Math.log(mass);
    }

    private static double[] gaussian(double mean, double sigma, int size, double reach) {
        if (sigma > UNIFORM_SIGMA) {
            return uniform(size);
        }
        double[] density = new double[size];
        double step = 360.0 / size;
        double scale = 1 / (sigma * Math.sqrt(2 * Math.PI));
        double away = Math.max(reach * sigma, step);
        int last = (int) Math.floor((mean + away) / step);
        for (int i = (int) Math.ceil((mean - away) / step); i <= last; i++) {
            double sigmas = (i * step - mean) / sigma;
            density[Math.floorMod(i, size)] += scale * Math.exp(-sigmas * sigmas / 2);
        }
        return density;
    }

    /** The Fourier coefficients of the turn between two marks, real because it is as likely either way. */
    private double[] spectrum(int link, int size, LineModel model) {
        double[] real = new double[size / 2 + 1];
        double held = Math.pow(1 - model.drift().slip(), links.get(link).doubtful());
        double rate = links.get(link).variance(model.drift()) * Math.pow(Math.PI / 180, 2) / 2;
        real[0] = 1;
        for (int k = 1; k < real.length; k++) {
            real[k] = held * Math.exp(-rate * k * k);
            if (real[k] < 1e-30) {
                break;
            }
        }
        return real;
    }

    /** Convolves the real part with one turn and the imaginary part with another. */
    private static void transport(double[][] both, double[] down, double[] up) {
        int size = both[0].length;
        FastFourierTransformer.transformInPlace(both, DftNormalization.STANDARD, TransformType.FORWARD);
        double[] real = both[0].clone();
        double[] imaginary = both[1].clone();
        for (int k = 0; k < size; k++) {
            // with Z = A + iB, iB is (Z(k) - conj Z(-k))/2
            int other = (size - k) % size;
            double mean = (down[Math.min(k, size - k)] + up[Math.min(k, size - k)]) / 2;
            double difference = (down[Math.min(k, size - k)] - up[Math.min(k, size - k)]) / 2;
            both[0][k] = mean * real[k] + difference * real[other];
            both[1][k] = mean * imaginary[k] - difference * imaginary[other];
        }
        FastFourierTransformer.transformInPlace(both, DftNormalization.STANDARD, TransformType.INVERSE);
    }
}
