package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.orientation.line.FabricReading;
import io.github.kernlot.orientation.line.LineAngle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Core oriented by a fabric whose orientation is known: bedding or cleavage that is constant in the ground and was read from an
 * arbitrary straight line on core that fits together. Each reading turns the line until the fabric lies as it is known to lie; several
 * count by their precision, which falls as cos(alpha).
 *
 * <p>Across the core (alpha 90) the fabric says nothing of the line. Along the core (alpha 0) it says it but for half a turn. A fabric
 * that is not where it is taken to be orients core wrongly, and no reading of beta shows it; the misfit of alpha may. Where a hole has
 * marks, {@code ReferenceLine} of the package {@code line} weighs them against the fabric; this is for core without. A fabric scatters by
 * 0.05 degrees at least: less is taken as that.
 */
public final class FabricLine {

    /** What the readings make of the line. */
    public enum Standing {
        /** One place is far more probable than all others, and narrow enough. */
        ORIENTED,
        /** Two places half a turn apart: the fabric lies along the core. */
        TWO_FOLD,
        /** Several places, or one that is too wide: the fabric lies across the core, or the readings contradict each other. */
        UNORIENTED
    }

    /** A place of less weight than this does not make another doubtful: assumed. */
    public static final double NEGLIGIBLE = 0.05;

    private static final double HALF_TURN_WITHIN = 30;

    private final HolePath path;
    private final List<FabricLineMode> modes;
    private final List<FabricWitness> witnesses;
    private final double sigma;

    private FabricLine(HolePath path, List<FabricLineMode> modes, List<FabricWitness> witnesses, double sigma) {
        this.path = path;
        this.modes = modes;
        this.witnesses = witnesses;
        this.sigma = sigma;
    }

    /**
     * Orients the core by readings of fabrics whose mean orientation is exact.
     *
     * @param path the path of the hole
     * @param readings one reading or more, all from one straight line on core that fits together
     * @return what the readings say of the line
     * @throws IllegalArgumentException if there is no reading, or the path does not reach one
     */
    public static FabricLine of(HolePath path, List<FabricReading> readings) {
        return of(path, readings, 0);
    }

