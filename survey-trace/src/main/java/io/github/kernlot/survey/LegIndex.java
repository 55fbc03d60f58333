package io.github.kernlot.survey;

/** Finds the leg of a depth in a time that hardly grows with their number: equal classes of depth, and a search in one of them. */
final class LegIndex {

    private static final int CLASSES_PER_LEG = 4;

    private final double[] starts;
    private final int[] first;
    private final double perMetre;

    LegIndex(double[] starts) {
        this.starts = starts;
        double deepest = starts[starts.length - 1];
        int classes = CLASSES_PER_LEG * starts.length;
        this.perMetre = deepest > 0 ? classes / deepest : 0;
        this.first = new int[classes + 3];
        int leg = 0;
        for (int i = 0; i < first.length; i++) {
            while (leg + 1 < starts.length && classOf(starts[leg + 1]) < i) {
                leg++;
            }
            first[i] = leg;
        }
    }

    /** Grows with the depth, whatever its rounding: all that is asked of it. */
    private int classOf(double depth) {
        return (int) Math.min(depth * perMetre, first.length - 2);
    }

    /** The last leg that begins at or above a depth, 0 or more. */
    int at(double depth) {
        int inClass = classOf(depth);
        int low = first[inClass];
        int high = first[inClass + 1];
        if (high - low <= 1) {
            return starts[high] <= depth ? high : low;
        }
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (starts[middle] <= depth) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }
}
