package io.github.kernlot.survey.picture;

import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.MarkPosterior;
import io.github.kernlot.orientation.line.MarkPosterior.Verdict;
import io.github.kernlot.survey.hole.OrientedHole;
import io.github.kernlot.survey.hole.OrientedStructure;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The reference line of one hole down its depth: where each mark puts it, by verdict, the line with its 95 % interval to either
 * side, joins that are broken or doubtful, the structures at the margin, and beside it the turn of a straight scribe from the low
 * side. Where the hole is vertical there is no low side, and that is written there.
 */
public final class LineStrip {

    private static final double TOP = 122;
    private static final double HEIGHT = 620;
    private static final double LEFT = 96;
    /** Room for a sign that stands on the edge of the axis. */
    private static final double EDGE = 7;

    private static final double ANGLE_WIDTH = 400 + 2 * EDGE;
    private static final double STRUCTURES = LEFT + ANGLE_WIDTH + 12;
    private static final double TURN_LEFT = STRUCTURES + 44;
    private static final double TURN_WIDTH = 120;
    private static final double LEGEND = TURN_LEFT + TURN_WIDTH + 36;
    private static final double WIDTH = LEGEND + 190;
    private static final int MOST_MARKS = 1200;

    private final OrientedHole hole;
    private final LineCourse course;
    private final AngleAxis axis;
    private final Svg svg;
    private final List<String> caption;

    private LineStrip(OrientedHole hole) {
        this.hole = hole;
        this.course = new LineCourse(hole);
        this.axis = new AngleAxis(LEFT + EDGE, ANGLE_WIDTH - 2 * EDGE, 15 * Math.rint(course.middle() / 15));
        this.caption = Svg.lines(caption(), WIDTH);
        this.svg = new Svg(
                WIDTH,
                TOP + HEIGHT + 68 + Svg.LEADING * caption.size(),
                Holes.title("Reference line", List.of(hole)),
                String.join(" ", caption));
    }

    /**
     * The line of a hole.
     *
     * @param hole the hole
     * @return the picture
     */
    public static Picture of(OrientedHole hole) {
        return new LineStrip(hole).draw();
    }

    private List<String> caption() {
        List<String> lines = new ArrayList<>();
        lines.add("Across: where the drawn line lies, degrees clockwise from " + course.reference()
                + " looking down-hole. Down: metres along the hole.");
        lines.add("A sign is where one mark puts the line, its whisker the mark's sigma.");
        lines.add("The band is the 95 % interval, with the bias that all marks share and without the survey's errors.");
        lines.add(
                hole.log().joins().isEmpty()
                        ? "No joins were recorded: the depth of every mark in use is taken as a doubtful join."
                        : "Where there is no band, the line is not known well enough to orient structures.");
        return lines;
    }

    private Picture draw() {
        drawDepths();
        drawAngles();
        drawSideless(course.sideless(course.reference()), LEFT, ANGLE_WIDTH, "vertical: no " + course.reference());
        drawBands();
        drawJoins();
        drawMarks();
        drawStructures();
        drawTurn();
        drawLegend();
        svg.caption(TOP + HEIGHT + 60, caption);
        return svg.finish();
    }

    private double y(double depth) {
        return TOP + HEIGHT * depth / Math.max(course.end(), 0.1);
    }

    private void frame(double left, double width, String fill) {
        svg.element(
                "rect",
                "x",
                Svg.number(left),
                "y",
                Svg.number(TOP),
                "width",
                Svg.number(width),
                "height",
                Svg.number(HEIGHT),
                "fill",
                fill,
                "stroke",
                fill.equals("none") ? Ink.PENCIL : "none");
    }

    private void drawDepths() {
        frame(LEFT, ANGLE_WIDTH, "#FFFFFF");
        frame(TURN_LEFT, TURN_WIDTH, "#FFFFFF");
        svg.text(LEFT - 10, TOP + HEIGHT + 24, "depth, m", "font-size", "12", "text-anchor", "end");
        for (BigDecimal depth :
                Ticks.between(0, Math.max(course.end(), 0.1), 14).values()) {
            double place = y(depth.doubleValue());
            svg.line(LEFT, place, LEFT + ANGLE_WIDTH, place, "stroke", Ink.GRID);
            svg.line(TURN_LEFT, place, TURN_LEFT + TURN_WIDTH, place, "stroke", Ink.GRID);
            svg.text(
                    LEFT - 10, place + 4, Ticks.text(depth), "font-size", "11", "text-anchor", "end", "fill", Ink.SOFT);
        }
    }

