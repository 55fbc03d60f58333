package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.BetaConvention.Apex;
import io.github.kernlot.orientation.BetaConvention.Sense;
import io.github.kernlot.orientation.BetaConvention.View;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.orientation.solve.ReadingConvention.DipSign;
import io.github.kernlot.orientation.solve.ReadingConvention.LineSide;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Which convention a log of oriented core was made by: every way of counting beta, either side of the line and either sign of the
 * hole's dip is tried against a fabric whose orientation is known. Sixteen ways of beta and line are four maps, so that eight ways are
 * left to tell; each comes with the conventions that it stands for.
 *
 * <p>It finds a convention that was mistaken; it does not show that a log is right. Readings that are wrong one by one, or a fabric
 * that is not what it is taken for, fit no convention: look at the misfit of the best.
 */
public final class ConventionSearch {

    /** A way of reading is told from another when it is this many times as probable: assumed. */
    public static final double TOLD_ODDS = 20;

    private final List<FabricObservation> observations;
    private final List<ConventionEvidence> evidence;

    private ConventionSearch(List<FabricObservation> observations, List<ConventionEvidence> evidence) {
        this.observations = observations;
        this.evidence = evidence;
    }

    /**
     * Tries all conventions.
     *
     * @param observations one or more structures of known fabrics, all logged in one way
     * @return the evidence for each
     * @throws IllegalArgumentException if there is no observation
     */
    public static ConventionSearch of(List<FabricObservation> observations) {
        if (observations.isEmpty()) {
            throw new IllegalArgumentException("there is no observation of a fabric; expected one or more");
        }
        List<FabricObservation> kept = List.copyOf(observations);
        List<List<ReadingConvention>> ways = ways();
        double[] logs = ways.stream()
                .mapToDouble(way -> logLikelihood(kept, way.get(0)))
                .toArray();
        double most = Arrays.stream(logs).max().orElseThrow();
        double sum = Arrays.stream(logs).map(log -> Math.exp(log - most)).sum();
        List<ConventionEvidence> evidence = new ArrayList<>();
        for (int i = 0; i < logs.length; i++) {
            evidence.add(new ConventionEvidence(
                    ways.get(i), logs[i], misfit(kept, ways.get(i).get(0)), Math.exp(logs[i] - most) / sum));
        }
        evidence.sort(
                Comparator.comparingDouble(ConventionEvidence::logLikelihood).reversed());
        return new ConventionSearch(kept, List.copyOf(evidence));
    }

    /** All conventions, those together that come to the same. */
    private static List<List<ReadingConvention>> ways() {
        List<List<ReadingConvention>> ways = new ArrayList<>();
        for (DipSign sign : DipSign.values()) {
            for (LineSide side : LineSide.values()) {
                for (View view : View.values()) {
                    for (Sense sense : Sense.values()) {
                        for (Apex apex : Apex.values()) {
                            add(ways, new ReadingConvention(new BetaConvention(sense, view, apex), side, sign));
                        }
                    }
                }
            }
        }
        return ways;
    }

    private static void add(List<List<ReadingConvention>> ways, ReadingConvention convention) {
        for (List<ReadingConvention> way : ways) {
            if (way.get(0).isSameAs(convention)) {
                way.add(convention);
                return;
            }
        }
        ways.add(new ArrayList<>(List.of(convention)));
    }

    private static double logLikelihood(List<FabricObservation> observations, ReadingConvention convention) {
        double sum = 0;
        for (FabricObservation each : observations) {
            CorePlane shown = each.shown(convention);
            sum += FabricLikelihood.of(each.fabric(), shown, each.alphaSigma(), each.betaSigma())
                    .log(read(each, convention));
        }
        return sum;
    }

    private static Vector read(FabricObservation each, ReadingConvention convention) {
        return FabricLikelihood.pole(
                each.asRead().alpha(), convention.betaFromLowSide(each.asRead().beta(), each.lineAngle()));
    }

    private static double misfit(List<FabricObservation> observations, ReadingConvention convention) {
        return observations.stream()
                .mapToDouble(each -> {
                    CorePlane shown = each.shown(convention);
                    Vector predicted = FabricLikelihood.pole(shown.alpha(), shown.beta());
                    return 90 - Poles.alpha(read(each, convention), predicted);
                })
                .average()
                .orElseThrow();
    }

    /**
     * The evidence for every way that can be told by data at all.
     *
     * @return eight, the most probable first
     */
    public List<ConventionEvidence> evidence() {
        return evidence;
    }

    /**
     * The most probable way of reading the log.
     *
     * @return the first of the evidence
     */
    public ConventionEvidence best() {
        return evidence.get(0);
    }

    /**
     * The evidence for the convention that the log was taken to have.
     *
     * @param convention the convention
     * @return its evidence, to be compared with that of {@link #best}
     */
    public ConventionEvidence evidenceFor(ReadingConvention convention) {
        return evidence.stream()
                .filter(each -> each.convention().isSameAs(convention))
                .findFirst()
                .orElseThrow();
    }

    /**
     * What these readings cannot tell from the best way, and why: ways less than {@link #TOLD_ODDS} times less probable.
     *
     * @return the ties, empty where the best stands alone
     */
    public List<ConventionTie> ties() {
        return evidence.stream()
                .skip(1)
                .filter(each -> each.probability() > best().probability() / TOLD_ODDS)
                .map(each -> new ConventionTie(
                        best().convention(), each.convention(), reason(best().convention(), each.convention())))
                .toList();
    }

    private String reason(ReadingConvention one, ReadingConvention other) {
        if (one.dipSign() != other.dipSign()) {
            double steepest = observations.stream()
                    .mapToDouble(each -> Math.abs(each.hole().plunge()))
                    .max()
                    .orElseThrow();
            return steepest < 10
                    ? "the holes are near horizontal, where the sign of the dip hardly matters"
                    : "the fabric shows the same angles in the holes turned over, or the readings are too few or scatter too much";
        }
        double apart = mean(each -> 90 - Poles.alpha(read(each, one), read(each, other)));
        double noise = mean(each ->
                Math.hypot(each.fabric().sigma(), Degrees.cos(each.asRead().alpha()) * each.betaSigma()));
        double alpha = mean(each -> each.asRead().alpha());
        if (apart > 3 * noise) {
            return "the readings are too few, or fit neither";
        }
        if (alpha > 75) {
            return "alpha is near 90, where beta hardly matters";
        }
        boolean mirrored = one.isMirrored() != other.isMirrored();
        boolean turned = one.isTurned() != other.isTurned();
        if (turned && !mirrored) {
            return "alpha is near 0, where beta and beta + 180 are one plane";
        }
        return turned
                ? "beta is near 90 or 270, where the sense of beta and the end of the ellipse together do not show"
                : "beta is near 0 or 180, where the sense of beta does not show";
    }

    private double mean(ToDoubleFunction<FabricObservation> value) {
        return observations.stream().mapToDouble(value).average().orElseThrow();
    }

    /** The best way, and what it cannot be told from. */
    @Override
    public String toString() {
        return best() + ties().stream().map(tie -> "\n" + tie).collect(Collectors.joining());
    }
}
