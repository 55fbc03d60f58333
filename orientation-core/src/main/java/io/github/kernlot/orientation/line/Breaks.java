package io.github.kernlot.orientation.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The broken joins of a hole, which divide its core into pieces; what lies at a break belongs to the piece above it. */
final class Breaks {

    private final double[] depths;

    Breaks(List<Join> joins) {
        depths = joins.stream()
                .filter(join -> join.fit() == JoinFit.BROKEN)
                .mapToDouble(Join::depth)
                .sorted()
                .distinct()
                .toArray();
    }

    /** The number of breaks above a depth, which is the number of its piece. */
    int above(double depth) {
        int found = Arrays.binarySearch(depths, depth);
        return found >= 0 ? found : -found - 1;
    }

    /** What lies on each piece, in the order that it had. */
    <T> List<List<T>> divide(List<T> things, ToDoubleFunction<T> depth) {
        List<List<T>> divided = new ArrayList<>();
        for (int piece = 0; piece <= depths.length; piece++) {
            divided.add(new ArrayList<>());
        }
        for (T thing : things) {
            divided.get(above(depth.applyAsDouble(thing))).add(thing);
        }
        return divided;
    }
}
