package io.github.kernlot.survey.picture;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Writes SVG: escaped text, numbers with two decimals at most, the same bytes in every locale. */
final class Svg {

    private static final double CAPTION = 12.5;

    /** From one line of a caption to the next. */
    static final double LEADING = 18;

    private final StringBuilder out = new StringBuilder(16384);
    private final Deque<String> open = new ArrayDeque<>();
    private final String title;
    private final double width;
    private final double height;

    Svg(double width, double height, String title, String description) {
        this.title = title;
        this.width = width;
        this.height = height;
        String size = number(width) + " " + number(height);
        open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 " + size,
                "width",
                number(width),
                "height",
                number(height),
                "role",
                "img",
                "aria-label",
                title,
                "font-family",
                Ink.FONT,
                "font-size",
                "13",
                "fill",
                Ink.INK);
        out.append("<title>").append(escaped(title)).append("</title>");
        out.append("<desc>").append(escaped(description)).append("</desc>\n");
        element("rect", "width", number(width), "height", number(height), "fill", Ink.PAPER);
        text(Ink.MARGIN, 44, shortened(title, 20, width - 2 * Ink.MARGIN), "font-size", "20");
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    void open(String name, String... attributes) {
        begin(name, attributes);
        out.append(">\n");
        open.push(name);
    }

    void close() {
        out.append("</").append(open.pop()).append(">\n");
    }

    void element(String name, String... attributes) {
        begin(name, attributes);
        out.append("/>\n");
    }

    /** An element that a reader who points at it is told of. */
    void told(String name, String what, String... attributes) {
        begin(name, attributes);
        out.append("><title>")
                .append(escaped(what))
                .append("</title></")
                .append(name)
                .append(">\n");
    }

    void text(double x, double y, String content, String... attributes) {
        out.append("<text x=\"")
                .append(number(x))
                .append("\" y=\"")
                .append(number(y))
                .append('"');
        attributes(attributes);
        out.append('>').append(escaped(content)).append("</text>\n");
    }

    void line(double x1, double y1, double x2, double y2, String... attributes) {
        out.append("<path d=\"M")
                .append(pair(x1, y1))
                .append('L')
                .append(pair(x2, y2))
                .append('"');
        attributes(attributes);
        out.append("/>\n");
    }

    void circle(double x, double y, double radius, String... attributes) {
        out.append("<circle cx=\"")
                .append(number(x))
                .append("\" cy=\"")
                .append(number(y))
                .append("\" r=\"")
                .append(number(radius))
                .append('"');
        attributes(attributes);
        out.append("/>\n");
    }

    /** A line through points; nothing for fewer than two. */
    void polyline(List<Point> points, String... attributes) {
        if (points.size() > 1) {
            begin("path", attributes);
            out.append(" d=\"").append(through(points)).append("\"/>\n");
        }
    }

    static String through(List<Point> points) {
        StringBuilder path = new StringBuilder();
        for (Point point : points) {
            path.append(path.isEmpty() ? 'M' : 'L').append(pair(point.x(), point.y()));
        }
        return path.toString();
    }

    /** The words below a picture. */
    void caption(double y, List<String> lines) {
        open("g", "font-style", "italic", "fill", Ink.SOFT, "font-size", Svg.number(CAPTION));
        for (int i = 0; i < lines.size(); i++) {
            text(Ink.MARGIN, y + LEADING * i, lines.get(i));
        }
        close();
    }

    /** Sentences as lines that fit into a picture of some width; each sentence begins a line. */
    static List<String> lines(List<String> sentences, double width) {
        List<String> lines = new ArrayList<>();
        for (String sentence : sentences) {
            StringBuilder line = new StringBuilder();
            for (String word : sentence.split(" ", -1)) {
                if (!line.isEmpty() && widthOf(line + " " + word, CAPTION) > width - 2 * Ink.MARGIN) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(line.isEmpty() ? "" : " ").append(word);
            }
            lines.add(line.toString());
        }
        return lines;
    }

    Picture finish() {
        while (!open.isEmpty()) {
            close();
        }
        return new Picture(title, out.toString());
    }

    private void begin(String name, String... attributes) {
        out.append('<').append(name);
        attributes(attributes);
    }

    private void attributes(String... attributes) {
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            out.append(escaped(attributes[i + 1])).append('"');
        }
    }

    static String pair(double x, double y) {
        return number(x) + " " + number(y);
    }

    /** Two decimals at most, no trailing zeros, no minus before zero. */
    static String number(double value) {
        if (!(Math.abs(value) < 1e9)) {
            throw new IllegalArgumentException("a coordinate of a picture is " + value + "; expected within 1e9");
        }
        long hundredths = Math.round(value * 100);
        long whole = Math.abs(hundredths) / 100;
        long rest = Math.abs(hundredths) % 100;
        String decimals = rest == 0 ? "" : rest % 10 == 0 ? "." + rest / 10 : (rest < 10 ? ".0" : ".") + rest;
        return (hundredths < 0 ? "-" : "") + whole + decimals;
    }

    /** A safe estimate of how wide a text is drawn. */
    static double widthOf(String text, double fontSize) {
        return fontSize * text.codePoints().mapToDouble(Svg::widthOf).sum();
    }

    /** Widths by the size of the font, on the generous side for the serifs that the pictures ask for. */
    private static double widthOf(int character) {
        if (character > 0x24F) {
            return 1;
        }
        if ("ijlt.,:;'|!()[]- ".indexOf(character) >= 0) {
            return 0.36;
        }
        if ("mwMW@%&".indexOf(character) >= 0) {
            return 0.95;
        }
        return Character.isUpperCase(character) ? 0.74 : 0.54;
    }

    /** The text, or its beginning and an ellipsis where it is too wide. */
    static String shortened(String text, double fontSize, double room) {
        if (widthOf(text, fontSize) <= room) {
            return text;
        }
        int end = 0;
        double width = fontSize;
        while (end < text.length()) {
            width += fontSize * widthOf(text.codePointAt(end));
            if (width > room) {
                break;
            }
            end = text.offsetByCodePoints(end, 1);
        }
        return text.substring(0, end) + "\u2026";
    }

    /** Text for XML and HTML; what XML 1.0 cannot hold becomes the replacement character. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(isAllowed(point) ? point : 0xFFFD);
            }
        });
        return safe.toString();
    }

    private static boolean isAllowed(int point) {
        boolean space = point == '\t' || point == '\n' || point == '\r';
        boolean surrogate = point >= 0xD800 && point <= 0xDFFF;
        boolean control = point < 0x20 || (point >= 0x7F && point < 0xA0);
        return space || !(control || surrogate || point == 0xFFFE || point == 0xFFFF);
    }
}
