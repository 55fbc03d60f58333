package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.internal.UpperTail;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.apache.commons.math3.util.CombinatoricsUtils;

/**
 * The points of one trace among points of unknown sigma: those that agree best, and as many more as these bear out. Points are given up
 * where their part in the sum of squares is more than chance gives to the worst choice of so many (the F test of shifted means with
 * Bonferroni's bound: Cook and Weisberg 1982, Residuals and Influence in Regression, from memory).
 *
 * @param count how many there are
 * @param cut the one of least squares through them
 * @param squares the sum of the squares of their residuals
 */
record SoundPoints(int count, Cut cut, double squares) {

    /** Scatter below this part of the sigmas to scale is rounding. */
    static final double ROUNDING = 1e-6;

    /** The greatest share of traces without a wrong point that lose so many, for any number. */
    private static final double LOST = 0.003;

    /** No lesser probability is asked for: there are then so many points that a lost one does no harm. */
    private static final double LEAST_PROBABILITY = 1e-12;

    private static final double WITHIN = 2.5;

    static SoundPoints among(Wall wall) {
        CutSearch search = new CutSearch(wall);
        Cut start = search.byMostPoints();
        double limit = WITHIN * Math.max(ROUNDING, search.scale(start));
        Integer[] order = IntStream.range(0, wall.size()).boxed().toArray(Integer[]::new);
        Arrays.sort(order, byDistance(wall, start));
        int near = CutSearch.majority(wall.size());
        while (near < order.length && Math.abs(wall.residual(start, order[near])) <= limit) {
            near++;
        }
        SoundPoints nearest = fitted(wall, order, near, start);
        Arrays.sort(order, near, order.length, byDistance(wall, nearest.cut));
        SoundPoints all = fitted(wall, order, order.length, nearest.cut);
        if (nearest.bearOut(all)) {
            return all;
        }
        SoundPoints sound = nearest;
        int tooMany = order.length;
        while (tooMany - sound.count > 1) {
            SoundPoints more = fitted(wall, order, (sound.count + tooMany) / 2, sound.cut);
            if (nearest.bearOut(more)) {
                sound = more;
            } else {
                tooMany = more.count;
            }
        }
        return sound;
    }

    private static Comparator<Integer> byDistance(Wall wall, Cut cut) {
        double[] residuals = wall.residuals(cut);
        return Comparator.comparingDouble(i -> Math.abs(residuals[i]));
    }

    private static SoundPoints fitted(Wall wall, Integer[] order, int count, Cut start) {
        Wall some = wall.only(Arrays.stream(order, 0, count)
                .mapToInt(Integer::intValue)
                .sorted()
                .toArray());
        Cut cut = new CutDescent(some, Loss.SQUARES).from(start);
        double squares =
                Arrays.stream(some.residuals(cut)).map(each -> each * each).sum();
        return new SoundPoints(count, cut, squares);
    }

    private boolean bearOut(SoundPoints more) {
        int added = more.count - count;
        if (added == 0) {
            return true;
        }
        double each = (more.squares - squares) / added / (scale() * scale());
        double probability = UpperTail.ofF(each, added, count - 3);
        double choices = CombinatoricsUtils.binomialCoefficientLog(more.count, added);
        return probability >= Math.max(LEAST_PROBABILITY, LOST * Math.exp(-choices));
    }

    /** One sigma of the residuals. */
    double scale() {
        return Math.max(ROUNDING, Math.sqrt(squares / (count - 3)));
    }
}
