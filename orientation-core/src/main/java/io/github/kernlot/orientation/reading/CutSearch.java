package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.internal.Vector;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.util.KthSelector;

/**
 * Where to begin: the best of many cuts through three of the points each, so that points that do not belong spoil some of them and not
 * the best (random sampling after Rousseeuw and Leroy 1987, Robust Regression and Outlier Detection, from memory). The same points give the
 * same start.
 */
final class CutSearch {

    /** Points among which it is sought; more would not make it better. */
    private static final int ENOUGH = 500;

    private static final int TRIPLES = 600;
    private static final int FINALISTS = 6;
    private static final long SEED = 20_260_401;

    private final Wall wall;
    private final Cut widest;

    /** Of points that fix a plane. */
    CutSearch(Wall wall) {
        this.widest = widest(wall);
        this.wall = wall.size() > ENOUGH ? wall.only(sample(wall.size())) : wall;
    }

    private static int[] sample(int size) {
        return new SplittableRandom(SEED)
                .ints(0, size)
                .distinct()
                .limit(ENOUGH)
                .sorted()
                .toArray();
    }

    /** The start where sigmas are known: the cost of all points decides. */
    Cut byCost(Loss loss) {
        CutDescent descent = new CutDescent(wall, loss);
        return best(descent::cost, descent::from);
    }

    /** The start where they are not: the residual below which most of the points lie decides. */
    Cut byMostPoints() {
        CutDescent squares = new CutDescent(wall, Loss.SQUARES);
        return best(this::mostWithin, cut -> concentrated(cut, squares));
    }

    /** Least squares of the better points, twice (Rousseeuw and Van Driessen 2006, from memory). */
    private Cut concentrated(Cut start, CutDescent all) {
        if (wall.size() == majority(wall.size())) {
            return all.from(start);
        }
        Cut cut = start;
        for (int i = 0; i < 2; i++) {
            double[] sizes = sizes(cut);
            Integer[] order = new Integer[sizes.length];
            Arrays.setAll(order, k -> k);
            Arrays.sort(order, Comparator.comparingDouble(k -> sizes[k]));
            int[] nearest = Arrays.stream(order, 0, majority(sizes.length))
                    .mapToInt(Integer::intValue)
                    .sorted()
                    .toArray();
            cut = new CutDescent(wall.only(nearest), Loss.SQUARES).from(cut);
        }
        return mostWithin(cut) < mostWithin(start) ? cut : start;
    }

    /** How many points at least must speak for one plane, of three unknowns. */
    static int majority(int points) {
        return Math.min(points, points / 2 + 2);
    }

    private double mostWithin(Cut cut) {
        double[] sizes = sizes(cut);
        return new KthSelector().select(sizes, null, majority(sizes.length) - 1);
    }

    private double[] sizes(Cut cut) {
        double[] sizes = wall.residuals(cut);
        Arrays.setAll(sizes, i -> Math.abs(sizes[i]));
        return sizes;
    }

    /** The median size of the residuals as a sigma, with the correction for few points of Rousseeuw and Leroy 1987 (from memory). */
    double scale(Cut cut) {
        return 1.4826 * (1 + 5.0 / (wall.size() - 3)) * mostWithin(cut);
    }

    private Cut best(ToDoubleFunction<Cut> measure, UnaryOperator<Cut> refinement) {
        return triples().stream()
                .map(cut -> new Ranked(cut, measure.applyAsDouble(cut)))
                .sorted(Comparator.comparingDouble(Ranked::measure))
                .limit(FINALISTS)
                .map(ranked -> refinement.apply(ranked.cut()))
                .min(Comparator.comparingDouble(measure))
                .orElseThrow();
    }

    private record Ranked(Cut cut, double measure) {}

    private List<Cut> triples() {
        int size = wall.size();
        List<Cut> cuts = new ArrayList<>(List.of(widest));
        if ((long) size * (size - 1) * (size - 2) / 6 <= TRIPLES) {
            for (int i = 0; i < size; i++) {
                for (int j = i + 1; j < size; j++) {
                    for (int k = j + 1; k < size; k++) {
                        addThrough(i, j, k, cuts);
                    }
                }
            }
        } else {
            SplittableRandom random = new SplittableRandom(SEED);
            for (int tries = 0; cuts.size() < TRIPLES && tries < 100 * TRIPLES; tries++) {
                addThrough(random.nextInt(size), random.nextInt(size), random.nextInt(size), cuts);
            }
        }
        return cuts;
    }

    /** Through the first point, the one farthest from it and the one farthest from the line of both: where most points lie at one place. */
    private static Cut widest(Wall wall) {
        Vector first = wall.point(0);
        Vector far = first;
        for (int i = 1; i < wall.size(); i++) {
            far = wall.point(i).minus(first).length() > far.minus(first).length() ? wall.point(i) : far;
        }
        Vector normal = new Vector(0, 0, 0);
        for (int i = 1; i < wall.size(); i++) {
            Vector product = far.minus(first).cross(wall.point(i).minus(first));
            normal = product.length() > normal.length() ? product : normal;
        }
        Vector unit = normal.unit();
        return new Cut(unit, unit.dot(first));
    }

    private void addThrough(int i, int j, int k, List<Cut> cuts) {
        Vector first = wall.point(i);
        Vector one = wall.point(j).minus(first);
        Vector two = wall.point(k).minus(first);
        Vector normal = one.cross(two);
        if (normal.length() > 1e-9 * one.length() * two.length()) {
            Vector unit = normal.unit();
            cuts.add(new Cut(unit, unit.dot(first)));
        }
    }
}
