package io.github.kernlot.survey.check;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.SurveyStation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The search for stations that their neighbours do not bear out. A wrong station makes its neighbours look wrong too, so stations
 * leave one at a time: first the one without which those that stay agree best.
 *
 * <p>The misfit of a station is the angle to its prediction, divided by what noise of sigma 1 in every station would make it. It is
 * a vector in the tangent plane, so the median of the lengths is sqrt(2 ln 2) sigma.
 */
final class OutlierSearch {

    /** With fewer, nobody can say which one is wrong. */
    private static final int FEWEST = 4;

    /** How far a removal is felt: the prediction of an end looks at two stations. */
    private static final int REACH = 2;

    /** What a removal must leave of the misfits round it: a real kink of the hole leaves two thirds of them. */
    private static final double LEFT_BEHIND = 0.5;

    private static final double RAYLEIGH_MEDIAN = Math.sqrt(2 * Math.log(2));
    private static final int NONE = -1;

    private final List<SurveyStation> stations;
    private final double[] depths;
    private final Vector[] tangents;
    private final double threshold;
    private final double floor;
    private final double usualSpacing;
    private final int[] above;
    private final int[] below;
    private final boolean[] removed;
    private final double[] misfits;
    private final double[] gains;
    private final double[] behind;
    private int left;

    /** Searches stations by depth, no two of them at one depth. */
    static List<OutlyingStation> in(List<SurveyStation> stations, double threshold, double floor) {
        return stations.size() < FEWEST ? List.of() : new OutlierSearch(stations, threshold, floor).found();
    }

    private OutlierSearch(List<SurveyStation> stations, double threshold, double floor) {
        this.stations = stations;
        this.threshold = threshold;
        this.floor = floor;
        int count = stations.size();
        left = count;
        depths = stations.stream().mapToDouble(SurveyStation::depth).toArray();
        tangents = stations.stream()
                .map(station -> Bend.vector(station.direction()))
                .toArray(Vector[]::new);
        above = IntStream.range(0, count).map(i -> i - 1).toArray();
        below = IntStream.range(0, count).map(i -> i + 1 < count ? i + 1 : NONE).toArray();
        removed = new boolean[count];
        misfits = new double[count];
        gains = new double[count];
        behind = new double[count];
        usualSpacing = median(IntStream.range(1, count)
                .mapToDouble(i -> depths[i] - depths[i - 1])
                .toArray());
    }

    private List<OutlyingStation> found() {
        List<OutlyingStation> found = new ArrayList<>();
        for (int i = 0; i < depths.length; i++) {
            misfits[i] = misfit(i);
        }
        for (int i = 0; i < depths.length; i++) {
            weigh(i);
        }
        int worst = worst();
        while (worst != NONE) {
            found.add(outlying(worst));
            remove(worst);
            worst = left < FEWEST ? NONE : worst();
        }
        found.sort(Comparator.comparingDouble(one -> one.station().depth()));
        return found;
    }

