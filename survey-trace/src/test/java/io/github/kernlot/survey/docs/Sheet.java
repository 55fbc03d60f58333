package io.github.kernlot.survey.docs;

import java.util.ArrayList;
import java.util.List;

/** A small SVG drawing on a plain light ground. Numbers have one decimal at most, so that the bytes are the same on every machine. */
final class Sheet {

    private static final double SMALL = 11;

    /** A place on the sheet: x to the right, y downwards. */
    record Point(double x, double y) {

        Point plus(double right, double down) {
            return new Point(x + right, y + down);
        }

        double distanceTo(Point other) {
            return Math.sqrt((x - other.x) * (x - other.x) + (y - other.y) * (y - other.y));
        }
    }

    /** Which point of a text is given. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** The room that a text takes, by an estimate on the generous side. */
    record Box(String text, double left, double top, double right, double bottom) {

        boolean overlaps(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    private final StringBuilder out = new StringBuilder(8192);
    private final List<Box> texts = new ArrayList<>();
    private final int width;
    private final int height;

    Sheet(int width, int height, String title) {
        this.width = width;
        this.height = height;
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + width + " " + height + "\" width=\""
                + width + "\" height=\"" + height + "\" role=\"img\" font-family=\"sans-serif\" font-size=\"11\">\n");
        out.append("<title>" + escaped(title) + "</title>\n");
        out.append("<rect width=\"" + width + "\" height=\"" + height + "\" rx=\"6\" fill=\"" + Pen.PAPER + "\"/>\n");
        heading(8, title);
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    List<Box> texts() {
        return List.copyOf(texts);
    }

    void heading(double x, String content) {
        write(new Point(x, 17), content, Anchor.START, Pen.INK, 12, " font-weight=\"bold\"");
    }

    void text(Point place, String content, Anchor anchor, String colour) {
        write(place, content, anchor, colour, SMALL, "");
    }

    /** Lines of text at the foot, the last one at the bottom. */
    void foot(double x, String... lines) {
        for (int i = 0; i < lines.length; i++) {
            text(new Point(x, height - 8 - 13 * (lines.length - 1 - i)), lines[i], Anchor.START, Pen.INK);
        }
    }

    /** A dot and what it stands for. */
    void dot(String colour, double x, double y, String meaning) {
        circle(Pen.area(colour, 1), new Point(x, y), 3.2);
        text(new Point(x + 7, y + 4), meaning, Anchor.START, Pen.INK);
    }

    /** A ring and what it stands for. */
    void ring(String colour, double x, double y, String meaning) {
        circle(Pen.of(colour).filled(Pen.PAPER, 1), new Point(x, y), 3.2);
        text(new Point(x + 7, y + 4), meaning, Anchor.START, Pen.INK);
    }

    private void write(Point place, String content, Anchor anchor, String colour, double size, String more) {
        double wide = widthOf(content) * size;
        double left =
                switch (anchor) {
                    case START -> place.x();
                    case MIDDLE -> place.x() - wide / 2;
                    case END -> place.x() - wide;
                };
        texts.add(new Box(content, left, place.y() - 0.8 * size, left + wide, place.y() + 0.2 * size));
        out.append("<text x=\"" + number(place.x()) + "\" y=\"" + number(place.y()) + "\"");
        if (anchor != Anchor.START) {
            out.append(anchor == Anchor.MIDDLE ? " text-anchor=\"middle\"" : " text-anchor=\"end\"");
        }
        if (size != SMALL) {
            out.append(" font-size=\"" + number(size) + "\"");
        }
        out.append(more + " fill=\"" + colour + "\" stroke=\"" + Pen.PAPER
                + "\" stroke-width=\"2.5\" stroke-linejoin=\"round\" paint-order=\"stroke\">" + escaped(content)
                + "</text>\n");
    }

    void line(Pen pen, List<Point> points) {
        path(pen, through(points));
    }

    void area(Pen pen, List<Point> points) {
        path(pen, through(points) + "Z");
    }

    void circle(Pen pen, Point centre, double radius) {
        out.append("<circle cx=\"" + number(centre.x()) + "\" cy=\"" + number(centre.y()) + "\" r=\"" + number(radius)
                + "\"");
        out.append(look(pen) + "/>\n");
    }

    /** A line whose end is the tip of an arrow. */
    void arrow(Pen pen, List<Point> points) {
        Point tip = points.get(points.size() - 1);
        int last = points.size() - 2;
        while (last > 0 && points.get(last).distanceTo(tip) < 7) {
            last--;
        }
        Point back = points.get(last);
        double length = back.distanceTo(tip);
        double right = (tip.x() - back.x()) / length;
        double down = (tip.y() - back.y()) / length;
        List<Point> shaft = new ArrayList<>(points.subList(0, last + 1));
        shaft.add(tip.plus(-5 * right, -5 * down));
        line(pen, shaft);
        area(
                Pen.area(pen.stroke(), 1),
                List.of(
                        tip,
                        tip.plus(-8 * right - 3.2 * down, -8 * down + 3.2 * right),
                        tip.plus(-8 * right + 3.2 * down, -8 * down - 3.2 * right)));
    }

    /** An eye, seen from the side, that looks along a line of the sheet. */
    void eye(Point place, double right, double down) {
        List<Point> ball = new ArrayList<>();
        for (int i = -4; i <= 4; i++) {
            ball.add(eye(place, right, down, 6 - 0.2 * i * i, 1.7 * i));
        }
        line(
                Pen.of(Pen.INK).wide(1.4),
                List.of(
                        eye(place, right, down, 6, 9),
                        eye(place, right, down, -11, 0),
                        eye(place, right, down, 6, -9)));
        line(Pen.of(Pen.INK).wide(1.4), ball);
        area(Pen.area(Pen.INK, 1), List.of(ball.get(2), ball.get(3), ball.get(4), ball.get(5), ball.get(6)));
        circle(Pen.area(Pen.INK, 1), eye(place, right, down, 4, 0), 2.6);
    }

    private static Point eye(Point place, double right, double down, double along, double across) {
        return place.plus(along * right - across * down, along * down + across * right);
    }

    String finish() {
        return out + "</svg>\n";
    }

    private void path(Pen pen, String data) {
        out.append("<path d=\"" + data + "\"" + look(pen) + "/>\n");
    }

    private static String look(Pen pen) {
        StringBuilder look = new StringBuilder();
        look.append(" fill=\"" + pen.fill() + "\"");
        if (pen.opacity() < 1) {
            look.append(" fill-opacity=\"" + Math.round(pen.opacity() * 100) / 100.0 + "\"");
        }
        if (!pen.stroke().equals("none")) {
            look.append(" stroke=\"" + pen.stroke() + "\" stroke-width=\"" + number(pen.width())
                    + "\" stroke-linecap=\"round\" stroke-linejoin=\"round\"");
            look.append(pen.dash().isEmpty() ? "" : " stroke-dasharray=\"" + pen.dash() + "\"");
        }
        return look.toString();
    }

    private static String through(List<Point> points) {
        StringBuilder data = new StringBuilder();
        for (Point point : points) {
            data.append(data.isEmpty() ? "M" : "L")
                    .append(number(point.x()))
                    .append(' ')
                    .append(number(point.y()));
        }
        return data.toString();
    }

    private static String number(double value) {
        long tenths = Math.round(value * 10);
        String rest = tenths % 10 == 0 ? "" : "." + Math.abs(tenths % 10);
        return (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10 + rest;
    }

    private static double widthOf(String text) {
        return text.chars()
                .mapToDouble(c -> "ijlt.,:;'|!()[]-/ ".indexOf(c) >= 0 ? 0.38 : "mwMW".indexOf(c) >= 0 ? 0.95 : 0.62)
                .sum();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
