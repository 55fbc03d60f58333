package io.github.kernlot.survey.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Leaves out what a picture cannot hold. */
final class Thinning {

    private Thinning() {}

    /** The first and then every n-th of each group, in the order that they have. */
    static <T> List<T> everyNth(List<T> things, Function<T, Object> group, int n) {
        Map<Object, Integer> seen = new HashMap<>();
        return things.stream()
                .filter(thing -> (seen.merge(group.apply(thing), 1, Integer::sum) - 1) % Math.max(1, n) == 0)
                .toList();
    }

    private record Cell(Object group, long x, long y) {}

    /**
     * The first of each group in every cell of a lattice that is just wide enough to keep no more than the most; all where there
     * are no more. Each group keeps one at least.
     */
    static <T> List<T> thinned(List<T> things, Function<T, Point> place, Function<T, Object> group, int most) {
        List<T> kept = things;
        for (double width = 1; kept.size() > most && width < 4000; width *= 1.5) {
            kept = onePerCell(things, place, group, width);
        }
        return kept;
    }

    /** The first of each group in every cell of a lattice of that width. */
    static <T> List<T> onePerCell(List<T> things, Function<T, Point> place, Function<T, Object> group, double width) {
        Set<Cell> taken = new HashSet<>();
        List<T> kept = new ArrayList<>();
        for (T thing : things) {
            Point point = place.apply(thing);
            Cell cell = new Cell(
                    group.apply(thing), (long) Math.floor(point.x() / width), (long) Math.floor(point.y() / width));
            if (taken.add(cell)) {
                kept.add(thing);
            }
        }
        return kept;
    }
}