    /** The station whose removal gains most, of those beyond their limits. */
    private int worst() {
        double least = threshold * Math.max(floor, sigmaAtLeast());
        return IntStream.range(0, depths.length)
                .filter(i -> !removed[i] && misfits[i] > least && isExplained(i))
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -gains[i]))
                .filter(i -> misfits[i] > threshold * sigmaWithout(i))
                .findFirst()
                .orElse(NONE);
    }

    private boolean isExplained(int i) {
        return behind[i] < LEFT_BEHIND * (gains[i] + behind[i]);
    }

    private OutlyingStation outlying(int i) {
        HoleDirection direction = stations.get(i).direction();
        HoleDirection predicted = Bend.direction(predicted(i));
        double sigma = sigmaWithout(i);
        double limit = threshold * sigma * spread(i);
        return new OutlyingStation(
                stations.get(i),
                predicted,
                sigma,
                limit,
                above[i] == NONE || below[i] == NONE,
                slip(direction, predicted, limit));
    }

    private static Optional<StationSlip> slip(HoleDirection direction, HoleDirection predicted, double limit) {
        double near = Math.min(limit, direction.angleTo(predicted) / 2);
        return Arrays.stream(StationSlip.values())
                .filter(slip -> slip.undone(direction).angleTo(predicted) <= near)
                .min(Comparator.comparingDouble(slip -> slip.undone(direction).angleTo(predicted)));
    }

    /** Sum of the misfits round a station, with it and without it. */
    private void weigh(int i) {
        List<Integer> round = round(i);
        double before = misfits[i];
        for (int j : round) {
            before += misfits[j];
        }
        unlink(i);
        double after = 0;
        for (int j : round) {
            after += misfit(j);
        }
        link(i);
        behind[i] = after;
        gains[i] = before - after;
    }

    private void remove(int i) {
        List<Integer> round = round(i);
        unlink(i);
        removed[i] = true;
        left--;
        if (left < FEWEST) {
            return;
        }
        for (int j : round) {
            misfits[j] = misfit(j);
        }
        for (int j : round) {
            weigh(j);
            round(j).forEach(this::weigh);
        }
    }

    private void unlink(int i) {
        if (above[i] != NONE) {
            below[above[i]] = below[i];
        }
        if (below[i] != NONE) {
            above[below[i]] = above[i];
        }
    }

    private void link(int i) {
        if (above[i] != NONE) {
            below[above[i]] = i;
        }
        if (below[i] != NONE) {
            above[below[i]] = i;
        }
    }

    private List<Integer> round(int i) {
        List<Integer> round = new ArrayList<>(2 * REACH);
        int up = above[i];
        int down = below[i];
        for (int step = 0; step < REACH; step++) {
            if (up != NONE) {
                round.add(up);
                up = above[up];
            }
            if (down != NONE) {
                round.add(down);
                down = below[down];
            }
        }
        return round;
    }

    private double misfit(int i) {
        return Math.toDegrees(tangents[i].angleTo(predicted(i))) / spread(i);
    }

    private Vector predicted(int i) {
        if (above[i] == NONE) {
            return carriedOn(i, below);
        }
        if (below[i] == NONE) {
            return carriedOn(i, above);
        }
        return Bend.along(tangents[above[i]], tangents[below[i]], fraction(i));
    }

    private double fraction(int i) {
        return (depths[i] - depths[above[i]]) / (depths[below[i]] - depths[above[i]]);
    }

    private Vector carriedOn(int i, int[] next) {
        int near = next[i];
        int far = next[near];
        return Bend.along(tangents[far], tangents[near], 1 + share(i, near, far));
    }

    /** A bend is carried on over no more than its own length. */
    private double share(int i, int near, int far) {
        return Math.min(1, Math.abs(depths[i] - depths[near]) / Math.abs(depths[near] - depths[far]));
    }

    /**
     * What sigma 1 in every station makes of the misfit of this one; more where stations lie farther apart than usual, since a hole
     * wanders: there as the root of the distance, equal to the first at the usual spacing.
     */
    private double spread(int i) {
        double noise;
        double wander;
        if (above[i] == NONE || below[i] == NONE) {
            int[] next = above[i] == NONE ? below : above;
            int near = next[i];
            int far = next[near];
            double q = share(i, near, far);
            noise = 1 + (1 + q) * (1 + q) + q * q;
            wander = 3
                    * (Math.abs(depths[i] - depths[near]) + q * q * Math.abs(depths[near] - depths[far]))
                    / usualSpacing;
        } else {
            double f = fraction(i);
            noise = 1 + (1 - f) * (1 - f) + f * f;
            wander = 3 * f * (1 - f) * (depths[below[i]] - depths[above[i]]) / usualSpacing;
        }
        return Math.sqrt(Math.max(noise, wander));
    }

    /** The sigma of the stations that would stay. */
    private double sigmaWithout(int i) {
        List<Integer> round = round(i);
        double[] staying = new double[left - 1];
        unlink(i);
        int at = 0;
        for (int j = 0; j < depths.length; j++) {
            if (!removed[j] && j != i) {
                staying[at++] = round.contains(j) ? misfit(j) : misfits[j];
            }
        }
        link(i);
        return Math.max(floor, median(staying) / RAYLEIGH_MEDIAN);
    }

    /** No removal of one station makes the sigma less: the misfits that it changes are too few to move the median further. */
    private double sigmaAtLeast() {
        double[] sorted = IntStream.range(0, depths.length)
                .filter(i -> !removed[i])
                .mapToDouble(i -> misfits[i])
                .sorted()
                .toArray();
        int rank = (sorted.length - 1) / 2 - 2 * REACH - 1;
        return rank < 0 ? 0 : sorted[rank] / RAYLEIGH_MEDIAN;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
