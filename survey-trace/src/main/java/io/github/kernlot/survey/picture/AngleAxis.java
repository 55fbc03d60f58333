package io.github.kernlot.survey.picture;

import io.github.kernlot.orientation.internal.Degrees;
import java.util.ArrayList;
import java.util.List;

/** A whole turn across a panel, opened opposite to its middle angle; what crosses an edge goes on at the other one. */
final class AngleAxis {

    private final double left;
    private final double width;
    private final double first;

    /** The panel's left edge and width, and the angle in its middle. */
    AngleAxis(double left, double width, double middle) {
        this.left = left;
        this.width = width;
        this.first = middle - 180;
    }

    /** Values of a curve with half the width of its band, one below the other, without a gap and unwrapped. */
    record Band(List<Double> y, List<Double> angle, List<Double> half) {
        static Band empty() {
            return new Band(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        }

        void add(double atY, double angleThere, double halfThere) {
            y.add(atY);
            angle.add(angleThere);
            half.add(Math.min(180, halfThere));
        }

        boolean isEmpty() {
            return y.isEmpty();
        }

        double last() {
            return angle.get(angle.size() - 1);
        }
    }

    double left() {
        return left;
    }

    double right() {
        return left + width;
    }

    /** The place of any angle within the panel. */
    double at(double angle) {
        return unwrapped(first + Degrees.wrap360(angle - first));
    }

    private double unwrapped(double angle) {
        return left + (angle - first) / 360 * width;
    }

    /** A stretch across the panel. */
    record Span(double from, double to) {}

    /** What lies within so many degrees of an angle; two stretches where it goes over the edge. */
    List<Span> spans(double angle, double half) {
        double middle = at(angle);
        double reach = Math.min(180, half) / 360 * width;
        List<Span> spans = new ArrayList<>();
        for (int turn = -1; turn <= 1; turn++) {
            double from = Math.max(left, middle - reach + turn * width);
            double to = Math.min(right(), middle + reach + turn * width);
            // less than a point could not be seen for what it is
            if (to - from > 1) {
                spans.add(new Span(from, to));
            }
        }
        return spans;
    }

    /** The outlines of a band, cut at the panel's edges. */
    List<List<Point>> outlines(Band band) {
        List<List<Point>> outlines = new ArrayList<>();
        for (int turn : turns(band)) {
            List<Point> leftSide = new ArrayList<>();
            List<Point> rightSide = new ArrayList<>();
            for (int i = 0; i < band.y().size(); i++) {
                double angle = band.angle().get(i) - 360.0 * turn;
                double low = Math.max(left, unwrapped(angle - band.half().get(i)));
                double high = Math.min(right(), unwrapped(angle + band.half().get(i)));
                if (low < high) {
                    leftSide.add(new Point(low, band.y().get(i)));
                    rightSide.add(0, new Point(high, band.y().get(i)));
                } else {
                    close(outlines, leftSide, rightSide);
                }
            }
            close(outlines, leftSide, rightSide);
        }
        return outlines;
    }

    private static void close(List<List<Point>> outlines, List<Point> leftSide, List<Point> rightSide) {
        if (leftSide.size() > 1) {
            List<Point> outline = new ArrayList<>(leftSide);
            outline.addAll(rightSide);
            outlines.add(outline);
        }
        leftSide.clear();
        rightSide.clear();
    }

    /** The curve in the middle of a band, cut at the panel's edges. */
    List<List<Point>> curves(Band band) {
        List<List<Point>> curves = new ArrayList<>();
        for (int turn : turns(band)) {
            List<Point> curve = new ArrayList<>();
            for (int i = 0; i < band.y().size(); i++) {
                double x = unwrapped(band.angle().get(i) - 360.0 * turn);
                if (x >= left && x <= right()) {
                    curve.add(new Point(x, band.y().get(i)));
                } else if (!curve.isEmpty()) {
                    curves.add(curve);
                    curve = new ArrayList<>();
                }
            }
            curves.add(curve);
        }
        return curves;
    }

    /** The whole turns by which the band must be moved to fall into the panel. */
    private List<Integer> turns(Band band) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < band.y().size(); i++) {
            low = Math.min(low, band.angle().get(i) - band.half().get(i));
            high = Math.max(high, band.angle().get(i) + band.half().get(i));
        }
        List<Integer> turns = new ArrayList<>();
        for (int turn = (int) Math.floor((low - first) / 360); first + 360.0 * turn < high; turn++) {
            turns.add(turn);
        }
        return turns;
    }
}
