package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.UpperTail;
import io.github.kernlot.orientation.internal.Vector;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A plane from the alphas that it shows in several holes whose core is not oriented: weighted least squares over all halves of the
 * cones at once, every plane that fits better than its neighbours being kept.
 *
 * <p>Two holes leave two or four planes, or none; a third picks one, unless the holes lie symmetrically: then planes are tied, and
 * stay so however good the alphas. The plane has to be the same in all holes. Where it bends between them, or the direction of a hole is
 * wrong, the residuals do not measure the error (Bucher 1943, Economic Geology 38, author from memory): use holes that diverge and lie close together.
 */
public final class PlaneFromAlphas {

    /** The best of several candidates is taken for decided when it is this many times as probable as the next: assumed. */
    public static final double DECIDED_ODDS = 20;

    /** Holes nearer than this to parallel, in degrees, leave a cone. */
    private static final double PARALLEL = 1e-6;

    /** Candidates nearer to each other than this, in degrees, are one. */
    private static final double SAME = 1e-4;

    private static final int STARTS = 800;

    /** Readings over which pairs of cones are tried: of many readings few pairs, since together they leave no narrow valley. */
    private static final int PAIRED = 20_000;

    /** So many of the better poles are mirrored, where there are no more readings. */
    private static final int MIRRORED = 12;

    private static final int MOST_PAIRS = 200;
    private static final int FEWEST_PAIRS = 10;

    private final List<AlphaReading> readings;
    private final List<AlphaCandidate> candidates;

    private PlaneFromAlphas(List<AlphaReading> readings, List<AlphaCandidate> candidates) {
        this.readings = readings;
        this.candidates = candidates;
    }

    /**
     * Finds the planes.
     *
     * @param readings two readings or more, of one plane or of parallel ones, in holes that are not all parallel
     * @return what was found
     * @throws IllegalArgumentException if there are fewer than two readings, or the holes are parallel within 1e-6 degrees, so that
     *     only a cone of poles is left ({@link PoleCone})
     */
    public static PlaneFromAlphas of(List<AlphaReading> readings) {
        List<AlphaReading> kept = List.copyOf(readings);
        if (kept.size() < 2) {
            throw new IllegalArgumentException("number of alphas is " + kept.size()
                    + "; expected 2 or above (one leaves a cone of poles: PoleCone)");
        }
        Vector first = Poles.axis(kept.get(0).hole());
        if (kept.stream().allMatch(reading -> 90 - Poles.alpha(first, Poles.axis(reading.hole())) < PARALLEL)) {
            throw new IllegalArgumentException("all holes are parallel to "
                    + kept.get(0).hole() + ": their alphas leave a cone of poles (PoleCone)");
        }
        return new PlaneFromAlphas(kept, candidates(kept));
    }

