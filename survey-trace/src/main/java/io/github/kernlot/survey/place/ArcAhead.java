package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Locale;

/**
 * A circular arc that a hole is to take ahead: which way it bends, how hard and how far.
 *
 * <p>With the unit direction t at the start, the unit vector w of the side that it bends towards, the dogleg b and the length L, it
 * leads by {@code (L / b) (sin b t + (1 - cos b) w)} to the direction {@code cos b t + sin b w}. To a place at c from the start,
 * {@code tan(b / 2) = |t x c| / t . c} and {@code L = |c| (b / 2) / sin(b / 2)}: the angle between tangent and chord. Derived from the
 * circle.
 *
 * <p>What a hole does ahead is decided by the ground and by those who drill; this is the geometry of what was asked, no more.
 *
 * @param toolface the side that the hole bends towards; of a straight way 0 from the high side, or from north where it is vertical
 * @param doglegSeverity how fast the direction turns, degrees per 30 m, 0 or more
 * @param length the length of the arc along the hole, metres, above 0
 */
public record ArcAhead(Toolface toolface, double doglegSeverity, double length) {

    private static final double SEVERITY_LENGTH = 30;
    private static final double GREATEST_DOGLEG = 179.9;

    /**
     * Checks severity, length and the dogleg that they make.
     *
     * @throws IllegalArgumentException if the severity is negative or not finite, the length not above 0 and finite, or the dogleg
     *     above 180 degrees
     */
    public ArcAhead {
        doglegSeverity = Require.notNegative("dogleg severity", doglegSeverity, "degrees per 30 m");
        length = Require.positive("length", length, "m");
        // half a circle made of severity and length may be over by rounding
        Require.inRange("dogleg", doglegSeverity * length / SEVERITY_LENGTH, 0, 180 + 1e-9, "degrees");
    }

    /**
     * The arc from a point of a hole to a target place. There is one for every place that does not lie behind.
     *
     * @param start the point from which it goes, as {@link TracePoint#at}
     * @param target the place that it reaches
     * @return the arc, or the straight way where the target lies straight ahead
     * @throws IllegalArgumentException if the target is the start itself, or lies more than 90 degrees off the direction there, so
     *     that an arc to it would turn by more than half a circle
     */
    public static ArcAhead toTarget(TracePoint start, Position target) {
        Vector tangent = Legs.vector(start.direction());
        Vector chord = Legs.vector(target.minus(start.position()));
        double distance = chord.length();
        if (distance == 0) {
            throw new IllegalArgumentException("the target is the start itself; expected another place than " + target);
        }
        Vector across = chord.across(tangent);
        double off = Math.atan2(across.length(), chord.dot(tangent));
        if (off > Math.PI / 2) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the target lies %.1f degrees off the hole at %.2f m; expected at most 90 degrees, beyond which an arc"
                            + " would turn by more than half a circle",
                    Math.toDegrees(off),
                    start.depth()));
        }
        if (off == 0) {
            return new ArcAhead(straight(start), 0, distance);
        }
        double length = distance * off / Math.sin(off);
        Toolface toolface = Toolface.of(across, start.direction());
        return new ArcAhead(toolface, Math.toDegrees(2 * off) * SEVERITY_LENGTH / length, length);
    }

    /**
     * The arc that turns a hole to a target direction over a length.
     *
     * @param start the point from which it goes, as {@link TracePoint#at}
     * @param target the direction at its end, from grid north
     * @param length the length along the hole over which it turns, metres, above 0
     * @return the arc, or the straight way where the hole has that direction
     * @throws IllegalArgumentException if the length is not above 0 and finite, or the directions are more than 179.9 degrees apart
     */
    public static ArcAhead toDirection(TracePoint start, HoleDirection target, double length) {
        double checked = Require.positive("length", length, "m");
        double dogleg = Require.inRange("dogleg", start.direction().angleTo(target), 0, GREATEST_DOGLEG, "degrees");
        if (dogleg == 0) {
            return new ArcAhead(straight(start), 0, checked);
        }
        Vector across = Legs.vector(target).across(Legs.vector(start.direction()));
        return new ArcAhead(Toolface.of(across, start.direction()), dogleg * SEVERITY_LENGTH / checked, checked);
    }

    private static Toolface straight(TracePoint start) {
        return start.direction().isVertical() ? Toolface.fromNorth(0) : Toolface.fromHighSide(0);
    }

    /**
     * How far the hole turns along the arc.
     *
     * @return degrees in [0, 180]
     */
    public double dogleg() {
        return Math.min(180, doglegSeverity * length / SEVERITY_LENGTH);
    }

    /**
     * The same bend over another length.
     *
     * @param other the length along the hole, metres, above 0
     * @return the arc
     * @throws IllegalArgumentException if the length is not above 0 and finite, or it would turn by more than 180 degrees
     */
    public ArcAhead withLength(double other) {
        return new ArcAhead(toolface, doglegSeverity, other);
    }

    /**
     * Where the arc leads from a point of a hole.
     *
     * @param start the point from which it goes
     * @return the point at its end, which is extrapolated
     * @throws IllegalArgumentException if the toolface is counted from a side that the hole has not there
     */
    public TracePoint from(TracePoint start) {
        Vector tangent = Legs.vector(start.direction());
        Vector side = toolface.side(start.direction());
        double dogleg = dogleg();
        double half = Math.toRadians(dogleg) / 2;
        // (sin b) / b and (1 - cos b) / b by the half angle, which loses nothing near 0
        double sinc = half == 0 ? 1 : Math.sin(half) / half;
        Vector way =
                tangent.times(Math.cos(half)).plus(side.times(Math.sin(half))).times(length * sinc);
        Vector end = tangent.times(Degrees.cos(dogleg)).plus(side.times(Degrees.sin(dogleg)));
        return new TracePoint(
                start.depth() + length,
                start.position().plus(Legs.displacement(way)),
                dogleg == 0 ? start.direction() : HoleDirection.ofVector(end.north(), end.east(), end.down()),
                true);
    }

    /** What to set and how far: {@code toolface 069.6 from high side, dogleg 3.60 degrees per 30 m, over 30.00 m}. */
    @Override
    public String toString() {
        return doglegSeverity == 0
                ? String.format(Locale.ROOT, "straight over %.2f m", length)
                : String.format(
                        Locale.ROOT,
                        "toolface %s, dogleg %.2f degrees per 30 m, over %.2f m",
                        toolface,
                        doglegSeverity,
                        length);
    }
}
