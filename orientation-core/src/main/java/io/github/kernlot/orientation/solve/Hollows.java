package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.internal.EvenPoles;
import io.github.kernlot.orientation.internal.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Where a function of the pole is lower than all round: starts for a descent that shall miss no valley. */
final class Hollows {

    /** Poles within this many times the mean distance between neighbours are compared. */
    private static final double NEIGHBOURS = 1.6;

    private Hollows() {}

    /** Of so many poles spread evenly over the hemisphere those that lie lower than their neighbours. */
    static List<Vector> of(ToDoubleFunction<Vector> height, int count) {
        double near = Math.cos(NEIGHBOURS * Math.sqrt(2 * Math.PI / count));
        Vector[] poles = new Vector[count];
        double[] heights = new double[count];
        for (int i = 0; i < count; i++) {
            poles[i] = EvenPoles.pole(i, count);
            heights[i] = height.applyAsDouble(poles[i]);
        }
        List<Vector> hollows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            boolean lowest = true;
            for (int k = 0; k < count && lowest; k++) {
                lowest = heights[k] >= heights[i] || Math.abs(poles[i].dot(poles[k])) < near;
            }
            if (lowest) {
                hollows.add(poles[i]);
            }
        }
        return hollows;
    }
}
