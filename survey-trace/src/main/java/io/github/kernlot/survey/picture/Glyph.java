package io.github.kernlot.survey.picture;

import java.util.List;

/** Shapes of symbols. Each path begins by moving to the symbol's centre, where nothing is drawn. */
enum Glyph {
    DISC(true),
    TRIANGLE(true),
    SQUARE(true),
    RING(false),
    SALTIRE(false),
    LOZENGE(true),
    BOX(false),
    /** For lines in planes alone. */
    STAR(false),
    /** For verdicts alone. */
    STRUCK_RING(false);

    /** Those that stand for kinds; their number is prime to that of the colours. */
    static final List<Glyph> OF_KINDS = List.of(DISC, TRIANGLE, SQUARE, RING, SALTIRE, LOZENGE, BOX);

    private final boolean filled;

    Glyph(boolean filled) {
        this.filled = filled;
    }

    /** The path of the symbol with a radius. */
    String path(double x, double y, double radius) {
        double r = radius;
        double side = 0.88 * r;
        String shape =
                switch (this) {
                    case DISC, RING -> circle(r);
                    case TRIANGLE ->
                        step(0, -1.2 * r) + "l" + Svg.pair(1.08 * r, 1.9 * r) + "h" + Svg.number(-2.16 * r) + "z";
                    case SQUARE, BOX -> {
                        String across = Svg.number(2 * side);
                        yield step(-side, -side) + "h" + across + "v" + across + "h-" + across + "z";
                    }
                    case SALTIRE -> stroke(side, side) + stroke(side, -side);
                    case LOZENGE -> {
                        double tall = 1.3 * r;
                        yield step(0, -tall) + "l" + Svg.pair(r, tall) + "l" + Svg.pair(-r, tall) + "l"
                                + Svg.pair(-r, -tall) + "z";
                    }
                    case STAR -> stroke(0, 1.2 * r) + stroke(1.04 * r, 0.6 * r) + stroke(1.04 * r, -0.6 * r);
                    case STRUCK_RING ->
                        circle(r) + "m" + Svg.pair(-0.4 * r, 1.4 * r) + "l" + Svg.pair(2.8 * r, -2.8 * r);
                };
        return "M" + Svg.pair(x, y) + shape;
    }

    private static String circle(double r) {
        String arc = "a" + Svg.number(r) + " " + Svg.number(r) + " 0 1 0 ";
        return step(-r, 0) + arc + Svg.number(2 * r) + " 0" + arc + Svg.number(-2 * r) + " 0z";
    }

    private static String step(double dx, double dy) {
        return "m" + Svg.pair(dx, dy);
    }

    /** A stroke through the centre, which ends where it began: in the centre. */
    private static String stroke(double dx, double dy) {
        return step(-dx, -dy) + "l" + Svg.pair(2 * dx, 2 * dy) + step(-dx, -dy);
    }

    /** The attributes that draw this shape in a colour. */
    String[] attributes(String colour) {
        return filled
                ? new String[] {"fill", colour, "stroke", Ink.PAPER, "stroke-width", "0.8"}
                : new String[] {"fill", "none", "stroke", colour, "stroke-width", "1.6"};
    }
}
