package io.github.kernlot.survey.picture;

import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.MarkPosterior.Verdict;
import io.github.kernlot.survey.hole.OrientedHole;
import io.github.kernlot.survey.hole.OrientedStructure;
import java.util.List;

/** The legend of the picture of a reference line, with counts; what does not occur is left out. */
final class LineLegend {

    private static final double STEP = 23;

    private final Svg svg;
    private final double x;
    private double y;

    private LineLegend(Svg svg, Point place) {
        this.svg = svg;
        this.x = place.x();
        this.y = place.y();
    }

    static void draw(Svg svg, Point place, OrientedHole hole, LineCourse course) {
        new LineLegend(svg, place).draw(hole, course);
    }

    private void draw(OrientedHole hole, LineCourse course) {
        heading(hole.line().marks().isEmpty() ? "no marks" : "marks");
        for (Verdict verdict : Verdict.values()) {
            long count = hole.line().marks().stream()
                    .filter(mark -> mark.verdict() == verdict)
                    .count();
            if (count > 0) {
                svg.open("g", LineStrip.glyph(verdict).attributes(LineStrip.colour(verdict)));
                svg.element("path", "d", LineStrip.glyph(verdict).path(x + 11, y - 4, 4.6));
                svg.close();
                row(LineStrip.text(verdict) + " " + count);
            }
        }
        space();
        if (!course.bands().isEmpty()) {
            line();
        }
        space();
        joins(hole, JoinFit.BROKEN, "broken joins", Ink.RUST, "none", "1.4");
        joins(hole, JoinFit.DOUBTFUL, "doubtful joins", Ink.PENCIL, "2 5", "1");
        space();
        long oriented =
                hole.structures().stream().filter(OrientedStructure::isOriented).count();
        long unoriented = hole.structures().size() - oriented;
        heading(hole.structures().isEmpty() ? "no structures" : "structures");
        if (oriented > 0) {
            svg.line(x, y - 4, x + 16, y - 4, "stroke", Ink.INK);
            row("oriented " + oriented);
        }
        if (unoriented > 0) {
            svg.line(x, y - 4, x + 8, y - 4, "stroke", Ink.RUST);
            row("unoriented " + unoriented);
        }
        if (course.scribeTurns().stream().anyMatch(piece -> piece.size() > 1)) {
            space();
            svg.line(x, y - 4, x + 22, y - 4, "stroke", Ink.TEAL, "stroke-width", "1.6");
            row("turn of a straight");
            y -= 6;
            row("scribe from low side");
        }
    }

    private void line() {
        svg.element(
                "rect", "x", Svg.number(x), "y", Svg.number(y - 11), "width", "22", "height", "14", "fill", Ink.HAZE);
        svg.line(x + 11, y - 11, x + 11, y + 3, "stroke", Ink.INDIGO, "stroke-width", "1.6");
        row("line, 95 % interval");
    }

    private void joins(OrientedHole hole, JoinFit fit, String name, String colour, String dashes, String width) {
        long count = hole.log().joins().orElse(List.of()).stream()
                .filter(join -> join.fit() == fit)
                .count();
        if (count > 0) {
            svg.line(x, y - 4, x + 22, y - 4, "stroke", colour, "stroke-dasharray", dashes, "stroke-width", width);
            row(name + " " + count);
        }
    }

    private void heading(String words) {
        svg.text(x, y, words, "font-style", "italic", "fill", Ink.SOFT);
        y += STEP;
    }

    private void row(String words) {
        svg.text(x + 30, y, words);
        y += STEP;
    }

    private void space() {
        y += 10;
    }
}
