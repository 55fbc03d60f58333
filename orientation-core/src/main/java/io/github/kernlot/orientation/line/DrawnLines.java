package io.github.kernlot.orientation.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where in a hole the reference line was drawn, and so where core is oriented.
 *
 * <p>Two intervals that share an end are one line. Where the line stops and goes on later, nothing was drawn that could wander, and
 * nothing shows either that the second line is the first: on core that is not broken between them it was sighted across the gap,
 * which is taken as one doubtful join at the gap's upper end. Whoever began a new line says so by a broken join.
 */
public final class DrawnLines {

    private final Optional<List<DrawnLine>> lines;
    private final double[] from;
    private final double[] drawnAbove;

    private DrawnLines(Optional<List<DrawnLine>> lines) {
        this.lines = lines;
        List<DrawnLine> known = lines.orElse(List.of());
        from = known.stream().mapToDouble(DrawnLine::from).toArray();
        drawnAbove = new double[from.length + 1];
        for (int i = 0; i < from.length; i++) {
            drawnAbove[i + 1] = drawnAbove[i] + known.get(i).to() - from[i];
        }
    }

    /**
     * Nobody recorded where the line was drawn: it was drawn everywhere, with its arrows down-hole.
     *
     * @return the line of a whole hole
     */
    public static DrawnLines everywhere() {
        return new DrawnLines(Optional.empty());
    }

    /**
     * The line was drawn on some intervals, and nowhere else.
     *
     * @param lines the intervals in any order; with none, nothing is oriented
     * @return the lines
     * @throws IllegalArgumentException if two of them overlap by more than a shared end
     */
    public static DrawnLines of(List<DrawnLine> lines) {
        List<DrawnLine> sorted = lines.stream()
                .sorted(Comparator.comparingDouble(DrawnLine::from))
                .toList();
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).from() < sorted.get(i - 1).to()) {
                throw new IllegalArgumentException(
                        sorted.get(i) + " overlaps " + sorted.get(i - 1) + "; expected lines that do not");
            }
        }
        return new DrawnLines(Optional.of(sorted));
    }

    /**
     * The intervals, where they were recorded.
     *
     * @return the lines in the order of depth; empty where nobody recorded them
     */
    public Optional<List<DrawnLine>> recorded() {
        return lines;
    }

    /**
     * The recorded line at a depth.
     *
     * @param depth metres along the hole
     * @return the line, at a shared end the one on the collar side; empty where none was recorded
     */
    public Optional<DrawnLine> at(double depth) {
        int index = begunAbove(depth) - 1;
        if (index >= 0 && depth <= line(index).to()) {
            return Optional.of(line(index));
        }
        return index + 1 < from.length && from[index + 1] == depth ? Optional.of(line(index + 1)) : Optional.empty();
    }

    private DrawnLine line(int index) {
        return lines.orElse(List.of()).get(index);
    }

    /** How many lines begin above a depth. */
    private int begunAbove(double depth) {
        int found = Arrays.binarySearch(from, depth);
        return found >= 0 ? found : -found - 1;
    }

    /**
     * Whether there is a line at a depth.
     *
     * @param depth metres along the hole
     * @return true everywhere where nobody recorded the lines
     */
    public boolean isDrawnAt(double depth) {
        return lines.isEmpty() || at(depth).isPresent();
    }

    /**
     * The metres drawn between two depths.
     *
     * @param from metres along the hole
     * @param to metres along the hole, {@code from} or more
     * @return metres, 0 or more
     * @throws IllegalArgumentException if {@code to} is less than {@code from}
     */
    public double length(double from, double to) {
        if (!(from <= to)) {
            throw new IllegalArgumentException("from is " + from + " m and to is " + to + " m; expected from <= to");
        }
        return lines.isEmpty() ? to - from : drawnAbove(to) - drawnAbove(from);
    }

    private double drawnAbove(double depth) {
        int begun = begunAbove(depth);
        return begun == 0
                ? 0
                : drawnAbove[begun - 1] + Math.min(depth, line(begun - 1).to()) - from[begun - 1];
    }

    /**
     * A mark as one reads it who looks down-hole. Round a line whose arrows point up-hole the reader looked along them, whatever way
     * the hole goes, and its offset is 360 minus what was read.
     *
     * @param read the mark as it was read
     * @return the same mark, mirrored where the arrows of its line point up-hole
     */
    public OrientationMark lookingDownHole(OrientationMark read) {
        boolean up = at(read.depth())
                .filter(line -> line.arrow() == DrawnLine.Arrow.UP_HOLE)
                .isPresent();
        return up ? read.mirrored() : read;
    }

    /** The joins, and a doubtful one for each gap between lines that no broken join lies in. */
    List<Join> withGaps(List<Join> joins) {
        List<Join> all = new ArrayList<>(joins);
        for (int i = 1; i < from.length; i++) {
            double start = line(i - 1).to();
            double end = from[i];
            boolean broken = joins.stream()
                    .anyMatch(join -> join.fit() == JoinFit.BROKEN && join.depth() >= start && join.depth() <= end);
            if (end > start && !broken) {
                all.add(new Join(start, JoinFit.DOUBTFUL));
            }
        }
        return all;
    }

    /** The recorded lines, or that the line goes everywhere. */
    @Override
    public String toString() {
        return lines.map(List::toString).orElse("line everywhere");
    }
}
