package io.github.kernlot.orientation.line.runs;

import io.github.kernlot.orientation.line.OrientationMark;
import java.util.List;

/**
 * The marks of a hole as its run log leaves them.
 *
 * @param findings what the log says against its runs and against marks, in the order of depth
 * @param marks the marks in the order in which they were given, some with priors of their own
 * @param changes each mark whose priors were changed
 */
public record RunReview(List<RunFinding> findings, List<OrientationMark> marks, List<PriorChange> changes) {

    /** How many there are: {@code 5 findings, priors of 3 of 38 marks changed}. */
    @Override
    public String toString() {
        return findings.size() + " findings, priors of " + changes.size() + " of " + marks.size() + " marks changed";
    }
}
