package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.internal.Degrees;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** The density of the line angle round the circle, on a grid that is fine beside the combined sigma of the readings. */
final class FabricCircle {

    private static final int FEWEST = 1440;
    private static final int MOST = 72_000;
    private static final double STEPS_PER_SIGMA = 5;

    /** A hump less than this much above the saddle beside it belongs to its neighbour. */
    private static final double HUMP = 1.2;

    private static final double LEAST_WEIGHT = 1e-4;

    private final double[] logs;
    private final double[] density;

    private FabricCircle(double[] logs) {
        this.logs = logs;
        double most = Double.NEGATIVE_INFINITY;
        for (double each : logs) {
            most = Math.max(most, each);
        }
        density = new double[logs.length];
        double sum = 0;
        for (int i = 0; i < logs.length; i++) {
            density[i] = Math.exp(logs[i] - most);
            sum += density[i];
        }
        for (int i = 0; i < logs.length; i++) {
            density[i] /= sum;
        }
    }

    static FabricCircle of(List<FabricLine.Shown> shown, double sigma) {
        int nodes = (int) Math.min(MOST, Math.max(FEWEST, Math.ceil(360 * STEPS_PER_SIGMA / sigma)));
        double[] logs = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            double angle = 360.0 * i / nodes;
            for (FabricLine.Shown each : shown) {
                logs[i] += each.likelihood().log(each.read(angle));
            }
        }
        return new FabricCircle(logs);
    }

    /** Standard deviation over the whole circle, joined by an error that turns all of it. */
    double sigma(double shared) {
        return deviation(0, density.length - 1, shared);
    }

    List<FabricLineMode> modes(double shared) {
        List<Integer> peaks = peaks();
        List<FabricLineMode> modes = new ArrayList<>();
        for (int i = 0; i < peaks.size(); i++) {
            int before = peaks.get((i + peaks.size() - 1) % peaks.size());
            int after = peaks.get((i + 1) % peaks.size());
            int peak = peaks.get(i);
            int from = peaks.size() == 1 ? peak - density.length / 2 : saddle(before, peak);
            int to = peaks.size() == 1 ? from + density.length - 1 : saddle(peak, after) - 1;
            from = from > peak ? from - density.length : from;
            to = to < peak ? to + density.length : to;
            double weight = 0;
            for (int k = from; k <= to; k++) {
                weight += at(k);
            }
            if (weight >= LEAST_WEIGHT) {
                modes.add(new FabricLineMode(refined(peak), Math.min(1, weight), deviation(from, to, shared)));
            }
        }
        modes.sort(Comparator.comparingDouble(FabricLineMode::weight).reversed());
        return List.copyOf(modes);
    }

    private List<Integer> peaks() {
        List<Integer> peaks = new ArrayList<>();
        for (int i = 0; i < density.length; i++) {
            // of a level top the first node, even where that is the last of the circle
            if (density[i] > at(i - 1) && density[i] >= at(i + 1)) {
                peaks.add(i);
            }
        }
        if (peaks.isEmpty()) {
            return List.of(0);
        }
        int highest = Collections.max(peaks, Comparator.comparingDouble(i -> density[i]));
        boolean merged = true;
        while (merged && peaks.size() > 1) {
            merged = false;
            for (int i = 0; i < peaks.size(); i++) {
                int before = peaks.get((i + peaks.size() - 1) % peaks.size());
                int after = peaks.get((i + 1) % peaks.size());
                double saddle = Math.max(at(saddle(before, peaks.get(i))), at(saddle(peaks.get(i), after)));
                // not less alone: of the least number a double holds HUMP times is that number
                if (density[peaks.get(i)] <= HUMP * saddle && peaks.get(i) != highest) {
                    peaks.remove(i);
                    merged = true;
                    break;
                }
            }
        }
        return peaks;
    }

    /** The lowest node on the way round from one peak to the next. */
    private int saddle(int from, int to) {
        int end = to <= from ? to + density.length : to;
        int lowest = from;
        for (int k = from; k <= end; k++) {
            lowest = at(k) < at(lowest) ? k : lowest;
        }
        return Math.floorMod(lowest, density.length);
    }

    private double at(int index) {
        return density[Math.floorMod(index, density.length)];
    }

    /** The top of the parabola through the logarithms of three nodes. */
    private double refined(int peak) {
        double before = logs[Math.floorMod(peak - 1, logs.length)];
        double here = logs[peak];
        double after = logs[Math.floorMod(peak + 1, logs.length)];
        double bend = before - 2 * here + after;
        double shift = bend < 0 ? (before - after) / (2 * bend) : 0;
        return Degrees.wrap360((peak + shift) * 360 / logs.length);
    }

    private double deviation(int from, int to, double shared) {
        double cosine = 0;
        double sine = 0;
        double weight = 0;
        for (int k = from; k <= to; k++) {
            double angle = 360.0 * k / density.length;
            cosine += at(k) * Degrees.cos(angle);
            sine += at(k) * Degrees.sin(angle);
            weight += at(k);
        }
        double length = Math.min(1, Math.hypot(cosine, sine) / weight);
        double own = Math.toDegrees(Math.sqrt(-2 * Math.log(Math.max(length, Double.MIN_NORMAL))));
        return Math.hypot(own, shared) + 0.0;
    }
}
