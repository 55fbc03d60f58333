package io.github.kernlot.orientation.line.runs;

import io.github.kernlot.orientation.line.MarkBlunders;
import io.github.kernlot.orientation.line.OrientationMark;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A mark that a run log made the more probably wrong.
 *
 * @param mark the mark with its new priors
 * @param before the priors that it had
 * @param findings why they were changed, at least one
 */
public record PriorChange(OrientationMark mark, MarkBlunders before, List<RunFinding> findings) {

    /** The change in one line: {@code mark at 27.30 m, offset 338.0: prior of a wrong mark 0.05 raised to 0.15 because ...}. */
    @Override
    public String toString() {
        double after = mark.blunders().orElse(before).wrong();
        String why = findings.stream().map(RunFinding::text).collect(Collectors.joining("; "));
        return String.format(
                Locale.ROOT,
                "%s: prior of a wrong mark %.3g raised to %.3g because of %s",
                mark,
                before.wrong(),
                after,
                why);
    }
}
