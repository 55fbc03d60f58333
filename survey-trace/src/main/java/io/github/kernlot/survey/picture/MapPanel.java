package io.github.kernlot.survey.picture;

import java.math.BigDecimal;

/** A panel with one scale for both of its axes, y upwards, and rounded grid lines. */
final class MapPanel {

    static final double WIDTH = 372;
    static final double HEIGHT = 400;

    private final double left;
    private final double top;
    private final double scale;
    private final double lowX;
    private final double highY;

    /** The panel that holds the extent in its middle with a margin. */
    MapPanel(double left, double top, Extent extent) {
        this.left = left;
        this.top = top;
        double spanX = 1.16 * Math.max(extent.spanX(), extent.leastSpan());
        double spanY = 1.16 * Math.max(extent.spanY(), extent.leastSpan());
        scale = Math.min(WIDTH / spanX, HEIGHT / spanY);
        lowX = extent.middleX() - WIDTH / scale / 2;
        highY = extent.middleY() + HEIGHT / scale / 2;
    }

    Point at(double x, double y) {
        return new Point(left + (x - lowX) * scale, top + (highY - y) * scale);
    }

    Labels labels() {
        return new Labels(left + 2, top + 2, left + WIDTH - 2, top + HEIGHT - 2);
    }

    void grid(Svg svg, String xName, String yName) {
        svg.element(
                "rect",
                "x",
                Svg.number(left),
                "y",
                Svg.number(top),
                "width",
                Svg.number(WIDTH),
                "height",
                Svg.number(HEIGHT),
                "fill",
                "#FFFFFF",
                "stroke",
                Ink.PENCIL);
        Ticks across = Ticks.between(lowX, lowX + WIDTH / scale, 5);
        Ticks upward = Ticks.between(highY - HEIGHT / scale, highY, 7);
        svg.open("g", "stroke", Ink.GRID);
        for (BigDecimal x : across.values()) {
            double place = at(x.doubleValue(), 0).x();
            svg.line(place, top, place, top + HEIGHT);
        }
        for (BigDecimal y : upward.values()) {
            double place = at(0, y.doubleValue()).y();
            svg.line(left, place, left + WIDTH, place);
        }
        svg.close();
        svg.open("g", "fill", Ink.SOFT, "font-size", "11", "text-anchor", "middle");
        for (BigDecimal x : across.values()) {
            double place = at(x.doubleValue(), 0).x();
            if (place > left + 8 && place < left + WIDTH - 8) {
                svg.text(place, top + HEIGHT + 16, Ticks.text(x));
            }
        }
        svg.text(left + WIDTH / 2, top + HEIGHT + 36, xName, "font-size", "12", "fill", Ink.INK);
        svg.close();
        svg.open("g", "fill", Ink.SOFT, "font-size", "11", "text-anchor", "end");
        for (BigDecimal y : upward.values()) {
            double place = at(0, y.doubleValue()).y();
            if (place > top + 4 && place < top + HEIGHT - 2) {
                svg.text(left - 6, place + 4, Ticks.text(y));
            }
        }
        svg.close();
        svg.text(left, top - 8, yName, "font-size", "12");
    }

    /** The least rectangle that holds places. */
    static final class Extent {
        private final double leastSpan;
        private double lowX = Double.POSITIVE_INFINITY;
        private double highX = Double.NEGATIVE_INFINITY;
        private double lowY = Double.POSITIVE_INFINITY;
        private double highY = Double.NEGATIVE_INFINITY;

        /** An extent that is never drawn narrower than a span. */
        Extent(double leastSpan) {
            this.leastSpan = leastSpan;
        }

        void add(double x, double y) {
            lowX = Math.min(lowX, x);
            highX = Math.max(highX, x);
            lowY = Math.min(lowY, y);
            highY = Math.max(highY, y);
        }

        double leastSpan() {
            return leastSpan;
        }

        double spanX() {
            return highX - lowX;
        }

        double spanY() {
            return highY - lowY;
        }

        double middleX() {
            return (lowX + highX) / 2;
        }

        double middleY() {
            return (lowY + highY) / 2;
        }
    }
}
