package io.github.kernlot.orientation.line.runs;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.line.LogTime;
import io.github.kernlot.orientation.line.MarkBlunders;
import io.github.kernlot.orientation.line.MarkSource;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.runs.RunFinding.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The runs of one hole, and what in their log speaks against the marks made in them. What nobody noted raises no finding.
 *
 * @param runs the runs, in the order of depth
 * @param tolerance by how much depths and lengths of core may differ and still agree, metres, 0 or more
 */
public record RunLog(List<CoreRun> runs, double tolerance) {

    /** Assumed, and not measured. */
    private static final double ASSUMED_TOLERANCE = 0.1;

    /**
     * Sorts the runs.
     *
     * @throws IllegalArgumentException if the tolerance is negative or not finite, or some runs have times with an offset from UTC
     *     and some without
     */
    public RunLog {
        tolerance = Require.notNegative("tolerance of the run log", tolerance, "m");
        runs = runs.stream()
                .sorted(Comparator.comparingDouble(CoreRun::from).thenComparingDouble(CoreRun::to))
                .toList();
        List<LogTime> times =
                runs.stream().map(CoreRun::anyTime).flatMap(Optional::stream).toList();
        for (LogTime time : times) {
            times.get(0).until(time);
        }
    }

    /**
     * A log with a tolerance of 0.1 m, which is assumed.
     *
     * @param runs the runs in any order
     * @return the log
     * @throws IllegalArgumentException if some runs have times with an offset from UTC and some without
     */
    public static RunLog of(List<CoreRun> runs) {
        return new RunLog(runs, ASSUMED_TOLERANCE);
    }

    /**
     * The run that a mark was made in: a mark at the end of one run and the beginning of the next belongs to the upper, at whose end
     * the tool was read.
     *
     * @param depth metres along the hole
     * @return the run; empty where there is none within the tolerance
     */
    public Optional<CoreRun> at(double depth) {
        return runs.stream()
                .filter(run -> depth >= run.from() && depth <= run.to())
                .findFirst()
                .or(() -> runs.stream()
                        .filter(run -> depth >= run.from() - tolerance && depth <= run.to() + tolerance)
                        .findFirst());
    }

