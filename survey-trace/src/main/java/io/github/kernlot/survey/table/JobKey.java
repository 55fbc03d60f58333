package io.github.kernlot.survey.table;

import static java.util.Map.entry;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.GammaConvention;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.survey.BeyondLast;
import io.github.kernlot.survey.DesurveyMethod;
import io.github.kernlot.survey.North;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A key of the settings.
 *
 * @param name the key
 * @param preset the value where none is given
 * @param isUsed whether anything depends on it yet
 * @param range the numbers that are accepted; empty where words are
 * @param words the words that are accepted, with what they mean; empty where numbers are, and for the lists of
 *     fabric.kinds and survey.priority
 */
record JobKey(String name, String preset, boolean isUsed, Optional<NumberRange> range, Map<String, ?> words) {

    static final Map<String, North> NORTHS = Map.of("grid", North.GRID, "true", North.TRUE, "magnetic", North.MAGNETIC);
    static final Map<String, BeyondLast> BEYOND =
            Map.of("straight", BeyondLast.STRAIGHT, "constant-curvature", BeyondLast.CONSTANT_CURVATURE);
    static final Map<String, DesurveyMethod> METHODS = Map.of(
            "minimum-curvature", DesurveyMethod.MINIMUM_CURVATURE,
            "radius-of-curvature", DesurveyMethod.RADIUS_OF_CURVATURE,
            "average-angle", DesurveyMethod.AVERAGE_ANGLE,
            "balanced-tangential", DesurveyMethod.BALANCED_TANGENTIAL,
            "tangential", DesurveyMethod.TANGENTIAL);
    static final Map<String, WallReference> SIDES =
            Map.of("low", WallReference.lowSide(), "high", WallReference.highSide(), "north", WallReference.north());
    static final Map<String, BetaConvention.Sense> SENSES =
            Map.of("clockwise", BetaConvention.Sense.CLOCKWISE, "anticlockwise", BetaConvention.Sense.ANTICLOCKWISE);
    static final Map<String, BetaConvention.Apex> APEXES =
            Map.of("down-hole", BetaConvention.Apex.DOWN_HOLE, "up-hole", BetaConvention.Apex.UP_HOLE);
    static final Map<String, GammaConvention.Zero> GAMMA_ZEROS = Map.of(
            "long-axis-down-hole", GammaConvention.Zero.LONG_AXIS_DOWN_HOLE,
            "short-axis-clockwise", GammaConvention.Zero.SHORT_AXIS_CLOCKWISE,
            "long-axis-up-hole", GammaConvention.Zero.LONG_AXIS_UP_HOLE,
            "short-axis-anticlockwise", GammaConvention.Zero.SHORT_AXIS_ANTICLOCKWISE);

    /** The key that lists names of surveys, the most trusted first. */
    static final String PRIORITY = "survey.priority";

    private static final Set<String> OF_FABRIC =
            Set.of("fabric.prior_stray", "fabric.anchor_sigma_deg", "alpha.sigma_deg", "beta.sigma_deg");

