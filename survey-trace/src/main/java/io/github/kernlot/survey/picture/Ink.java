package io.github.kernlot.survey.picture;

import java.util.List;

/**
 * Colours and letters. The six colours of kinds keep apart for the common kinds of colour blindness (simulated) and against the
 * paper (contrast 3 or more); a shape always tells the same as a colour.
 */
final class Ink {

    static final String PAPER = "#FCFAF4";
    static final String INK = "#33313D";
    static final String SOFT = "#5F5B66";
    static final String PENCIL = "#8C8678";
    static final String GRID = "#E3DCCB";
    /** Behind what cannot be drawn. */
    static final String SHADE = "#F3EEE1";

    static final String INDIGO = "#2B3C94";
    static final String RUST = "#9E3D12";
    static final String TEAL = "#178C82";
    static final String PLUM = "#7A2468";
    static final String OCHRE = "#B08D1E";
    static final String HAZE = "#C9CDE6";

    static final List<String> COLOURS = List.of(INDIGO, RUST, TEAL, OCHRE, PLUM, INK);

    static final String FONT = "Palatino, 'Palatino Linotype', Georgia, 'Liberation Serif', serif";

    /** White space round a picture. */
    static final double MARGIN = 40;

    private Ink() {}
}