    /**
     * What the log says against its runs.
     *
     * @return the findings in the order of depth, each at its run's end
     */
    public List<RunFinding> findings() {
        List<RunFinding> findings = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            findings.addAll(findings(i));
        }
        return findings;
    }

    private List<RunFinding> findings(int index) {
        CoreRun run = runs.get(index);
        List<RunFinding> findings = new ArrayList<>();
        readAndMarked(run, findings);
        prepared(index, findings);
        advance(index, findings);
        recovery(run, findings);
        return findings;
    }

    private static void add(CoreRun run, Kind kind, String text, List<RunFinding> findings) {
        findings.add(new RunFinding(Math.max(run.from(), run.to()), kind, run + ": " + text));
    }

    private static boolean inOrder(Optional<LogTime> first, Optional<LogTime> second) {
        return first.isEmpty() || second.isEmpty() || !second.get().isBefore(first.get());
    }

    private static String time(Optional<LogTime> time) {
        return time.map(LogTime::toString).orElse("");
    }

    private static void readAndMarked(CoreRun run, List<RunFinding> findings) {
        if (!inOrder(run.rodsStill(), run.read())) {
            String what = "read at " + time(run.read()) + " before the rods were still at " + time(run.rodsStill());
            add(run, Kind.READ_WHILE_TURNING, what, findings);
        }
        if (run.tool().isPresent() && run.readTool().isPresent() && !run.tool().equals(run.readTool())) {
            String what = "tool " + run.tool().get() + " was run and tool "
                    + run.readTool().get() + " was read";
            add(run, Kind.OTHER_TOOL, what, findings);
        }
        if (!inOrder(run.read(), run.marked())) {
            String what = "marked at " + time(run.marked()) + " before the tool was read at " + time(run.read());
            add(run, Kind.MARKED_BEFORE_READ, what, findings);
        }
    }

    private void prepared(int index, List<RunFinding> findings) {
        CoreRun run = runs.get(index);
        if (!inOrder(run.prepared(), run.read())) {
            String what =
                    "the tool was prepared at " + time(run.prepared()) + " after it was read at " + time(run.read());
            add(run, Kind.NOT_PREPARED, what, findings);
            return;
        }
        Optional<CoreRun> last = lastRunOfTool(index);
        Optional<LogTime> lastRead = last.flatMap(CoreRun::read);
        boolean again = last.flatMap(CoreRun::prepared)
                .filter(time -> run.prepared().filter(time::equals).isPresent())
                .isPresent();
        if (again || !inOrder(lastRead, run.prepared())) {
            String what = "the tool was not prepared since the "
                    + last.map(CoreRun::toString).orElse("") + ", but at " + time(run.prepared());
            add(run, Kind.NOT_PREPARED, what, findings);
        }
    }

    /** The run above in which the same tool was run, as far as is known; runs whose tool nobody noted may have had several. */
    private Optional<CoreRun> lastRunOfTool(int index) {
        Optional<String> tool = runs.get(index).tool();
        for (int i = index - 1; i >= 0; i--) {
            if (tool.isPresent() && runs.get(i).tool().equals(tool)) {
                return Optional.of(runs.get(i));
            }
        }
        return Optional.empty();
    }

    private void advance(int index, List<RunFinding> findings) {
        CoreRun run = runs.get(index);
        if (!(run.length() > 0)) {
            add(run, Kind.NO_ADVANCE, "the run does not advance the hole", findings);
        }
        if (index == 0) {
            return;
        }
        CoreRun above = runs.get(index - 1);
        if (run.from() < above.to() - tolerance) {
            add(run, Kind.OVERLAP, "begins above the end of the " + above, findings);
        }
        if (!inOrder(above.read(), run.read())) {
            String what = "read at " + time(run.read()) + ", before the " + above + " at " + time(above.read());
            add(run, Kind.NO_ADVANCE, what, findings);
        }
    }

    private void recovery(CoreRun run, List<RunFinding> findings) {
        if (run.recovered().isEmpty() || !(run.length() > 0)) {
            return;
        }
        double recovered = run.recovered().getAsDouble();
        double share = 100 * recovered / run.length();
        String what = String.format(
                Locale.ROOT, "%.2f m of core from %.2f m drilled (%.0f %%)", recovered, run.length(), share);
        if (recovered < run.length() - tolerance) {
            double lost = run.length() - recovered;
            String uncertain = String.format(Locale.ROOT, "; depths in it are uncertain by %.2f m", lost);
            add(run, Kind.CORE_LOSS, what + uncertain, findings);
        } else if (recovered > run.length() + tolerance) {
            add(run, Kind.CORE_GAIN, what + "; the depth is wrong or core of another run came up", findings);
        }
    }

    /**
     * The marks of the hole with what the log says against them: a mark whose run has a finding, that lies in no run, or that names
     * another tool than its run, is the more probably wrong. The prior of wrong is multiplied once, however many findings there are.
     * A mark that names no tool takes that of its run; one that was left out keeps its priors.
     *
     * @param marks the marks of the hole
     * @param blunders the priors of marks that have none of their own
     * @param factor how many times as often a mark with a finding is wrong, 1 or more; 3 is assumed, and not measured
     * @return the findings, and the marks with their priors
     * @throws IllegalArgumentException if the factor is not a finite number, 1 or above
     */
    public RunReview review(List<OrientationMark> marks, MarkBlunders blunders, double factor) {
        Require.inRange("factor on the prior of a wrong mark", factor, 1, Double.MAX_VALUE, "");
        List<RunFinding> all = new ArrayList<>(findings());
        List<OrientationMark> reviewed = new ArrayList<>();
        List<PriorChange> changes = new ArrayList<>();
        for (OrientationMark mark : marks) {
            Optional<CoreRun> run = at(mark.depth());
            List<RunFinding> ofMark = ofMark(mark, run);
            all.addAll(ofMark);
            List<RunFinding> own = new ArrayList<>(ofMark);
            run.ifPresent(found -> own.addAll(findings(runs.indexOf(found))));
            OrientationMark known = run.map(found -> withTool(mark, found)).orElse(mark);
            MarkBlunders before = mark.blunders().orElse(blunders);
            MarkBlunders after = own.isEmpty() ? before : before.withWrongTimes(factor);
            if (after.equals(before) || mark.leftOut().isPresent()) {
                reviewed.add(known);
            } else {
                OrientationMark changed = known.withBlunders(after);
                reviewed.add(changed);
                changes.add(new PriorChange(changed, before, List.copyOf(own)));
            }
        }
        all.sort(Comparator.comparingDouble(RunFinding::depth));
        return new RunReview(List.copyOf(all), List.copyOf(reviewed), List.copyOf(changes));
    }

    private static List<RunFinding> ofMark(OrientationMark mark, Optional<CoreRun> run) {
        if (run.isEmpty()) {
            return List.of(new RunFinding(mark.depth(), Kind.NO_RUN, mark + " lies in no run of the log"));
        }
        Optional<String> tool = run.get().readTool().or(run.get()::tool);
        Optional<String> named = mark.source().tool();
        return tool.isEmpty() || named.isEmpty() || tool.equals(named)
                ? List.of()
                : List.of(new RunFinding(
                        mark.depth(),
                        Kind.OTHER_TOOL,
                        mark + " names tool " + named.get() + " and its run tool " + tool.get()));
    }

    private static OrientationMark withTool(OrientationMark mark, CoreRun run) {
        MarkSource source = mark.source();
        Optional<String> tool = source.tool().or(run::readTool).or(run::tool);
        return mark.withSource(new MarkSource(tool, source.crew(), source.grade()));
    }
}
