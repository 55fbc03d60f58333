package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.LineDrift;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.MarkBlunders;
import io.github.kernlot.orientation.line.OrientationMark;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The model of the reference line by brute force, as a yardstick: a forward-backward pass over every angle of a fine grid, with
 * every transition written out as a sum. It shares no code with the library's inference.
 */
final class DenseLine {

    /** What lies further out in a Gaussian is below the rounding of its sum. */
    private static final double WINDOW_IN_SIGMAS = 9;

    private final int size;
    private final boolean windowed;
    private final LineModel model;
    private final HolePath path;
    private final List<Stop> stops = new ArrayList<>();
    private final List<double[]> fromAbove = new ArrayList<>();
    private final List<double[]> fromBelow = new ArrayList<>();

    /** A mark, a depth that is asked for or a join, in the order in which they lie on core. */
    private sealed interface Stop {
        double depth();

        int rank();
    }

    private record Seen(double depth, double angle, double sigma) implements Stop {
        @Override
        public int rank() {
            return 0;
        }
    }

    private record Query(double depth) implements Stop {
        @Override
        public int rank() {
            return 1;
        }
    }

    private record Met(Join join) implements Stop {
        @Override
        public double depth() {
            return join.depth();
        }

        @Override
        public int rank() {
            return 2;
        }
    }

    private DenseLine(
            int size,
            boolean windowed,
            LineModel model,
            HolePath path,
            List<OrientationMark> marks,
            List<Join> joins,
            List<Double> depths) {
        this.size = size;
        this.windowed = windowed;
        this.model = model;
        this.path = path;
        marks.forEach(mark -> stops.add(seen(mark)));
        depths.forEach(depth -> stops.add(new Query(depth)));
        joins.forEach(join -> stops.add(new Met(join)));
        stops.sort(Comparator.comparingDouble(Stop::depth).thenComparingInt(Stop::rank));
        double[] message = ignorance();
        for (int i = 0; i < stops.size(); i++) {
            message = i == 0 ? message : walked(message, stops.get(i - 1), stops.get(i));
            fromAbove.add(message);
            message = after(message, stops.get(i));
        }
        message = ignorance();
        for (int i = stops.size() - 1; i >= 0; i--) {
            fromBelow.add(0, message);
            message = after(message, stops.get(i));
            message = i == 0 ? message : walked(message, stops.get(i - 1), stops.get(i));
        }
    }

    /** The plain kind: each transition sums over every pair of angles. */
    static DenseLine plain(
            int size,
            LineModel model,
            HolePath path,
            List<OrientationMark> marks,
            List<Join> joins,
            List<Double> depths) {
        return new DenseLine(size, false, model, path, marks, joins, depths);
    }

    /** The same, which leaves out the pairs of angles that add nothing. */
    static DenseLine windowed(
            int size,
            LineModel model,
            HolePath path,
            List<OrientationMark> marks,
            List<Join> joins,
            List<Double> depths) {
        return new DenseLine(size, true, model, path, marks, joins, depths);
    }

    private Seen seen(OrientationMark mark) {
        HoleDirection direction = path.directionAt(mark.depth());
        CoreFrame asMarked = CoreFrame.at(direction, model.side(), -mark.offset());
        double sigma = mark.sigma().orElseGet(() -> model.noise().sigma(direction, model.side(), mark.diameter()));
        return new Seen(mark.depth(), asMarked.turnFrom(path.carriedFrameAt(mark.depth())), sigma);
    }

    private double[] ignorance() {
        double[] message = new double[size];
        Arrays.fill(message, 1);
        return message;
    }

    private double[] walked(double[] message, Stop upper, Stop lower) {
        return widened(message, model.drift().wander() * Math.sqrt(lower.depth() - upper.depth()));
    }

    private double[] after(double[] message, Stop stop) {
        if (stop instanceof Seen mark) {
            return observed(message, mark);
        }
        return stop instanceof Met met ? across(message, met.join()) : message;
    }

    private double[] observed(double[] message, Seen mark) {
        MarkBlunders blunders = model.blunders();
        double[] product = new double[size];
        for (int i = 0; i < size; i++) {
            double away = angle(i) - mark.angle();
            double likelihood = blunders.sound() * gaussian(away, mark.sigma())
                    + blunders.flipped() * gaussian(away - 180, mark.sigma())
                    + blunders.wrong() / 360;
            product[i] = message[i] * likelihood;
        }
        double mean = mean(product);
        Arrays.setAll(product, i -> product[i] / mean);
        return product;
    }

    private double[] across(double[] message, Join join) {
        LineDrift drift = model.drift();
        double mean = mean(message);
        double[] across =
                switch (join.fit()) {
                    case BROKEN -> new double[size];
                    case LOCKED -> widened(message, drift.locked());
                    case DOUBTFUL -> widened(message, drift.doubtful());
                };
        double slip =
                switch (join.fit()) {
                    case BROKEN -> 1;
                    case LOCKED -> 0;
                    case DOUBTFUL -> drift.slip();
                };
        Arrays.setAll(across, i -> (1 - slip) * across[i] + slip * mean);
        return across;
    }

