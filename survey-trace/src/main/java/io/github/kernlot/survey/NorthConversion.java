package io.github.kernlot.survey;

import java.util.Locale;

/**
 * What was done to the azimuths of some stations of a survey to count them from another north. It was done once, to the azimuths
 * as they were measured.
 *
 * @param stations how many stations
 * @param firstDepth the depth of the first of them, metres
 * @param lastDepth the depth of the last of them, metres
 * @param measured the reference in which they were measured
 * @param to the north from which they now count
 */
public record NorthConversion(int stations, double firstDepth, double lastDepth, NorthReference measured, North to) {

    static NorthConversion of(SurveyPart part, North to) {
        int count = part.stations().size();
        return new NorthConversion(
                count,
                part.stations().get(0).depth(),
                part.stations().get(count - 1).depth(),
                part.north(),
                to);
    }

    /**
     * The north in which the stations were measured.
     *
     * @return that north
     */
    public North from() {
        return measured.north();
    }

    /**
     * What was added to every azimuth.
     *
     * @return degrees
     * @throws IllegalArgumentException if the reference has no way to the north
     */
    public double added() {
        return measured.toAdd(to);
    }

    /**
     * What the angle is made of, with the sources.
     *
     * @return in words: {@code declination 3.2000 (given) - convergence -0.8000 (given)}
     * @throws IllegalArgumentException if the reference has no way to the north
     */
    public String why() {
        return measured.termsTo(to);
    }

    /** The stations, the norths and the angle with its terms. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d %s, %.2f to %.2f m: %s to %s north, %+.4f degrees = %s",
                stations,
                stations == 1 ? "station" : "stations",
                firstDepth,
                lastDepth,
                NorthReference.text(from()),
                NorthReference.text(to),
                added(),
                why());
    }
}
