package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.survey.HoleTrace;
import java.util.List;
import java.util.Optional;

/**
 * What was recorded of one hole.
 *
 * @param id the hole's name
 * @param trace the path of the hole
 * @param marks the orientation marks, in any order
 * @param joins the joins between pieces of core, in any order; empty where nobody recorded how the pieces fit, which is not the
 *     same as an empty list, with which all core fits
 * @param structures the structures, in the order in which they are to be reported
 */
public record HoleLog(
        String id,
        HoleTrace trace,
        List<OrientationMark> marks,
        Optional<List<Join>> joins,
        List<Structure> structures) {

    /** Copies the lists. */
    public HoleLog {
        marks = List.copyOf(marks);
        joins = joins.map(List::copyOf);
        structures = List.copyOf(structures);
    }
}