    private static List<AlphaCandidate> candidates(List<AlphaReading> readings) {
        AlphaDescent descent = new AlphaDescent(readings);
        List<Vector> first = valleys(starts(readings, descent).stream(), descent);
        List<Vector> found = valleys(Stream.concat(first.stream(), mirrored(first, readings)), descent);
        double least = descent.chiSquare(found.get(0));
        double[] likelihoods = found.stream()
                .mapToDouble(pole -> Math.exp((least - descent.chiSquare(pole)) / 2))
                .toArray();
        double sum = Arrays.stream(likelihoods).sum();
        List<AlphaCandidate> candidates = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            PlaneOrientation plane = Poles.plane(found.get(i));
            List<Double> residuals = readings.stream()
                    .map(reading -> -reading.cone().misfit(plane))
                    .toList();
            candidates.add(new AlphaCandidate(
                    plane, residuals, descent.chiSquare(found.get(i)), likelihoods[i] / sum, descent.estimate(plane)));
        }
        return List.copyOf(candidates);
    }

    /** Where pairs of cones meet, and of poles all over the hemisphere those that fit better than their neighbours. */
    private static List<Vector> starts(List<AlphaReading> readings, AlphaDescent descent) {
        List<Vector> starts = new ArrayList<>();
        int most = Math.max(FEWEST_PAIRS, Math.min(MOST_PAIRS, PAIRED / readings.size()));
        int pairs = 0;
        for (int gap = 1; gap < readings.size() && pairs < most; gap++) {
            for (int i = 0; i + gap < readings.size() && pairs < most; i++, pairs++) {
                readings.get(i)
                        .cone()
                        .meeting(readings.get(i + gap).cone())
                        .planes()
                        .forEach(plane -> starts.add(Poles.normal(plane)));
            }
        }
        starts.addAll(Hollows.of(descent::chiSquare, STARTS));
        return starts;
    }

    private static List<Vector> valleys(Stream<Vector> starts, AlphaDescent descent) {
        List<Vector> found = new ArrayList<>();
        starts.map(descent::from)
                .sorted(Comparator.comparingDouble(descent::chiSquare))
                .filter(pole -> found.stream().noneMatch(known -> apart(known, pole) < SAME))
                .forEach(found::add);
        return found;
    }

    /**
     * The better poles, each taken to the other half of each cone: at alpha 0 and 90 the halves meet, and hold a narrow valley each. Of
     * many readings no valley is so narrow.
     */
    private static Stream<Vector> mirrored(List<Vector> found, List<AlphaReading> readings) {
        if (readings.size() > MIRRORED) {
            return Stream.empty();
        }
        return found.stream()
                .limit(MIRRORED)
                .flatMap(pole -> readings.stream()
                        .map(reading -> Poles.axis(reading.hole()))
                        .map(axis -> pole.minus(axis.times(2 * pole.dot(axis)))));
    }

    private static double apart(Vector one, Vector other) {
        return 90 - Poles.alpha(one, other);
    }

    /**
     * The readings, in the order given.
     *
     * @return two or more
     */
    public List<AlphaReading> readings() {
        return readings;
    }

    /**
     * The planes that fit better than all planes near them. Near alpha 0 or 90 in several holes valleys are narrow, and in about one of a
     * thousand simulated cases of three to five such readings one was missed that the same readings turned about the vertical show.
     *
     * @return one or more, the most probable first
     */
    public List<AlphaCandidate> candidates() {
        return candidates;
    }

    /**
     * The candidates that the alphas do not tell from the best one: less than {@link #DECIDED_ODDS} times less probable.
     *
     * @return the best first; alone where it is decided
     */
    public List<AlphaCandidate> tied() {
        double limit = best().weight() / DECIDED_ODDS;
        return candidates.stream()
                .filter(candidate -> candidate.weight() > limit)
                .toList();
    }

    /**
     * The most probable plane; one of several where {@link #isDecided} is false.
     *
     * @return the first of the candidates
     */
    public AlphaCandidate best() {
        return candidates.get(0);
    }

    /**
     * Whether one candidate stands alone.
     *
     * @return false where several planes are tied
     */
    public boolean isDecided() {
        return tied().size() == 1;
    }

    /**
     * How probable residuals at least so large are, if the sigmas are right and the plane is one: the chi-square test of the best
     * candidate with two degrees of freedom less than readings.
     *
     * @return a probability in [0, 1]; empty for two readings, which leave nothing to test
     */
    public OptionalDouble probability() {
        return readings.size() == 2
                ? OptionalDouble.empty()
                : OptionalDouble.of(UpperTail.ofChiSquare(best().chiSquare(), readings.size() - 2));
    }

    /** How probable residuals so large are, and the candidates that are tied, the best first, each on its line. */
    @Override
    public String toString() {
        String head = readings.size() + " alphas, " + (isDecided() ? "one plane" : tied().size() + " planes tied")
                + probability().stream()
                        .mapToObj(p -> String.format(Locale.ROOT, ", p = %.2g of residuals so large", p))
                        .collect(Collectors.joining());
        return tied().stream().map(AlphaCandidate::toString).collect(Collectors.joining("\n", head + "\n", ""));
    }
}
