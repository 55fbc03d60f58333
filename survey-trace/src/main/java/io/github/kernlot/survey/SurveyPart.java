package io.github.kernlot.survey;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Stations of a survey as they were measured, with the reference of their azimuths.
 *
 * @param stations by increasing depth
 * @param north the north that their azimuths are counted from
 */
public record SurveyPart(List<SurveyStation> stations, NorthReference north) {

    /** Sorts the stations by depth. */
    public SurveyPart {
        stations = stations.stream()
                .sorted(Comparator.comparingDouble(SurveyStation::depth))
                .toList();
    }

    /**
     * Stations in any order.
     *
     * @param stations depths and directions
     * @param north the north that their azimuths are counted from
     * @return the part
     */
    public static SurveyPart of(List<SurveyStation> stations, NorthReference north) {
        return new SurveyPart(stations, north);
    }

    /** The stations counted from another north. */
    List<SurveyStation> in(North other) {
        if (other == north.north()) {
            return stations;
        }
        double added = north.toAdd(other);
        return stations.stream()
                .map(station ->
                        new SurveyStation(station.depth(), station.direction().withAzimuthTurned(added)))
                .toList();
    }

    SurveyPart completedFrom(NorthReference other) {
        return new SurveyPart(stations, north.completedFrom(other));
    }

    /** What all parts know of their place, from grid north; without a declination where they have several. */
    static NorthReference common(List<SurveyPart> parts) {
        NorthReference known = NorthReference.grid();
        for (SurveyPart part : parts) {
            known = known.completedFrom(part.north);
        }
        if (angles(parts, NorthReference::convergence).size() > 1) {
            throw new IllegalArgumentException("parts of one survey have the convergences "
                    + angles(parts, NorthReference::convergence) + "; expected one, since a hole has one grid");
        }
        return angles(parts, NorthReference::declination).size() > 1 ? known.withoutDeclination() : known;
    }

    static void checkOneDeclination(List<SurveyPart> parts) {
        List<Double> declinations = angles(parts, NorthReference::declination);
        if (declinations.size() > 1) {
            throw new IllegalArgumentException("parts of the survey have the declinations " + declinations
                    + "; expected one, since their magnetic norths differ");
        }
    }

    private static List<Double> angles(List<SurveyPart> parts, Function<NorthReference, OptionalDouble> angle) {
        return parts.stream()
                .map(part -> angle.apply(part.north))
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .distinct()
                .toList();
    }

    /** The number of stations and their north. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d %s, azimuths from %s",
                stations.size(),
                stations.size() == 1 ? "station" : "stations",
                north.withoutSources());
    }
}