    private void drawAngles() {
        svg.open("g", "font-size", "11", "text-anchor", "middle", "fill", Ink.SOFT);
        for (double angle = 0; angle < 360; angle += 45) {
            double x = axis.at(angle);
            drawAngle(angle, x);
            if (x == axis.left()) {
                drawAngle(angle, axis.right());
            }
        }
        svg.close();
        svg.text(
                LEFT + ANGLE_WIDTH / 2,
                TOP + HEIGHT + 24,
                "line angle from " + course.reference() + ", degrees",
                "font-size",
                "12",
                "text-anchor",
                "middle");
        frame(LEFT, ANGLE_WIDTH, "none");
    }

    private void drawAngle(double angle, double x) {
        svg.line(x, TOP, x, TOP + HEIGHT, "stroke", Ink.GRID);
        svg.text(x, TOP - 8, Svg.number(angle));
        boolean fromLowSide = course.reference().equals(WallReference.lowSide());
        if (angle == 0) {
            svg.text(x, TOP - 22, course.reference().toString(), "font-style", "italic");
        } else if (angle == 180 && fromLowSide) {
            svg.text(x, TOP - 22, "high side", "font-style", "italic");
        }
    }

    private void drawSideless(List<LineCourse.Stretch> stretches, double left, double width, String words) {
        for (LineCourse.Stretch stretch : stretches) {
            double top = y(stretch.from());
            double height = y(stretch.to()) - top;
            svg.element(
                    "rect",
                    "x",
                    Svg.number(left),
                    "y",
                    Svg.number(top),
                    "width",
                    Svg.number(width),
                    "height",
                    Svg.number(height),
                    "fill",
                    Ink.SHADE);
            if (height > 12) {
                svg.text(
                        left + width / 2,
                        top + height / 2 + 4,
                        words,
                        "text-anchor",
                        "middle",
                        "font-style",
                        "italic",
                        "font-size",
                        "12",
                        "fill",
                        Ink.SOFT);
            }
        }
    }

    private void drawBands() {
        List<AngleAxis.Band> bands =
                course.bands().stream().map(this::inPicture).toList();
        svg.open("g", "class", "band", "fill", Ink.HAZE, "stroke", "none");
        bands.forEach(band ->
                axis.outlines(band).forEach(outline -> svg.element("path", "d", Svg.through(outline) + "z")));
        svg.close();
        svg.open("g", "class", "line", "fill", "none", "stroke", Ink.INDIGO, "stroke-width", "1.6");
        bands.forEach(band -> axis.curves(band).forEach(svg::polyline));
        svg.close();
    }

    private AngleAxis.Band inPicture(AngleAxis.Band band) {
        return new AngleAxis.Band(band.y().stream().map(this::y).toList(), band.angle(), band.half());
    }

    private void drawJoins() {
        for (Join join : apart(course.joins(JoinFit.DOUBTFUL))) {
            svg.line(
                    LEFT,
                    y(join.depth()),
                    LEFT + ANGLE_WIDTH,
                    y(join.depth()),
                    "stroke",
                    Ink.PENCIL,
                    "stroke-dasharray",
                    "2 5");
        }
        for (Join join : apart(course.joins(JoinFit.BROKEN))) {
            double y = y(join.depth());
            svg.line(LEFT - 5, y, LEFT + ANGLE_WIDTH + 5, y, "stroke", Ink.RUST, "stroke-width", "1.4");
        }
    }

    /** Joins that the picture can tell apart. */
    private List<Join> apart(List<Join> joins) {
        return Thinning.onePerCell(
                joins.stream().filter(join -> join.depth() <= course.end()).toList(),
                join -> new Point(0, y(join.depth())),
                join -> "",
                1);
    }

    static Glyph glyph(Verdict verdict) {
        return switch (verdict) {
            case SOUND -> Glyph.DISC;
            case FLIPPED -> Glyph.LOZENGE;
            case WRONG -> Glyph.SALTIRE;
            case LEFT_OUT -> Glyph.STRUCK_RING;
        };
    }

    static String colour(Verdict verdict) {
        return switch (verdict) {
            case SOUND -> Ink.INDIGO;
            case FLIPPED -> Ink.OCHRE;
            case WRONG -> Ink.RUST;
            case LEFT_OUT -> Ink.PENCIL;
        };
    }

