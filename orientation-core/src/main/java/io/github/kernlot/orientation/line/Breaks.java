package io.github.kernlot.orientation.line;

import java.util.Arrays;
import java.util.List;

/** The broken joins of a hole, which divide its core into pieces; what lies at a break belongs to the piece above it. */
final class Breaks {

    private Breaks() {}

    /** The depths of the broken joins, increasing. */
    static double[] of(List<Join> joins) {
        return joins.stream()
                .filter(join -> join.fit() == JoinFit.BROKEN)
                .mapToDouble(Join::depth)
                .sorted()
                .distinct()
                .toArray();
    }

    /** The number of breaks above a depth, which is the number of its piece. */
    static int above(double[] breaks, double depth) {
        int found = Arrays.binarySearch(breaks, depth);
        return found >= 0 ? found : -found - 1;
    }
}
