package io.github.kernlot.survey.docs;

/**
 * How a stroke or an area of a drawing looks. One colour stands for one thing in all drawings; they keep apart for the common kinds of
 * colour blindness, and a word or a dash always tells the same.
 *
 * @param stroke colour of the stroke, or {@code none}
 * @param width of the stroke in pixels
 * @param dash lengths of strokes and gaps; empty for an unbroken stroke
 * @param fill colour of the area, or {@code none}
 * @param opacity of the area
 */
record Pen(String stroke, double width, String dash, String fill, double opacity) {

    static final String PAPER = "#FCFAF4";
    /** Text, outlines, the core and its axis. */
    static final String INK = "#33313D";
    /** The ground: horizontal, vertical, north, the low side. */
    static final String GROUND = "#7A5E0C";
    /** The drawn line and the marks. */
    static final String LINE = "#9E3D12";
    /** Planes. */
    static final String PLANE = "#0F7A71";
    /** Poles and lines. */
    static final String POLE = "#7A2468";
    /** The angle that a drawing is about. */
    static final String ANGLE = "#2B3C94";
    /** Rock that was taken out. */
    static final String CORE = "#E9E4D6";
    /** The cut face of a core. */
    static final String FACE = "#F6F3EA";

    static Pen of(String stroke) {
        return new Pen(stroke, 1.5, "", "none", 1);
    }

    static Pen area(String fill, double opacity) {
        return new Pen("none", 0, "", fill, opacity);
    }

    Pen wide(double pixels) {
        return new Pen(stroke, pixels, dash, fill, opacity);
    }

    Pen dashed() {
        return new Pen(stroke, width, "3 3", fill, opacity);
    }

    Pen filled(String colour, double cover) {
        return new Pen(stroke, width, dash, colour, cover);
    }

    /** The same stroke where something stands before it. */
    Pen hidden() {
        return new Pen(stroke, Math.min(width, 1), "2 3", "none", 1);
    }
}