    /**
     * Orients the core by readings of fabrics whose mean orientation is uncertain itself. All readings of a fabric share that error,
     * so that more readings do not lessen it. It widens the sigmas alone: the weights of the places and what the witnesses are take the
     * means as exact, and with a sigma of 5 degrees one in seven simulated places of a weight above 0.9 was not the true one.
     *
     * @param path the path of the hole
     * @param readings one reading or more, all from one straight line on core that fits together
     * @param fabricMeanSigma how far the mean pole of each fabric may be off in any one direction, degrees, 0 or more
     * @return what the readings say of the line
     * @throws IllegalArgumentException if there is no reading, the path does not reach one, or the sigma is negative or not finite
     */
    public static FabricLine of(HolePath path, List<FabricReading> readings, double fabricMeanSigma) {
        Require.notNegative("fabric mean sigma", fabricMeanSigma, "degrees");
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("there is no reading of a fabric; expected one or more");
        }
        List<Shown> shown =
                readings.stream().map(reading -> Shown.of(path, reading)).toList();
        double precision = shown.stream().mapToDouble(Shown::precision).sum();
        FabricCircle circle = FabricCircle.of(shown, 1 / Math.sqrt(precision));
        double shared = fabricMeanSigma * sharedLever(shown, precision);
        List<FabricLineMode> modes = circle.modes(shared);
        double best = modes.get(0).carriedAngle();
        List<FabricWitness> witnesses =
                shown.stream().map(each -> each.witness(best)).toList();
        return new FabricLine(path, modes, witnesses, circle.sigma(shared));
    }

    /** How far the line turns by one degree of error in the mean of each fabric, the fabrics being independent. */
    private static double sharedLever(List<Shown> shown, double precision) {
        return Math.sqrt(shown.stream()
                .collect(Collectors.groupingBy(
                        each -> each.reading().fabric(),
                        Collectors.summingDouble(each -> each.precision() / precision * each.lever())))
                .values()
                .stream()
                .mapToDouble(lever -> lever * lever)
                .sum());
    }

    /**
     * A reading and what the fabric's mean shows on the core there, from the line of the carried frame.
     *
     * @param reading the reading
     * @param mean the fabric's mean on the core
     * @param likelihood of a pole that was read there
     */
    record Shown(FabricReading reading, CorePlane mean, FabricLikelihood likelihood) {

        private static final double ACROSS = 1e-6;

        static Shown of(HolePath path, FabricReading reading) {
            CorePlane mean =
                    path.carriedFrameAt(reading.depth()).toCore(reading.fabric().mean());
            return new Shown(
                    reading,
                    mean,
                    FabricLikelihood.of(reading.fabric(), mean, reading.alphaSigma(), reading.betaSigma()));
        }

        /** The pole as it was read, were the line so far from that of the carried frame. */
        Vector read(double lineAngle) {
            return FabricLikelihood.pole(
                    reading.plane().alpha(), reading.plane().beta() + lineAngle);
        }

        double lever() {
            return 1 / Math.max(Degrees.cos(mean.alpha()), ACROSS);
        }

        double precision() {
            double scatter = FabricLikelihood.scatter(reading.fabric());
            double sigma = Math.hypot(scatter * lever(), FabricLikelihood.flattest(reading.betaSigma()));
            return 1 / (sigma * sigma);
        }

        FabricWitness witness(double lineAngle) {
            Vector pole = read(lineAngle);
            double member = likelihood.member(pole);
            double turned = likelihood.member(pole.negated());
            double stray = likelihood.lost();
            double most = Math.max(member, Math.max(turned, stray));
            double sum = Math.exp(member - most) + Math.exp(turned - most) + Math.exp(stray - most);
            boolean across = lever() >= 1 / ACROSS;
            return new FabricWitness(
                    reading,
                    mean.alpha(),
                    across ? Double.POSITIVE_INFINITY : 1 / Math.sqrt(precision()),
                    Degrees.wrap180(mean.beta() - reading.plane().beta() - lineAngle),
                    Math.exp(member - most) / sum,
                    Math.exp(turned - most) / sum,
                    Math.exp(stray - most) / sum);
        }
    }

    /**
     * The places where the line may lie.
     *
     * @return one or more, the most probable first
     */
    public List<FabricLineMode> modes() {
        return modes;
    }

    /**
     * What each reading says, in the order given.
     *
     * @return one for each reading
     */
    public List<FabricWitness> witnesses() {
        return witnesses;
    }

    /**
     * The standard deviation of the line over all its places, {@code sqrt(-2 ln R)} of the posterior.
     *
     * @return degrees; above 100 or so where the readings say next to nothing
     */
    public double sigma() {
        return sigma;
    }

    /**
     * The core at a depth with its line where it most probably lies.
     *
     * @param depth metres along the hole
     * @return the frame
     * @throws IllegalArgumentException if the path does not reach that depth
     */
    public CoreFrame frameAt(double depth) {
        return path.carriedFrameAt(depth).turned(modes.get(0).carriedAngle());
    }

    /**
     * The line angle at a depth where it most probably lies, with the sigma over all its places.
     *
     * @param depth metres along the hole
     * @param reference the side to count from
     * @return the angle
     * @throws IllegalArgumentException if the path does not reach that depth
     */
    public LineAngle lineAt(double depth, WallReference reference) {
        return new LineAngle(frameAt(depth), reference, sigma);
    }

    /**
     * Whether the core is oriented by these readings.
     *
     * @param sigmaLimit the greatest sigma of the line with which core counts as oriented, degrees, above 0
     * @return the standing
     * @throws IllegalArgumentException if the limit is not a finite number above 0
     */
    public Standing standing(double sigmaLimit) {
        Require.positive("sigma limit", sigmaLimit, "degrees");
        FabricLineMode best = modes.get(0);
        if (best.weight() >= 1 - NEGLIGIBLE) {
            return best.sigma() <= sigmaLimit ? Standing.ORIENTED : Standing.UNORIENTED;
        }
        FabricLineMode next = modes.get(1);
        double opposite = Math.abs(Degrees.wrap180(next.carriedAngle() - best.carriedAngle() - 180));
        boolean twoAlone = best.weight() + next.weight() >= 1 - NEGLIGIBLE;
        return twoAlone && opposite <= HALF_TURN_WITHIN && best.sigma() <= sigmaLimit
                ? Standing.TWO_FOLD
                : Standing.UNORIENTED;
    }

    /**
     * Why the standing is what it is, in words.
     *
     * @param sigmaLimit the greatest sigma of the line with which core counts as oriented, degrees, above 0
     * @return a sentence
     * @throws IllegalArgumentException if the limit is not a finite number above 0
     */
    public String reason(double sigmaLimit) {
        Standing standing = standing(sigmaLimit);
        double sharpest = witnesses.stream()
                .mapToDouble(FabricWitness::predictedAlpha)
                .min()
                .orElseThrow();
        List<String> parts = new ArrayList<>();
        switch (standing) {
            case ORIENTED ->
                parts.add("the fabric puts the line within "
                        + Degrees.text(modes.get(0).sigma()) + " degrees");
            case TWO_FOLD ->
                parts.add("the fabric lies along the core (alpha " + Degrees.text(sharpest)
                        + "), where the line and the opposite one cannot be told apart");
            case UNORIENTED ->
                parts.add(
                        modes.get(0).weight() >= 1 - NEGLIGIBLE
                                ? "the line is known to "
                                        + Degrees.text(modes.get(0).sigma())
                                        + " degrees only; the fabric meets the core at alpha " + Degrees.text(sharpest)
                                        + ", and at 90 it would say nothing"
                                : "the readings leave several places for the line");
        }
        long off = witnesses.stream()
                .filter(witness -> witness.alphaMisfitSigmas() > 3)
                .count();
        if (off > 0) {
            parts.add(off + " of " + witnesses.size()
                    + " alphas do not fit the fabric (more than 3 sigmas off): other structures, another survey or a"
                    + " fabric that is not there");
        }
        return String.join("; ", parts);
    }

    /**
     * The line at the depth of the first reading, {@code 146.4 from low side, sigma 5.0, at 101.20 m}, and the places where it may lie in
     * the carried frame, each on its line.
     */
    @Override
    public String toString() {
        double depth = witnesses.get(0).reading().depth();
        String head = String.format(Locale.ROOT, "%s, at %.2f m\n", lineAt(depth, WallReference.lowSide()), depth);
        return modes.stream().map(FabricLineMode::toString).collect(Collectors.joining("\n", head, ""));
    }
}
