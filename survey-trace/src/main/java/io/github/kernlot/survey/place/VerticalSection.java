package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;

/**
 * A vertical section, and where places lie in it: with the azimuth P and N and E from the origin, {@code along = N cos P + E sin P}
 * (the vertical section of the trade) and {@code offset = E cos P - N sin P}.
 *
 * @param origin a place on the section, from which {@code along} is counted
 * @param azimuth where the section runs to, clockwise from grid north, degrees in [0, 360)
 */
public record VerticalSection(Position origin, double azimuth) {

    /**
     * Checks the azimuth.
     *
     * @throws IllegalArgumentException if the azimuth lies outside [0, 360]; 360 becomes 0
     */
    public VerticalSection {
        azimuth = Require.azimuth("azimuth", azimuth);
    }

    /**
     * A section through a place.
     *
     * @param origin the place from which {@code along} is counted, often a collar
     * @param azimuth clockwise from grid north, degrees in [0, 360]
     * @return the section
     * @throws IllegalArgumentException if the azimuth lies outside its range
     */
    public static VerticalSection through(Position origin, double azimuth) {
        return new VerticalSection(origin, azimuth);
    }

    /**
     * Where a place lies in the section.
     *
     * @param place the place
     * @return along, off and above
     */
    public SectionPoint project(Position place) {
        Displacement way = place.minus(origin);
        double cosine = Degrees.cos(azimuth);
        double sine = Degrees.sin(azimuth);
        return new SectionPoint(
                way.north() * cosine + way.east() * sine, way.east() * cosine - way.north() * sine, place.elevation());
    }

    /**
     * The place of a point of the section.
     *
     * @param point along, off and above
     * @return the place on the grid
     */
    public Position placeOf(SectionPoint point) {
        double cosine = Degrees.cos(azimuth);
        double sine = Degrees.sin(azimuth);
        return new Position(
                origin.easting() + point.along() * sine + point.offset() * cosine,
                origin.northing() + point.along() * cosine - point.offset() * sine,
                point.elevation());
    }

    /** The azimuth and the origin. */
    @Override
    public String toString() {
        return "section towards " + Degrees.azimuthText(azimuth) + " from " + origin;
    }
}
