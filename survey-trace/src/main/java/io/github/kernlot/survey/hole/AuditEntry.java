package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.line.BlunderRate;
import io.github.kernlot.orientation.line.CheckedTool;
import io.github.kernlot.orientation.line.GroupBias;
import io.github.kernlot.orientation.line.MarkAudit;
import io.github.kernlot.orientation.line.MarkGroup;
import io.github.kernlot.orientation.line.MarkKey;
import io.github.kernlot.orientation.line.ToolCheck;
import io.github.kernlot.orientation.sphere.CircularSample;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an audit says of one group of marks, or of one tool that was checked.
 *
 * @param kind by what the group was made: {@code tool}, {@code crew} or {@code grade} of marks, {@code check} for a tool in its cradle
 * @param group the name of the group
 * @param count how many marks or checks it has
 * @param residuals of the marks that are most probably sound, or of the checks that are no blunders, in degrees
 * @param bias by how much the group reads too much: marks against all others of the same cores, checks against the cradle
 * @param blunders how often a mark or check is one
 * @param logMirrorOdds the logarithm of the odds that the group's marks were read looking the other way; empty for checks
 */
public record AuditEntry(
        String kind,
        String group,
        int count,
        Optional<CircularSample> residuals,
        Optional<GroupBias> bias,
        Optional<BlunderRate> blunders,
        OptionalDouble logMirrorOdds) {

    /**
     * The audit of a job: its marks by tool, by crew and by grade, where those are known, and its tools by their checks.
     *
     * @param holes the holes
     * @param checks the checks of tools
     * @return the entries in this order, groups by name; none where nobody noted who made the marks and no tool was checked
     * @throws IllegalArgumentException if of two checks of a tool only one has an offset from UTC
     */
    public static List<AuditEntry> all(List<OrientedHole> holes, List<ToolCheck> checks) {
        MarkAudit audit = MarkAudit.of(holes.stream().map(OrientedHole::line).toList());
        List<AuditEntry> entries = new ArrayList<>();
        audit.by(MarkKey.tool()).forEach(group -> entries.add(of("tool", group)));
        audit.by(MarkKey.crew()).forEach(group -> entries.add(of("crew", group)));
        audit.by(MarkKey.grade()).forEach(group -> entries.add(of("grade", group)));
        CheckedTool.of(checks).forEach(tool -> entries.add(of(tool)));
        return List.copyOf(entries);
    }

    private static AuditEntry of(String kind, MarkGroup group) {
        return new AuditEntry(
                kind,
                group.name(),
                group.marks(),
                group.residuals(),
                group.bias(),
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
                Optional.of(tool.blunderRate()),
                OptionalDouble.empty());
    }
}
