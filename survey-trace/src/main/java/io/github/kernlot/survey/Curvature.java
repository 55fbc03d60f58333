package io.github.kernlot.survey;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * How a hole bends at one depth.
 *
 * <p>With the inclination I and the azimuth A as functions of depth, build is dI, turn is dA, the dogleg severity is the root of
 * {@code dI^2 + (sin I dA)^2} and the toolface {@code atan2(sin I dA, dI)}: definitions, written as vectors inside.
 *
 * @param doglegSeverity how fast the direction turns in space, degrees per 30 m, 0 or more
 * @param build how fast the inclination grows, degrees per 30 m; at a vertical place what it does going down-hole from there
 * @param turn how fast the azimuth grows, degrees per 30 m; empty where the hole is vertical and has no azimuth
 * @param toolface where the hole bends to, clockwise from the high side looking down-hole, degrees in [0, 360); empty where the hole
 *     is straight, and where it is vertical and has no high side
 * @param toolfaceFromNorth where a vertical hole bends to, clockwise from north looking down-hole, degrees in [0, 360); empty where
 *     the hole is straight or not vertical
 */
public record Curvature(
        double doglegSeverity,
        double build,
        OptionalDouble turn,
        OptionalDouble toolface,
        OptionalDouble toolfaceFromNorth) {

    private static final double LENGTH = 30;

    /**
     * The mean curvature between two stations, whatever the path between them: the angle between the directions, the difference of
     * inclination and that of azimuth, the shorter way round north, over the length; the toolface is the one that leads from the
     * upper station along a circular arc to the lower. A vertical station lends no azimuth to the turn, which is then empty.
     *
     * @param upper one station
     * @param lower a deeper one
     * @return the mean curvature
     * @throws IllegalArgumentException if {@code lower} is not deeper than {@code upper}
     */
    public static Curvature between(SurveyStation upper, SurveyStation lower) {
        double length = lower.depth() - upper.depth();
        if (!(length > 0)) {
            throw new IllegalArgumentException(lower + " is not below " + upper + "; expected a deeper station");
        }
        HoleDirection from = upper.direction();
        HoleDirection to = lower.direction();
        Vector axis = Heading.vector(from);
        Vector bend = Heading.vector(to).across(axis);
        Curvature start = of(from, bend, from.angleTo(to) * LENGTH / length);
        boolean hasTurn = !from.isVertical() && !to.isVertical();
        return new Curvature(
                start.doglegSeverity,
                (to.inclination() - from.inclination()) * LENGTH / length,
                hasTurn
                        ? OptionalDouble.of(Degrees.wrap180(to.azimuth() - from.azimuth()) * LENGTH / length)
                        : OptionalDouble.empty(),
                start.toolface,
                start.toolfaceFromNorth);
    }

    /** No bend at a place with a direction. */
    static Curvature straight(HoleDirection direction) {
        return new Curvature(
                0,
                0,
                direction.isVertical() ? OptionalDouble.empty() : OptionalDouble.of(0),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** A bend of so many radians per metre towards a vector across the hole. */
    static Curvature ofRadians(HoleDirection direction, Vector towards, double perMetre) {
        return of(direction, towards, Math.toDegrees(perMetre) * LENGTH);
    }

    private static Curvature of(HoleDirection direction, Vector towards, double severity) {
        if (severity == 0) {
            return straight(direction);
        }
        Vector axis = Heading.vector(direction);
        if (direction.isVertical()) {
            Vector north = new Vector(1, 0, 0);
            return new Curvature(
                    severity,
                    direction.inclination() == 0 ? severity : -severity,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.of(Degrees.azimuth(towards.dot(axis.cross(north)), towards.dot(north))));
        }
        double cosine = Degrees.cos(direction.inclination());
        double sine = Degrees.sin(direction.inclination());
        Vector right = Vector.ofAzimuth(direction.azimuth() + 90);
        Vector high = Vector.ofAzimuth(direction.azimuth()).times(cosine).plus(new Vector(0, 0, -sine));
        double toolface = Degrees.azimuth(towards.dot(right), towards.dot(high));
        return new Curvature(
                severity,
                severity * Degrees.cos(toolface),
                OptionalDouble.of(severity * Degrees.sin(toolface) / sine),
                OptionalDouble.of(toolface),
                OptionalDouble.empty());
    }

    /** The parts that exist: {@code dogleg 3.2, build 1.5, turn 7.1 per 30 m, toolface 052.8 from high side}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(
                String.format(Locale.ROOT, "dogleg %s, build %s", Degrees.text(doglegSeverity), Degrees.text(build)));
        turn.ifPresent(rate -> text.append(", turn ").append(Degrees.text(rate)));
        text.append(" degrees per 30 m");
        toolface.ifPresent(angle ->
                text.append(", toolface ").append(Degrees.azimuthText(angle)).append(" from high side"));
        toolfaceFromNorth.ifPresent(angle ->
                text.append(", toolface ").append(Degrees.azimuthText(angle)).append(" from north"));
        return text.toString();
    }
}
