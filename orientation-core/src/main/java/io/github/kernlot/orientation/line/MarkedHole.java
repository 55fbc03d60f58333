package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.HolePath;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A hole with its marks and joins.
 *
 * @param path the path of the hole
 * @param marks the marks in any order
 * @param joins all joins that are not perfect, in any order; without one all core fits
 * @param drawn where the line was drawn: it wanders there alone
 */
public record MarkedHole(HolePath path, List<OrientationMark> marks, List<Join> joins, DrawnLines drawn) {

    /** Copies the lists. */
    public MarkedHole {
        marks = List.copyOf(marks);
        joins = List.copyOf(joins);
    }

    /**
     * A hole whose joins were recorded, with a line drawn everywhere.
     *
     * @param path the path of the hole
     * @param marks the marks in any order
     * @param joins all joins that are not perfect, in any order; without one all core fits
     * @return the hole
     */
    public static MarkedHole of(HolePath path, List<OrientationMark> marks, List<Join> joins) {
        return new MarkedHole(path, marks, joins, DrawnLines.everywhere());
    }

    /**
     * A hole of which nobody has said how the runs fit: the depth of every used mark is taken as a doubtful
     * join. Its line was drawn everywhere.
     *
     * @param path the path of the hole
     * @param marks the marks in any order
     * @return the hole
     */
    public static MarkedHole of(HolePath path, List<OrientationMark> marks) {
        return of(
                path,
                marks,
                marks.stream()
                        .filter(mark -> mark.leftOut().isEmpty())
                        .map(OrientationMark::depth)
                        .distinct()
                        .map(depth -> new Join(depth, JoinFit.DOUBTFUL))
                        .toList());
    }

    /**
     * The pieces of core that broken joins divide the hole into; what lies at a broken join belongs to the piece above it.
     *
     * @return the pieces from the collar on, with a doubtful join for each gap in the drawn line; a piece may have no mark
     */
    public List<CorePiece> pieces() {
        List<Join> all = drawn.withGaps(joins);
        Breaks breaks = new Breaks(all);
        List<List<OrientationMark>> marked = breaks.divide(marks, OrientationMark::depth);
        List<List<Join>> whole = breaks.divide(
                all.stream().filter(join -> join.fit() != JoinFit.BROKEN).toList(), Join::depth);
        return IntStream.range(0, marked.size())
                .mapToObj(piece -> new CorePiece(marked.get(piece), whole.get(piece)))
                .toList();
    }

    /**
     * The same hole, of which one knows where the line was drawn.
     *
     * @param lines where the line was drawn
     * @return the hole
     */
    public MarkedHole withDrawn(DrawnLines lines) {
        return new MarkedHole(path, marks, joins, lines);
    }
}
