package io.github.kernlot.survey.combine;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.Finding.Level;
import io.github.kernlot.survey.check.Measurement;
import io.github.kernlot.survey.check.SurveyLimit;
import io.github.kernlot.survey.check.SurveyLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The pass of a tool into the hole against its pass out of it, at the stations that both have. The published tolerances ask for ten
 * such stations; whether they mean each station or a mean they do not say, and each is held against them here.
 *
 * @param differences the common stations by depth
 */
public record PassComparison(List<PassDifference> differences) {

    private static final int ENOUGH = 10;
    private static final double SAME_DEPTH = 0.1;
    private static final double STEEP = 10;

    /** Keeps a copy of the list. */
    public PassComparison {
        differences = List.copyOf(differences);
    }

    /**
     * Compares two passes at the stations that lie within 0.1 m of each other.
     *
     * @param in the pass into the hole
     * @param out the pass out of it
     * @return the comparison
     * @throws IllegalArgumentException if the first is known as a pass out, or the second as one in
     */
    public static PassComparison of(SurveyRun in, SurveyRun out) {
        checkPass(in, SurveyPass.IN);
        checkPass(out, SurveyPass.OUT);
        List<PassDifference> differences = new ArrayList<>();
        List<SurveyStation> others = out.survey().stations();
        int next = 0;
        for (SurveyStation station : in.survey().stations()) {
            while (next < others.size() && others.get(next).depth() < station.depth() - SAME_DEPTH) {
                next++;
            }
            if (next < others.size() && others.get(next).depth() <= station.depth() + SAME_DEPTH) {
                differences.add(new PassDifference(station, others.get(next++)));
            }
        }
        return new PassComparison(differences);
    }

    private static void checkPass(SurveyRun run, SurveyPass expected) {
        if (run.pass().isPresent() && run.pass().get() != expected) {
            throw new IllegalArgumentException(
                    "survey " + run.name() + " is the pass " + run.pass().get() + "; expected " + expected);
        }
    }

    /**
     * What is to be said of the two passes.
     *
     * @param limits with {@link SurveyLimit#PASS_INCLINATION}, {@link SurveyLimit#PASS_AZIMUTH} and
     *     {@link SurveyLimit#PASS_AZIMUTH_STEEP}
     * @return what was found; empty where there is nothing to say
     */
    public List<Finding> findings(SurveyLimits limits) {
        List<Finding> found = new ArrayList<>();
        if (differences.size() < ENOUGH) {
            found.add(Finding.ofHole(
                    Level.WARNING,
                    "the two passes have " + differences.size() + " common stations; the published tolerances ask for "
                            + ENOUGH));
        }
        for (PassDifference difference : differences) {
            double depth = difference.in().depth();
            Finding apart = Finding.at(depth, Level.WARNING, "the pass out of the hole differs from the pass in");
            limits.exceeded(SurveyLimit.PASS_INCLINATION, "difference of inclination", difference.inclination())
                    .map(apart::measured)
                    .ifPresent(found::add);
            SurveyLimit azimuth =
                    difference.fromVertical() >= STEEP ? SurveyLimit.PASS_AZIMUTH : SurveyLimit.PASS_AZIMUTH_STEEP;
            limits.exceeded(azimuth, "difference of azimuth", difference.azimuth())
                    .map(apart::measured)
                    .ifPresent(found::add);
        }
        return found;
    }

    /**
     * The slip of the wireline, {@code total slip x 1000 / (2 x hold-up depth)}.
     *
     * @param totalSlip how far the depth counter is off when the tool is back, metres, of either sign
     * @param holdUpDepth how deep the tool went, metres, above 0
     * @return metres in 1,000 m of line, 0 or more
     * @throws IllegalArgumentException if the slip is not finite or the depth not above 0
     */
    public static double wirelineSlip(double totalSlip, double holdUpDepth) {
        return Math.abs(Require.finite("total slip", totalSlip, "m"))
                * 1000
                / (2 * Require.positive("hold-up depth", holdUpDepth, "m"));
    }

    /**
     * Whether the wireline slipped too far. The tolerance is less than its value.
     *
     * @param totalSlip how far the depth counter is off when the tool is back, metres, of either sign
     * @param holdUpDepth how deep the tool went, metres, above 0
     * @param limits with {@link SurveyLimit#WIRELINE_SLIP}
     * @return what was found; empty where there is nothing to say
     * @throws IllegalArgumentException if the slip is not finite or the depth not above 0
     */
    public static List<Finding> slipFindings(double totalSlip, double holdUpDepth, SurveyLimits limits) {
        double slip = wirelineSlip(totalSlip, holdUpDepth);
        Optional<Measurement> measured = limits.of(SurveyLimit.WIRELINE_SLIP)
                .filter(limit -> slip >= limit.value())
                .map(limit -> new Measurement("slip", slip, limit));
        return measured
                .map(
                        Finding.ofHole(Level.WARNING, "the wireline slipped: the depths of the stations are in doubt")
                                ::measured)
                .stream()
                .toList();
    }

    /** One line for each common station. */
    @Override
    public String toString() {
        return differences.stream().map(PassDifference::toString).collect(Collectors.joining("\n"));
    }
}
