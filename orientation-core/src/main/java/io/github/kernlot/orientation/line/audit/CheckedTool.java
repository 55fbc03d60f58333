package io.github.kernlot.orientation.line.audit;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.LogTime;
import io.github.kernlot.orientation.sphere.CircularSample;
import io.github.kernlot.orientation.sphere.CircularTrend;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What its checks in a cradle say of one tool. */
public final class CheckedTool {

    /** 1.4826 times the median distance is the standard deviation of a Gaussian. */
    private static final double ROBUST = 1.4826;

    /** A cradle is read to whole degrees at best, so a closer scatter of a few checks is chance. */
    private static final double LEAST_SIGMA = 1;

    private static final double BLUNDER_IN_SIGMAS = 5;
    private static final double SECONDS_OF_DAY = 86_400;

    private final String name;
    private final List<ToolCheck> sound;
    private final List<ToolCheck> blunders;

    private CheckedTool(String name, List<ToolCheck> checks) {
        this.name = name;
        List<ToolCheck> ordered = checks.stream()
                .sorted(Comparator.comparing(check -> checks.get(0).at().until(check.at())))
                .toList();
        double median = sample(ordered).median().middle();
        double[] away = ordered.stream()
                .mapToDouble(check -> Math.abs(Degrees.wrap180(check.difference() - median)))
                .sorted()
                .toArray();
        double limit = BLUNDER_IN_SIGMAS * Math.max(LEAST_SIGMA, ROBUST * away[away.length / 2]);
        Map<Boolean, List<ToolCheck>> parted = ordered.stream()
                .collect(Collectors.partitioningBy(
                        check -> Math.abs(Degrees.wrap180(check.difference() - median)) > limit));
        this.sound = parted.getOrDefault(false, List.of());
        this.blunders = parted.getOrDefault(true, List.of());
    }

    /**
     * The tools of some checks.
     *
     * @param checks the checks in any order
     * @return the tools in the order of their names
     * @throws IllegalArgumentException if of two checks of a tool only one has an offset from UTC
     */
    public static List<CheckedTool> of(List<ToolCheck> checks) {
        Map<String, List<ToolCheck>> byTool = new TreeMap<>();
        checks.forEach(check ->
                byTool.computeIfAbsent(check.tool(), tool -> new ArrayList<>()).add(check));
        List<CheckedTool> tools = new ArrayList<>();
        byTool.forEach((tool, own) -> tools.add(new CheckedTool(tool, own)));
        return tools;
    }

    private static CircularSample sample(List<ToolCheck> checks) {
        return CircularSample.of(
                checks.stream().mapToDouble(ToolCheck::difference).toArray());
    }

    /**
     * The tool's name.
     *
     * @return as the checks have it
     */
    public String name() {
        return name;
    }

    /**
     * The checks that are no blunders.
     *
     * @return the checks in the order of time, at least one
     */
    public List<ToolCheck> sound() {
        return sound;
    }

    /**
     * The checks that say nothing of the tool: they stand more than 5 robust standard deviations (1.4826 times the median distance,
     * 1 degree at least) from the tool's median. Common practice, no source.
     *
     * <p>Among few checks of a tool that scatters widely an honest one may be called a blunder: of three it happened to 8 in 100 simulated
     * tools with a sigma of 3 degrees and to 20 with one of 10, and the interval of the bias then held 91 % and 85 % instead of 95.
     *
     * @return the checks in the order of time
     */
    public List<ToolCheck> blunders() {
        return blunders;
    }

    /**
     * By how much the tool reads too much: the mean of its differences, with the interval and the test of {@link CircularSample}.
     *
     * @return the bias; empty for a single sound check, or where the differences have no mean
     */
    public Optional<GroupBias> bias() {
        CircularSample sample = differences();
        return sample.size() > 1 && sample.mean().isPresent()
                ? Optional.of(new GroupBias(
                        Degrees.wrap180(sample.mean().getAsDouble()),
                        sample.meanRadius95(),
                        sample.probabilityOfMean(0)))
                : Optional.empty();
    }

    /**
     * The differences read minus known of the sound checks.
     *
     * @return the sample, in degrees
     */
    public CircularSample differences() {
        return sample(sound);
    }

    /**
     * How often a check is a blunder.
     *
     * @return the rate
     */
    public BlunderRate blunderRate() {
        return new BlunderRate(blunders.size(), sound.size() + blunders.size());
    }

    /**
     * How the differences turn with time.
     *
     * @return degrees per day since the first sound check; empty for fewer than three of them, or at one time
     */
    public Optional<CircularTrend> drift() {
        double[] days = sound.stream()
                .map(check -> sound.get(0).at().until(check.at()))
                .mapToDouble(CheckedTool::days)
                .toArray();
        if (days.length < 3 || days[days.length - 1] == 0) {
            return Optional.empty();
        }
        double[] differences = sound.stream().mapToDouble(ToolCheck::difference).toArray();
        return Optional.of(CircularTrend.of(differences, days));
    }

    private static double days(Duration duration) {
        return duration.toSeconds() / SECONDS_OF_DAY;
    }

    /**
     * Whether the tool changed at a time: a shift, a fall, a repair. By the test of Watson and Williams for two means.
     *
     * @param time when it may have changed; a check at that time counts as after it
     * @return the change; empty unless sound checks lie on both sides, three or more together
     * @throws IllegalArgumentException if only one of the time and the checks has an offset from UTC
     */
    public Optional<ToolChange> changeAt(LogTime time) {
        long before = sound.stream().filter(check -> check.at().isBefore(time)).count();
        return change((int) before, 1);
    }

    /**
     * The clearest change between two checks, wherever it is; its probability is that of one at a known time multiplied by the
     * number of times tried (Bonferroni), 1 at most.
     *
     * @return the change; empty for fewer than three sound checks
     */
    public Optional<ToolChange> clearestChange() {
        int tried = sound.size() - 1;
        return IntStream.rangeClosed(1, tried)
                .mapToObj(first -> change(first, tried))
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(ToolChange::probability));
    }

    private Optional<ToolChange> change(int first, int tried) {
        if (first == 0 || first == sound.size() || sound.size() < 3) {
            return Optional.empty();
        }
        CircularSample before = sample(sound.subList(0, first));
        CircularSample after = sample(sound.subList(first, sound.size()));
        double probability = CircularSample.probabilityOfEqualMeans(List.of(before, after));
        double degrees = Degrees.wrap180(after.mean().orElse(0) - before.mean().orElse(0));
        return Optional.of(new ToolChange(sound.get(first).at(), degrees, Math.min(1, tried * probability)));
    }

    /** The tool with its mean difference: {@code T-2: mean 007.9, 95 % within 0.8, spread 1.2, of 12, 1 blunder}. */
    @Override
    public String toString() {
        return name + ": " + differences()
                + (blunders.isEmpty()
                        ? ""
                        : ", " + blunders.size() + (blunders.size() == 1 ? " blunder" : " blunders"));
    }
}
