package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.HoleTrace;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/** A hole as a list of points in even steps, in which no station is lost. */
public final class TraceSampling {

    private static final double SAME = 1e-9;
    private static final double MOST = 10_000_000;

    private TraceSampling() {}

    /**
     * The points of a trace at every whole multiple of a step of depth, at every station and corner, at the collar and at the end.
     *
     * @param trace the trace
     * @param step the step of depth, metres, above 0
     * @param to the last depth, metres along the hole; that of the last station if nothing is to be extrapolated
     * @return the points by increasing depth, no two within 1e-9 m; a station stands for a multiple that falls on it
     * @throws IllegalArgumentException if the step is not above 0 and finite or makes more than 10 million points, or the trace does
     *     not reach the last depth
     */
    public static List<TracePoint> byDepth(HoleTrace trace, double step, double to) {
        double checked = Require.positive("step", step, "m");
        double end = Require.inRange("to", to, 0, trace.reach(), "m");
        checkCount(end / checked);
        int count = (int) Math.floor(end / checked);
        double[] multiples = new double[count + 1];
        for (int i = 0; i <= count; i++) {
            multiples[i] = i * checked;
        }
        return points(trace, multiples, end);
    }

    /**
     * The points of a trace at every whole multiple of a step of elevation, however often the hole comes there, at every station and corner, at
     * the collar and at the end.
     *
     * @param trace the trace
     * @param step the step of elevation, metres, above 0
     * @param to the last depth, metres along the hole; that of the last station if nothing is to be extrapolated
     * @return the points by increasing depth, no two within 1e-9 m; a horizontal stretch at a multiple is there with its ends
     * @throws IllegalArgumentException if the step is not above 0 and finite or makes more than 10 million points, or the trace does
     *     not reach the last depth
     */
    public static List<TracePoint> byElevation(HoleTrace trace, double step, double to) {
        double checked = Require.positive("step", step, "m");
        double end = Require.inRange("to", to, 0, trace.reach(), "m");
        checkCount(end / checked);
        double[] levels = new PlaneSearch(trace, Legs.of(trace, 0, end), Vector.DOWN, 0)
                .levels(trace.collar().elevation(), checked);
        return points(trace, levels, end);
    }

    private static void checkCount(double count) {
        if (!(count <= MOST)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "the step makes %.0f points; expected at most %.0f", count, MOST));
        }
    }

    private static List<TracePoint> points(HoleTrace trace, double[] between, double end) {
        double[] kept = DoubleStream.concat(DoubleStream.of(0, end), DoubleStream.of(trace.breakDepths()))
                .filter(depth -> depth <= end)
                .sorted()
                .distinct()
                .toArray();
        DoubleStream added = Arrays.stream(between).filter(depth -> isApart(kept, depth));
        return DoubleStream.concat(Arrays.stream(kept), added)
                .sorted()
                .mapToObj(depth -> TracePoint.at(trace, depth))
                .toList();
    }

    private static boolean isApart(double[] kept, double depth) {
        int found = Arrays.binarySearch(kept, depth);
        int next = found >= 0 ? found : -found - 1;
        boolean below = next == kept.length || kept[next] - depth > SAME;
        return below && (next == 0 || depth - kept[next - 1] > SAME);
    }
}
