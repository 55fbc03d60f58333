package io.github.kernlot.survey.check;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The constant difference of azimuth between two surveys of one hole, with its standard error. Azimuths count by sin^2 I, as an
 * error of the direction makes one of the azimuth that grows as 1/sin I: what stands nearly vertical hardly counts, and a hole that
 * is vertical throughout has no offset.
 *
 * @param degrees the second survey's azimuths less the first's, degrees in (-180, 180]
 * @param standardError from how the differences scatter, degrees
 * @param comparisons how many stations were compared, 3 or more
 */
public record AzimuthOffset(double degrees, double standardError, int comparisons) {

    private static final int FEWEST = 3;

    /**
     * Compares two surveys at the stations of the first that lie within the depths of the second, whose direction is taken on the arc
     * between its own stations there.
     *
     * @param first a survey
     * @param second another survey of the same hole, its azimuths from the same north
     * @return the offset
     * @throws IllegalArgumentException if the norths differ, fewer than three stations can be compared, or all are vertical
     */
    public static AzimuthOffset between(Survey first, Survey second) {
        return whereComparable(first, second)
                .orElseThrow(() -> new IllegalArgumentException("the surveys " + first + " and " + second
                        + " share too little; expected at least " + FEWEST
                        + " stations of the first within the depths of the second that are not vertical"));
    }

    /**
     * Compares two surveys as {@link #between} does, where that can be done.
     *
     * @param first a survey
     * @param second another survey of the same hole, its azimuths from the same north
     * @return the offset; empty where fewer than three stations that are not vertical can be compared
     * @throws IllegalArgumentException if the norths differ
     */
    public static Optional<AzimuthOffset> whereComparable(Survey first, Survey second) {
        if (first.north().north() != second.north().north()) {
            throw new IllegalArgumentException("the surveys count azimuths from " + first.north() + " and "
                    + second.north() + "; expected one north");
        }
        List<double[]> rows = new ArrayList<>();
        for (SurveyStation station : first.stations()) {
            ArcDirections.at(second.stations(), station.depth())
                    .filter(other -> !other.isVertical() && !station.direction().isVertical())
                    .ifPresent(other -> rows.add(new double[] {
                        other.azimuth() - station.direction().azimuth(), weight(station.direction(), other)
                    }));
        }
        return rows.size() < FEWEST ? Optional.empty() : Optional.of(of(rows));
    }

    private static double weight(HoleDirection one, HoleDirection other) {
        return Degrees.sin(one.inclination()) * Degrees.sin(other.inclination());
    }

    /** Each row: difference, weight. */
    private static AzimuthOffset of(List<double[]> rows) {
        double sine = 0;
        double cosine = 0;
        double weights = 0;
        for (double[] row : rows) {
            sine += row[1] * Degrees.sin(row[0]);
            cosine += row[1] * Degrees.cos(row[0]);
            weights += row[1];
        }
        double mean = Degrees.wrap180(Degrees.atan2(sine, cosine));
        double squares = 0;
        for (double[] row : rows) {
            double residual = Degrees.wrap180(row[0] - mean);
            squares += row[1] * residual * residual;
        }
        return new AzimuthOffset(mean, Math.sqrt(squares / weights / (rows.size() - 1)), rows.size());
    }

    /**
     * The mistakes that would make the offset, where the azimuths that are compared should both count from the north of a place.
     *
     * @param place the north that both should count from, with its declination and convergence as far as they are known
     * @param tolerance how far a mistake's own offset may lie from this one beside two standard errors, degrees, 0 or more
     * @return each mistake in words, the closest first; empty where none fits
     */
    public List<String> candidates(NorthReference place, double tolerance) {
        record Mistake(String what, double offset) {}
        List<Mistake> mistakes = new ArrayList<>();
        for (int sign : new int[] {1, -1}) {
            String who = sign > 0 ? "first" : "second";
            String other = sign > 0 ? "second" : "first";
            place.declination().ifPresent(angle -> {
                mistakes.add(new Mistake(
                        "the declination is missing in the " + who + " survey or applied twice in the " + other,
                        sign * angle));
                mistakes.add(new Mistake("the declination was taken off in the " + who + " survey", sign * 2 * angle));
            });
            place.convergence().ifPresent(angle -> {
                mistakes.add(new Mistake(
                        "the convergence is missing in the " + who + " survey or applied twice in the " + other,
                        sign * -angle));
                mistakes.add(new Mistake("the convergence was added in the " + who + " survey", sign * -2 * angle));
            });
            if (place.declination().isPresent() && place.convergence().isPresent()) {
                mistakes.add(new Mistake(
                        "declination and convergence are both missing in the " + who + " survey",
                        sign
                                * (place.declination().getAsDouble()
                                        - place.convergence().getAsDouble())));
            }
        }
        double near = tolerance + 2 * standardError;
        return mistakes.stream()
                .filter(mistake -> Math.abs(mistake.offset()) > near && away(mistake.offset()) <= near)
                .sorted((one, two) -> Double.compare(away(one.offset()), away(two.offset())))
                .map(Mistake::what)
                .toList();
    }

    private double away(double offset) {
        return Math.abs(Degrees.wrap180(degrees - offset));
    }

    /** The offset and its error: {@code 3.21 +- 0.12 degrees from 14 stations}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f +- %.2f degrees from %d stations", degrees, standardError, comparisons);
    }
}
