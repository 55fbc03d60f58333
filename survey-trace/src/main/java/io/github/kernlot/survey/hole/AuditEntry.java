package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.ReferenceLine;
import io.github.kernlot.orientation.line.audit.BlunderRate;
import io.github.kernlot.orientation.line.audit.CheckedTool;
import io.github.kernlot.orientation.line.audit.GroupBias;
import io.github.kernlot.orientation.line.audit.MarkAudit;
import io.github.kernlot.orientation.line.audit.MarkGroup;
import io.github.kernlot.orientation.line.audit.MarkKey;
import io.github.kernlot.orientation.line.audit.ToolCheck;
import io.github.kernlot.orientation.sphere.CircularSample;
import io.github.kernlot.orientation.sphere.CircularTrend;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an audit says of one group of marks, or of one tool that was checked.
 *
 * @param kind by what the group was made: {@code tool}, {@code crew}, {@code grade}, {@code shift}, {@code hole} or {@code depth} of marks, {@code check} for a tool in its cradle
 * @param group the name of the group
 * @param count how many marks or checks it has
 * @param residuals of the marks that are most probably sound, or of the checks that are no blunders, in degrees
 * @param bias by how much the group reads too much: marks against all others of the same cores, checks against the cradle
 * @param trend how the residuals turn with depth, degrees per metre; empty for checks and for too few marks
 * @param blunders how often a mark or check is one
 * @param logMirrorOdds the logarithm of the odds that the group's marks were read looking the other way; empty for checks
 */
public record AuditEntry(
        String kind,
        String group,
        int count,
        Optional<CircularSample> residuals,
        Optional<GroupBias> bias,
        Optional<CircularTrend> trend,
        Optional<BlunderRate> blunders,
        OptionalDouble logMirrorOdds) {

    /** The width of the classes of depth, metres. */
    private static final double DEPTH_CLASS = 100;

    /**
     * The audit of a job: its marks by tool, by crew, by grade and by shift, where those are known, then by hole and by depth, and its
     * tools by their checks. A shift is told from the time at which the run log has the core marked, or else the tool read: day from 6
     * to 18 o'clock, night else (common practice, no source).
     *
     * @param holes the holes
     * @param checks the checks of tools
     * @return the entries in this order, groups by name; none where nobody noted who made the marks and no tool was checked
     * @throws IllegalArgumentException if of two checks of a tool only one has an offset from UTC
     */
    public static List<AuditEntry> all(List<OrientedHole> holes, List<ToolCheck> checks) {
        Map<ReferenceLine, OrientedHole> byLine = new HashMap<>();
        holes.forEach(hole -> byLine.put(hole.line(), hole));
        MarkAudit audit = MarkAudit.of(holes.stream().map(OrientedHole::line).toList());
        List<AuditEntry> entries = new ArrayList<>();
        audit.by(MarkKey.tool()).forEach(group -> entries.add(of("tool", group)));
        audit.by(MarkKey.crew()).forEach(group -> entries.add(of("crew", group)));
        audit.by(MarkKey.grade()).forEach(group -> entries.add(of("grade", group)));
        audit.by((line, mark) -> Optional.ofNullable(byLine.get(line)).flatMap(hole -> shift(hole, mark)))
                .forEach(group -> entries.add(of("shift", group)));
        if (!entries.isEmpty() && holes.size() > 1) {
            audit.by((line, mark) -> Optional.ofNullable(byLine.get(line))
                            .map(hole -> hole.log().id()))
                    .forEach(group -> entries.add(of("hole", group)));
        }
        if (!entries.isEmpty()) {
            audit.by(MarkKey.depthClass(DEPTH_CLASS)).forEach(group -> entries.add(of("depth", group)));
        }
        CheckedTool.of(checks).forEach(tool -> entries.add(of(tool)));
        return List.copyOf(entries);
    }

    private static Optional<String> shift(OrientedHole hole, OrientationMark mark) {
        return hole.log()
                .runs()
                .flatMap(runs -> runs.at(mark.depth()))
                .flatMap(run -> run.marked().or(run::read))
                .map(time -> time.clock().getHour() >= 6 && time.clock().getHour() < 18 ? "day" : "night");
    }

    private static AuditEntry of(String kind, MarkGroup group) {
        return new AuditEntry(
                kind,
                group.name(),
                group.marks(),
                group.residuals(),
                group.bias(),
                group.trend(),
                group.blunders(),
                OptionalDouble.of(group.logMirrorOdds()));
    }

    private static AuditEntry of(CheckedTool tool) {
        return new AuditEntry(
                "check",
                tool.name(),
                tool.sound().size() + tool.blunders().size(),
                Optional.of(tool.differences()),
                tool.bias(),
                Optional.empty(),
                Optional.of(tool.blunderRate()),
                OptionalDouble.empty());
    }
}