    static String text(Enum<?> verdict) {
        return verdict.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private Point place(MarkPosterior judgement) {
        return new Point(
                axis.at(course.angle(judgement).orElseThrow()),
                y(judgement.mark().depth()));
    }

    private void drawMarks() {
        List<MarkPosterior> shown = Thinning.thinned(
                hole.line().marks().stream()
                        .filter(mark -> course.angle(mark).isPresent())
                        .toList(),
                this::place,
                MarkPosterior::verdict,
                MOST_MARKS);
        double size = shown.size() > 150 ? 2.6 : shown.size() > 60 ? 3.4 : 4.2;
        for (Verdict verdict : Verdict.values()) {
            List<MarkPosterior> marks =
                    shown.stream().filter(mark -> mark.verdict() == verdict).toList();
            svg.open("g", "stroke", colour(verdict), "stroke-width", "0.9");
            marks.forEach(this::drawWhisker);
            svg.close();
            svg.open("g", "class", "marks");
            svg.open("g", glyph(verdict).attributes(colour(verdict)));
            for (MarkPosterior mark : marks) {
                Point place = place(mark);
                svg.told("path", told(mark), "d", glyph(verdict).path(place.x(), place.y(), size));
            }
            svg.close();
            svg.close();
        }
    }

    private void drawWhisker(MarkPosterior judgement) {
        Point place = place(judgement);
        for (AngleAxis.Span span : axis.spans(course.angle(judgement).orElseThrow(), judgement.sigma())) {
            svg.line(span.from(), place.y(), span.to(), place.y());
        }
    }

    private String told(MarkPosterior judgement) {
        return judgement.mark() + ", " + text(judgement.verdict()) + "; it puts the line at "
                + Degrees.azimuthText(course.angle(judgement).orElseThrow()) + " from " + course.reference();
    }

    private void drawStructures() {
        drawStructureTicks(true, 16, Ink.INK);
        drawStructureTicks(false, 8, Ink.RUST);
    }

    private void drawStructureTicks(boolean oriented, double length, String colour) {
        List<OrientedStructure> ticks = Thinning.onePerCell(
                hole.structures().stream()
                        .filter(structure -> structure.isOriented() == oriented)
                        .toList(),
                structure -> new Point(0, y(structure.structure().depth())),
                structure -> "",
                1);
        svg.open("g", "stroke", colour, "stroke-width", "1");
        for (OrientedStructure tick : ticks) {
            double y = y(tick.structure().depth());
            svg.line(STRUCTURES, y, STRUCTURES + length, y);
        }
        svg.close();
    }

    private void drawTurn() {
        List<List<Point>> pieces = course.scribeTurns();
        double least = pieces.stream()
                .flatMap(List::stream)
                .mapToDouble(Point::x)
                .min()
                .orElse(0);
        double most = pieces.stream()
                .flatMap(List::stream)
                .mapToDouble(Point::x)
                .max()
                .orElse(0);
        double middle = (least + most) / 2;
        double half = Math.max(10, 0.6 * (most - least));
        svg.open("g", "font-size", "11", "text-anchor", "middle", "fill", Ink.SOFT);
        for (BigDecimal turn : Ticks.between(middle - half, middle + half, 4).values()) {
            double x = TURN_LEFT + TURN_WIDTH * (turn.doubleValue() - middle + half) / (2 * half);
            svg.line(x, TOP, x, TOP + HEIGHT, "stroke", turn.signum() == 0 ? Ink.PENCIL : Ink.GRID);
            svg.text(x, TOP - 8, Ticks.text(turn));
        }
        svg.text(
                TURN_LEFT + TURN_WIDTH / 2,
                TOP + HEIGHT + 24,
                "scribe's turn, degrees",
                "font-size",
                "12",
                "fill",
                Ink.INK);
        svg.close();
        drawSideless(course.sideless(WallReference.lowSide()), TURN_LEFT, TURN_WIDTH, "no low side");
        svg.open("g", "class", "turn", "fill", "none", "stroke", Ink.TEAL, "stroke-width", "1.6");
        for (List<Point> piece : pieces) {
            svg.polyline(piece.stream()
                    .map(point ->
                            new Point(TURN_LEFT + TURN_WIDTH * (point.x() - middle + half) / (2 * half), y(point.y())))
                    .toList());
        }
        svg.close();
        frame(TURN_LEFT, TURN_WIDTH, "none");
    }

    private void drawLegend() {
        LineLegend.draw(svg, new Point(LEGEND, TOP + 12), hole, course);
    }
}
