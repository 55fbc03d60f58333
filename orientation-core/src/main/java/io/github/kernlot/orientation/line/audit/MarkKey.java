package io.github.kernlot.orientation.line.audit;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.ReferenceLine;
import java.util.Locale;
import java.util.Optional;

/** By what marks are put into groups. */
@FunctionalInterface
public interface MarkKey {

    /**
     * The group of a mark.
     *
     * @param line the reference line of the mark's hole
     * @param mark the mark
     * @return the name of its group; empty for a mark that belongs to none
     */
    Optional<String> of(ReferenceLine line, OrientationMark mark);

    /**
     * By the tool that found the side.
     *
     * @return the key
     */
    static MarkKey tool() {
        return (line, mark) -> mark.source().tool();
    }

    /**
     * By who drilled and marked.
     *
     * @return the key
     */
    static MarkKey crew() {
        return (line, mark) -> mark.source().crew();
    }

    /**
     * By the grade in the log.
     *
     * @return the key
     */
    static MarkKey grade() {
        return (line, mark) -> mark.source().grade();
    }

    /**
     * By classes of depth.
     *
     * @param metres the width of a class, above 0
     * @return the key; a class is named {@code 100 to 200 m}
     * @throws IllegalArgumentException if the width is not a finite number above 0
     */
    static MarkKey depthClass(double metres) {
        double width = Require.positive("width of a depth class", metres, "m");
        return (line, mark) -> {
            double from = Math.floor(mark.depth() / width) * width;
            return Optional.of(String.format(Locale.ROOT, "%.0f to %.0f m", from, from + width));
        };
    }
}
