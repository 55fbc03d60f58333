package io.github.kernlot.survey;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The survey of one hole: stations by increasing depth, and the north that their azimuths are counted from.
 *
 * <p>It keeps the azimuths as they were measured. Every conversion starts from those, so that converting there and back gives the
 * same numbers, and none is ever converted twice; {@link #conversions} tells what was added and why.
 */
public final class Survey {

    /** Doglegs above this have no plane that could be told. */
    private static final double GREATEST_DOGLEG = 179.9;

    private final List<SurveyStation> stations;
    private final NorthReference north;
    private final List<SurveyPart> measured;

    private Survey(List<SurveyPart> measured, NorthReference north) {
        this.stations = measured.stream()
                .flatMap(part -> part.in(north.north()).stream())
                .sorted(Comparator.comparingDouble(SurveyStation::depth))
                .toList();
        this.north = north;
        this.measured = measured;
        if (stations.isEmpty()) {
            throw new IllegalArgumentException("a survey needs at least one station");
        }
        for (int i = 1; i < stations.size(); i++) {
            checkPair(stations.get(i - 1), stations.get(i));
        }
    }

    /**
     * A survey of stations in any order.
     *
     * @param stations at least one, no two at one depth, neighbours at most 179.9 degrees apart
     * @param north the north of all their azimuths
     * @return the survey
     * @throws IllegalArgumentException if there is no station, two share a depth, or a dogleg between neighbours is above 179.9
     *     degrees
     */
    public static Survey of(List<SurveyStation> stations, NorthReference north) {
        return new Survey(List.of(new SurveyPart(stations, north)), north);
    }

    /**
     * A survey of stations that count from several norths, such as a collar shot on the grid and magnetic shots below it. Each is
     * converted once, by its own reference. What one part knows of the place the others use where they know nothing: a hole has one
     * grid and so one convergence; declinations may differ with the date, and each part then needs its own.
     *
     * @param parts the stations by their norths; together at least one, no two at one depth, neighbours at most 179.9 degrees apart
     * @return the survey from grid north
     * @throws IllegalArgumentException if there is no station, two share a depth, a dogleg between neighbours is above 179.9 degrees,
     *     two parts have different convergences, or a declination or convergence that is needed was not given
     */
    public static Survey ofParts(List<SurveyPart> parts) {
        NorthReference common = SurveyPart.common(parts);
        return new Survey(parts.stream().map(part -> part.completedFrom(common)).toList(), common);
    }

    private static void checkPair(SurveyStation upper, SurveyStation lower) {
        if (upper.depth() == lower.depth()) {
            throw new IllegalArgumentException(
                    "two stations at one depth: " + upper + " and " + lower + "; expected one");
        }
        double dogleg = upper.direction().angleTo(lower.direction());
        if (dogleg > GREATEST_DOGLEG) {
            throw new IllegalArgumentException("the dogleg between " + upper + " and " + lower + " is " + dogleg
                    + " degrees; expected at most " + GREATEST_DOGLEG);
        }
    }

    /**
     * The stations by increasing depth.
     *
     * @return at least one station
     */
    public List<SurveyStation> stations() {
        return stations;
    }

    /**
     * The north that the azimuths of {@link #stations} are counted from.
     *
     * @return the reference
     */
    public NorthReference north() {
        return north;
    }

    /**
     * The north in which the survey was measured, before any conversion.
     *
     * @return that north; grid north where parts of it were measured in several
     */
    public North measuredFrom() {
        North first = measured.get(0).north().north();
        return measured.stream().allMatch(part -> part.north().north() == first) ? first : North.GRID;
    }

    /**
     * The stations as they were measured, each part with the reference of its azimuths.
     *
     * @return at least one part
     */
    public List<SurveyPart> measured() {
        return measured;
    }

    /**
     * What was added to the measured azimuths to count them from the north of this survey, and why.
     *
     * @return one conversion for each part that was measured in another north; empty where none was
     */
    public List<NorthConversion> conversions() {
        return measured.stream()
                .filter(part -> part.north().north() != north.north()
                        && !part.stations().isEmpty())
                .map(part -> NorthConversion.of(part, north.north()))
                .toList();
    }

    /**
     * This survey with azimuths from grid north, the north of the coordinates.
     *
     * @return the survey; itself where it is on the grid
     * @throws IllegalArgumentException if the declination or the convergence that this needs was not given
     */
    public Survey toGrid() {
        return to(North.GRID);
    }

    /**
     * This survey with azimuths from another north, converted from those that were measured.
     *
     * @param other the north to count from
     * @return the survey; itself where it has that north
     * @throws IllegalArgumentException if the declination or the convergence that this needs was not given, or magnetic norths of
     *     several dates would be mixed
     */
    public Survey to(North other) {
        if (other == north.north()) {
            return this;
        }
        if (other == North.MAGNETIC) {
            SurveyPart.checkOneDeclination(measured);
        }
        return new Survey(measured, north.with(other));
    }

    /** The number of stations, the last depth and the north. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d %s to %.2f m, azimuths from %s",
                stations.size(),
                stations.size() == 1 ? "station" : "stations",
                stations.get(stations.size() - 1).depth(),
                north.withoutSources());
    }
}