    private double[] widened(double[] message, double sigma) {
        if (sigma == 0) {
            return message;
        }
        double step = 360.0 / size;
        int reach = windowed ? (int) Math.min(size / 2 - 1, Math.ceil(WINDOW_IN_SIGMAS * sigma / step)) : size / 2 - 1;
        double[] kernel = new double[2 * reach + 1];
        Arrays.setAll(kernel, j -> gaussian((j - reach) * step, sigma));
        double sum = Arrays.stream(kernel).sum();
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

    private double angle(int index) {
        return 360.0 * index / size;
    }

    /** The wrapped Gaussian; for sigmas up to about 100 degrees. */
    private static double gaussian(double angle, double sigma) {
        double away = Math.IEEEremainder(angle, 360);
        double density = 0;
        for (int turn = -2; turn <= 2; turn++) {
            double z = (away + 360 * turn) / sigma;
            density += Math.exp(-z * z / 2);
        }
        return density / (sigma * Math.sqrt(2 * Math.PI));
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).sum() / values.length;
    }

    /** The density per degree at a stop by all but the stop itself. */
    private double[] density(int stop) {
        double[] product = new double[size];
        Arrays.setAll(product, i -> fromAbove.get(stop)[i] * fromBelow.get(stop)[i]);
        double mass = mean(product) * 360;
        Arrays.setAll(product, i -> product[i] / mass);
        return product;
    }

    /** The line at one depth. */
    record Answer(CoreFrame frame, double sigma, double radius95) {}

    /** The line at the depths that were asked for, in the order of depth, with the bias that the marks share. */
    List<Answer> answers() {
        List<Answer> answers = new ArrayList<>();
        for (int stop = 0; stop < stops.size(); stop++) {
            if (stops.get(stop) instanceof Query query) {
                answers.add(answer(
                        query.depth(), widened(density(stop), model.noise().bias())));
            }
        }
        return answers;
    }

    private Answer answer(double depth, double[] density) {
        double cosine = 0;
        double sine = 0;
        for (int i = 0; i < size; i++) {
            cosine += density[i] * Math.cos(Math.toRadians(angle(i))) * 360 / size;
            sine += density[i] * Math.sin(Math.toRadians(angle(i))) * 360 / size;
        }
        double mean = Math.toDegrees(Math.atan2(sine, cosine));
        double length = Math.min(1, Math.hypot(sine, cosine));
        double radius = 0;
        double held = 0;
        double step = 360.0 / size;
        while (held < 0.95 && radius < 180) {
            radius += step / 2;
            held = 0;
            for (int i = 0; i < size; i++) {
                held += Math.abs(Math.IEEEremainder(angle(i) - mean, 360)) < radius ? density[i] * step : 0;
            }
        }
        return new Answer(
                path.carriedFrameAt(depth).turned(mean), Math.toDegrees(Math.sqrt(-2 * Math.log(length))), radius);
    }

    /** The probabilities that a mark is sound, flipped and wrong. */
    record Chances(double sound, double flipped, double wrong) {}

    /** What was found of each mark, in the order of depth. */
    List<Chances> chances() {
        List<Chances> chances = new ArrayList<>();
        for (int stop = 0; stop < stops.size(); stop++) {
            if (stops.get(stop) instanceof Seen mark) {
                chances.add(chances(mark, density(stop)));
            }
        }
        return chances;
    }

    private Chances chances(Seen mark, double[] others) {
        double sound = 0;
        double flipped = 0;
        for (int i = 0; i < size; i++) {
            double away = angle(i) - mark.angle();
            sound += model.blunders().sound() * others[i] * gaussian(away, mark.sigma()) * 360 / size;
            flipped += model.blunders().flipped() * others[i] * gaussian(away - 180, mark.sigma()) * 360 / size;
        }
        double wrong = model.blunders().wrong() / 360;
        double all = sound + flipped + wrong;
        return new Chances(sound / all, flipped / all, wrong / all);
    }

    /** The probability of a slip at each join, in the order of depth. */
    List<Double> slips() {
        List<Double> slips = new ArrayList<>();
        for (int stop = 0; stop < stops.size(); stop++) {
            if (stops.get(stop) instanceof Met met) {
                slips.add(
                        met.join().fit() == JoinFit.DOUBTFUL
                                ? slip(fromAbove.get(stop), fromBelow.get(stop))
                                : met.join().fit() == JoinFit.BROKEN ? 1.0 : 0.0);
            }
        }
        return slips;
    }

    private double slip(double[] above, double[] below) {
        double[] held = widened(above, model.drift().doubtful());
        double sum = 0;
        for (int i = 0; i < size; i++) {
            sum += held[i] * below[i] / size;
        }
        double slipped = model.drift().slip() * mean(above) * mean(below);
        return slipped / (slipped + (1 - model.drift().slip()) * sum);
    }
}
