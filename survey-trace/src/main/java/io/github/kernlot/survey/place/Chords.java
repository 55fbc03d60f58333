package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.internal.Vector;

/**
 * The closest points of two chords.
 *
 * @param onOne the fraction of the first chord, in [0, 1]
 * @param onOther the fraction of the second chord, in [0, 1]
 * @param distance between the two points
 */
record Chords(double onOne, double onOther, double distance) {

    /** A gain of less is rounding, and the smaller fraction stays. */
    private static final double ROUNDING = 1e-13;

    static Chords between(Vector start, Vector end, Vector otherStart, Vector otherEnd) {
        Vector chord = end.minus(start);
        Vector otherChord = otherEnd.minus(otherStart);
        Vector apart = otherStart.minus(start);
        Chords best = at(0, fraction(start, otherStart, otherChord), apart, chord, otherChord);
        best = nearer(best, at(fraction(otherStart, start, chord), 0, apart, chord, otherChord));
        best = nearer(best, at(fraction(otherEnd, start, chord), 1, apart, chord, otherChord));
        // the feet of the common perpendicular: det(apart, d2, d1 x d2) / |d1 x d2|^2 and det(apart, d1, d1 x d2) / |d1
        // x d2|^2
        Vector common = chord.cross(otherChord);
        double square = common.dot(common);
        double onOne = apart.cross(otherChord).dot(common) / square;
        double onOther = apart.cross(chord).dot(common) / square;
        if (onOne > 0 && onOne < 1 && onOther > 0 && onOther < 1) {
            best = nearer(best, at(onOne, onOther, apart, chord, otherChord));
        }
        return nearer(best, at(1, fraction(end, otherStart, otherChord), apart, chord, otherChord));
    }

    private static Chords nearer(Chords best, Chords next) {
        return next.distance < best.distance - ROUNDING ? next : best;
    }

    private static Chords at(double onOne, double onOther, Vector apart, Vector chord, Vector otherChord) {
        Vector way = apart.plus(otherChord.times(onOther)).minus(chord.times(onOne));
        return new Chords(onOne, onOther, way.length());
    }

    /** The fraction of a chord whose point is nearest to a place. */
    private static double fraction(Vector place, Vector start, Vector chord) {
        double square = chord.dot(chord);
        return square == 0 ? 0 : Math.max(0, Math.min(1, place.minus(start).dot(chord) / square));
    }
}
