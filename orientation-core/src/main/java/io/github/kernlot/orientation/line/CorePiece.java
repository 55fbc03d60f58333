package io.github.kernlot.orientation.line;

import java.util.Comparator;
import java.util.List;

/**
 * A piece of core that no broken join divides: one line, if a mark anchors it.
 *
 * @param marks the marks on it, in the order of depth
 * @param joins its locked and doubtful joins, in the order of depth
 */
public record CorePiece(List<OrientationMark> marks, List<Join> joins) {

    /** Sorts both by depth. */
    public CorePiece {
        marks = marks.stream()
                .sorted(Comparator.comparingDouble(OrientationMark::depth))
                .toList();
        joins = joins.stream().sorted(Comparator.comparingDouble(Join::depth)).toList();
    }
}
