package io.github.kernlot.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The survey of one hole: stations by increasing depth, and the north that their azimuths are counted from. It remembers the north
 * in which it was measured.
 */
public final class Survey {

    /** Doglegs above this have no plane that could be told. */
    private static final double GREATEST_DOGLEG = 179.9;

    private final List<SurveyStation> stations;
    private final NorthReference north;
    private final North measuredFrom;

    private Survey(List<SurveyStation> stations, NorthReference north, North measuredFrom) {
        this.stations = stations;
        this.north = north;
        this.measuredFrom = measuredFrom;
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
        if (stations.isEmpty()) {
            throw new IllegalArgumentException("a survey needs at least one station");
        }
        List<SurveyStation> sorted = stations.stream()
                .sorted(Comparator.comparingDouble(SurveyStation::depth))
                .toList();
        for (int i = 1; i < sorted.size(); i++) {
            checkPair(sorted.get(i - 1), sorted.get(i));
        }
        return new Survey(sorted, north, north.north());
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
     * @return that north
     */
    public North measuredFrom() {
        return measuredFrom;
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
     * This survey with azimuths from another north.
     *
     * @param other the north to count from
     * @return the survey; itself where it has that north
     * @throws IllegalArgumentException if the declination or the convergence that this needs was not given
     */
    public Survey to(North other) {
        if (other == north.north()) {
            return this;
        }
        double added = north.toAdd(other);
        List<SurveyStation> turned = new ArrayList<>(stations.size());
        for (SurveyStation station : stations) {
            turned.add(new SurveyStation(station.depth(), station.direction().withAzimuthTurned(added)));
        }
        return new Survey(List.copyOf(turned), north.with(other), measuredFrom);
    }

    /** The number of stations, the last depth and the north. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d stations to %.2f m, azimuths from %s",
                stations.size(),
                stations.get(stations.size() - 1).depth(),
                north);
    }
}