    /** The keys in the order in which they are listed in the docs. */
    static final Map<String, JobKey> ALL = byName(List.of(
            word("survey.north", "grid", NORTHS),
            word("output.north", "grid", NORTHS),
            word("survey.method", "minimum-curvature", METHODS),
            word("survey.beyond_last", "straight", BEYOND),
            number("survey.azimuth.sigma_deg", "1.0", NumberRange.SIGMA_OR_NONE),
            number("survey.dip.sigma_deg", "0.3", NumberRange.SIGMA_OR_NONE),
            number("survey.azimuth.bias_sigma_deg", "0.5", NumberRange.SIGMA_OR_NONE),
            number("survey.dip.bias_sigma_deg", "0.1", NumberRange.SIGMA_OR_NONE),
            number("survey.extrapolation_limit_m", "30", NumberRange.DEPTH),
            number("core.diameter_mm", "63.5", NumberRange.DIAMETER),
            word("survey.dip_sign", "negative-down", Map.of("negative-down", false, "positive-down", true)),
            word("survey.several", "priority", Map.of("priority", false, "weighted-mean", true)),
            new JobKey(PRIORITY, "", true, Optional.empty(), Map.of()),
            word("mark.side", "low", SIDES),
            word("beta.sense", "clockwise", SENSES),
            word("beta.apex", "down-hole", APEXES),
            word("gamma.sense", "clockwise", SENSES),
            word("gamma.zero", "long-axis-down-hole", GAMMA_ZEROS),
            number("mark.sensor_sigma_deg", "1.0", NumberRange.SIGMA_OR_NONE),
            number("mark.level_sigma_deg", "2.0", NumberRange.SIGMA_OR_NONE),
            number("mark.pencil_sigma_mm", "0.5", NumberRange.SIGMA_OR_NONE),
            number("mark.transfer_sigma_mm", "1.0", NumberRange.SIGMA_OR_NONE),
            number("mark.bias_sigma_deg", "1.0", NumberRange.SIGMA_OR_NONE),
            number("hand.tolerance_deg", "10", NumberRange.within(1e-6, 180)),
            number("hand.neighbours", "1", NumberRange.whole(1, 1000)),
            number("mark.prior_flipped", "0.02", NumberRange.PROBABILITY),
            number("mark.prior_wrong", "0.05", NumberRange.PROBABILITY),
            number("run.finding_prior_factor", "3", NumberRange.within(1, 1e6)),
            number("join.locked_sigma_deg", "0.5", NumberRange.SIGMA_OR_NONE),
            number("join.doubtful_sigma_deg", "3.0", NumberRange.SIGMA_OR_NONE),
            number("join.doubtful_prior_slip", "0.3", NumberRange.PROBABILITY),
            number("line.wander_sigma_deg", "0.2", NumberRange.SIGMA_OR_NONE),
            number("line.sigma_limit_deg", "15", NumberRange.SIGMA),
            new JobKey(FabricWord.KEY, "", true, Optional.empty(), Map.of()),
            number("fabric.prior_stray", "0.1", NumberRange.within(0, 0.99)),
            number("fabric.anchor_sigma_deg", "5", NumberRange.SIGMA),
            number("alpha.sigma_deg", "2", NumberRange.SIGMA_OR_NONE),
            number("beta.sigma_deg", "5", NumberRange.SIGMA_OR_NONE),
            unused("gamma.sigma_deg", "5", NumberRange.SIGMA_OR_NONE),
            number("depth.sigma_m", "0.05", NumberRange.within(0, 1000)),
            word("input.bad_rows", "refuse", Map.of("refuse", false, "set-aside", true)),
            new JobKey(
                    "uncertainty.method",
                    "first-order",
                    false,
                    Optional.empty(),
                    Map.ofEntries(entry("first-order", ""), entry("sigma-points", ""), entry("monte-carlo", ""))),
            unused("uncertainty.samples", "100000", NumberRange.whole(1, 1e9)),
            unused("random.seed", "1", NumberRange.whole(-9e18, 9e18))));

    private static Map<String, JobKey> byName(List<JobKey> keys) {
        Map<String, JobKey> found = new LinkedHashMap<>();
        keys.forEach(key -> found.put(key.name, key));
        return found;
    }

    private static JobKey word(String name, String preset, Map<String, ?> words) {
        return new JobKey(name, preset, true, Optional.empty(), words);
    }

    private static JobKey number(String name, String preset, NumberRange range) {
        return new JobKey(name, preset, true, Optional.of(range), Map.of());
    }

    private static JobKey unused(String name, String preset, NumberRange range) {
        return new JobKey(name, preset, false, Optional.of(range), Map.of());
    }

    /** The keys that begin as one does that is not known; all where none does. */
    static String like(String unknown) {
        String start = unknown.replaceAll("\\..*", "").toLowerCase(Locale.ROOT) + ".";
        boolean isStart = ALL.keySet().stream().anyMatch(name -> name.startsWith(start));
        return ALL.keySet().stream()
                .filter(name -> !isStart || name.startsWith(start))
                .collect(Collectors.joining(", "));
    }

    /** Whether anything depends on it only where structures are witnesses of the line. */
    boolean isOfFabric() {
        return OF_FABRIC.contains(name);
    }

    /** Why a value is refused; empty where it is accepted. */
    Optional<String> refusal(String value) {
        String word = value.toLowerCase(Locale.ROOT);
        if (name.equals(FabricWord.KEY)) {
            return FabricWord.refusal(value);
        }
        if (name.equals(PRIORITY)) {
            return Optional.empty();
        }
        if (range.isPresent()) {
            return range.get().parse(value).isPresent()
                    ? Optional.empty()
                    : Optional.of(range.get().expected(value));
        }
        if (words.containsKey(word)) {
            return Optional.empty();
        }
        return Optional.of((value.isEmpty() ? "blank, " : "")
                + (words.size() == 1 ? "expected " : "expected one of ")
                + words.keySet().stream().sorted().collect(Collectors.joining(", ")));
    }
}
