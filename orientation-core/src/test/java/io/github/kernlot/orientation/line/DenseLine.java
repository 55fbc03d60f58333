package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.HolePath;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The model of the reference line worked out with brute force and nothing shared with the library: every angle of a fine grid,
 * every transition written out as a kernel, one step for each event of the hole.
 */
final class DenseLine {

    private final int size;
    private final LineDrift drift;
    private final MarkBlunders blunders;

    /** Of the density of the marks that the last message met. */
    private double logarithm;

    DenseLine(int size, LineDrift drift, MarkBlunders blunders) {
        this.size = size;
        this.drift = drift;
        this.blunders = blunders;
    }

    /** A mark as the chain sees it. */
    record Seen(double depth, double angle, double sigma) {

        /** The used marks of a hole in the order of depth. */
        static List<Seen> all(LineModel model, HolePath path, List<OrientationMark> marks) {
            return Sighting.all(marks, path, model.side(), model.noise()).stream()
                    .filter(Sighting::isUsed)
                    .map(mark -> new Seen(mark.depth(), mark.angle(), mark.sigma()))
                    .toList();
        }
    }

    /** The density per degree of the line at a depth, at the angles 0, 360/size, ... */
    double[] at(double depth, List<Seen> marks, List<Join> joins) {
        double[] down = message(depth, marks, joins, true);
        double[] up = message(depth, marks, joins, false);
        double[] density = new double[size];
        double sum = 0;
        for (int i = 0; i < size; i++) {
            density[i] = down[i] * up[i];
            sum += density[i] * 360 / size;
        }
        for (int i = 0; i < size; i++) {
            density[i] /= sum;
        }
        return density;
    }

    /** The logarithm of the density of all marks. */
    double logEvidence(List<Seen> marks, List<Join> joins) {
        logarithm = 0;
        message(Double.MAX_VALUE, marks, joins, true);
        return logarithm;
    }

    /** The probabilities that a mark is sound and that it is flipped. */
    double[] chances(int mark, List<Seen> marks, List<Join> joins) {
        Seen judged = marks.get(mark);
        List<Seen> others = new ArrayList<>(marks);
        others.remove(mark);
        double[] density = at(judged.depth(), others, joins);
        double sound = 0;
        double flipped = 0;
        for (int i = 0; i < size; i++) {
            double away = 360.0 * i / size - judged.angle();
            sound += blunders.sound() * density[i] * wrapped(away, judged.sigma()) * 360 / size;
            flipped += blunders.flipped() * density[i] * wrapped(away - 180, judged.sigma()) * 360 / size;
        }
        double all = sound + flipped + blunders.wrong() / 360;
        return new double[] {sound / all, flipped / all};
    }

    /** The probability that a doubtful join slipped: the evidence with it broken against that with it doubtful. */
    double slip(int join, List<Seen> marks, List<Join> joins) {
        List<Join> broken = new ArrayList<>(joins);
        broken.set(join, new Join(joins.get(join).depth(), JoinFit.BROKEN));
        return drift.slip() * Math.exp(logEvidence(marks, broken) - logEvidence(marks, joins));
    }

    private double[] message(double depth, List<Seen> marks, List<Join> joins, boolean fromAbove) {
        // events in the order in which the message meets them; at one depth: marks, then the query, then joins
        List<double[]> events = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            if (fromAbove == (marks.get(i).depth() <= depth)) {
                events.add(new double[] {marks.get(i).depth(), 0, i});
            }
        }
        for (int i = 0; i < joins.size(); i++) {
            if (fromAbove == (joins.get(i).depth() < depth)) {
                events.add(new double[] {joins.get(i).depth(), 1, i});
            }
        }
        Comparator<double[]> order =
                Comparator.<double[]>comparingDouble(event -> event[0]).thenComparingDouble(event -> event[1]);
        events.sort(fromAbove ? order : order.reversed());
        double[] message = new double[size];
        Arrays.fill(message, 1);
        double here = events.isEmpty() ? depth : events.get(0)[0];
        for (double[] event : events) {
            message = widened(message, drift.wander() * Math.sqrt(Math.abs(event[0] - here)));
            here = event[0];
            message = event[1] == 0
                    ? seen(message, marks.get((int) event[2]))
                    : across(message, joins.get((int) event[2]));
        }
        return depth == Double.MAX_VALUE
                ? message
                : widened(message, drift.wander() * Math.sqrt(Math.abs(depth - here)));
    }

    private double[] across(double[] message, Join join) {
        double mean = Arrays.stream(message).average().orElseThrow();
        if (join.fit() == JoinFit.BROKEN) {
            Arrays.fill(message, mean);
            return message;
        }
        if (join.fit() == JoinFit.LOCKED) {
            return widened(message, drift.locked());
        }
        double[] held = widened(message, drift.doubtful());
        for (int i = 0; i < size; i++) {
            held[i] = (1 - drift.slip()) * held[i] + drift.slip() * mean;
        }
        return held;
    }

    private double[] seen(double[] message, Seen mark) {
        double[] product = new double[size];
        double sum = 0;
        for (int i = 0; i < size; i++) {
            double angle = 360.0 * i / size;
            product[i] = message[i]
                    * (blunders.sound() * wrapped(angle - mark.angle(), mark.sigma())
                            + blunders.flipped() * wrapped(angle - mark.angle() - 180, mark.sigma())
                            + blunders.wrong() / 360);
            sum += product[i];
        }
        for (int i = 0; i < size; i++) {
            product[i] *= size / sum;
        }
        logarithm += Math.log(sum / size);
        return product;
    }

    private double[] widened(double[] message, double sigma) {
        if (sigma == 0) {
            return message;
        }
        double step = 360.0 / size;
        // a Gaussian narrower than the grid is three cells with its variance
        int reach = sigma < step ? 1 : (int) Math.min(size / 2.0 - 1, Math.ceil(9 * sigma / step) + 1);
        double[] kernel = new double[2 * reach + 1];
        double sum = 0;
        for (int i = -reach; i <= reach; i++) {
            double narrow = i == 0 ? 1 - Math.pow(sigma / step, 2) : Math.pow(sigma / step, 2) / 2;
            kernel[i + reach] = sigma < step ? narrow : wrapped(i * step, sigma);
            sum += kernel[i + reach];
        }
        double[] round = new double[size + 2 * reach];
        for (int i = 0; i < round.length; i++) {
            round[i] = message[Math.floorMod(i - reach, size)];
        }
        double[] widened = new double[size];
        for (int i = 0; i < size; i++) {
            double value = 0;
            for (int j = 0; j < kernel.length; j++) {
                value += kernel[j] * round[i + j];
            }
            widened[i] = value / sum;
        }
        return widened;
    }

    private static double wrapped(double angle, double sigma) {
        double density = 0;
        double away = Math.IEEEremainder(angle, 360);
        int turns = 3 + (int) (9 * sigma / 360);
        for (int turn = -turns; turn <= turns; turn++) {
            double z = (away + 360 * turn) / sigma;
            density += Math.exp(-z * z / 2) / (sigma * Math.sqrt(2 * Math.PI));
        }
        return density;
    }
}
