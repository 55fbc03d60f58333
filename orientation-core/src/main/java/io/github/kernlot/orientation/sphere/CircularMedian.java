package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Degrees;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** Where the mean distance to the angles of a sample is least. It is linear between angles and their opposites. */
final class CircularMedian {

    private static final double SAME = 1e-9;

    private final double[] sorted;

    private CircularMedian(double[] degrees) {
        sorted = Arrays.stream(degrees).sorted().distinct().toArray();
    }

    static Arc of(double[] degrees, OptionalDouble mean) {
        Arc nearest = new Arc(0, 0);
        double distance = Double.POSITIVE_INFINITY;
        for (Arc arc : new CircularMedian(degrees).arcs(degrees)) {
            double away = mean.isPresent() ? Math.abs(Degrees.wrap180(arc.middle() - mean.getAsDouble())) : 0;
            if (away < distance) {
                distance = away;
                nearest = arc;
            }
        }
        return nearest;
    }

    private List<Arc> arcs(double[] degrees) {
        double least = Arrays.stream(sorted)
                .map(angle -> distance(angle, degrees))
                .min()
                .orElseThrow();
        int count = sorted.length;
        boolean[] best = new boolean[count];
        boolean[] joined = new boolean[count];
        int start = 0;
        for (int i = 0; i < count; i++) {
            best[i] = distance(sorted[i], degrees) <= least + SAME;
            Arc next = new Arc(sorted[i], sorted[(i + 1) % count]);
            joined[i] = best[i] && distance(next.middle(), degrees) <= least + SAME && count > 1;
            start = joined[i] ? start : (i + 1) % count;
        }
        List<Arc> arcs = new ArrayList<>();
        for (int step = 0; step < count; step++) {
            int from = (start + step) % count;
            if (best[from]) {
                while (joined[(start + step) % count] && step < count - 1) {
                    step++;
                }
                arcs.add(new Arc(sorted[from], sorted[(start + step) % count]));
            }
        }
        return arcs;
    }

    private static double distance(double angle, double[] degrees) {
        double sum = 0;
        for (double other : degrees) {
            sum += Math.abs(Degrees.wrap180(other - angle));
        }
        return sum / degrees.length;
    }
}
