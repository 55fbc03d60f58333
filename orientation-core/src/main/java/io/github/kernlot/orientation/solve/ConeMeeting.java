package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Where two cones of poles meet. Each cone has two halves, so they may meet in up to four planes; which of them is the true one the
 * two alphas do not say (Dutch, S., Strike and dip from inclined borehole data, has the count).
 *
 * @param kind how they meet
 * @param planes the planes whose poles lie on both
 * @param gap by how much the two angles together would have to change for the cones to touch, degrees; 0 where they meet
 */
public record ConeMeeting(Kind kind, List<PlaneOrientation> planes, double gap) {

    /** How two cones of poles meet. */
    public enum Kind {
        /** They cut each other: two planes or four; three where one half only touches, one where both alphas are 0. */
        CROSSING,
        /** They only touch: a small error of an angle moves these planes far, or removes them. */
        TOUCHING,
        /** They do not meet: the angles contradict each other, or the planes are not parallel. */
        APART,
        /** They share their axis: either they contradict each other, by the gap, or the second says nothing new. */
        PARALLEL
    }

    /** Degrees of rounding within which sides of a spherical triangle just close. */
    private static final double ROUNDING = 1e-11;

    /** Axes nearer than this, in degrees, are one. */
    private static final double ONE_AXIS = 1e-9;

    /** Keeps the list for itself. */
    public ConeMeeting {
        planes = List.copyOf(planes);
    }

    static ConeMeeting of(Vector first, double firstAlpha, Vector second, double secondAlpha) {
        double apart = Math.toDegrees(first.angleTo(second));
        if (apart < ONE_AXIS || apart > 180 - ONE_AXIS) {
            return ofOneAxis(first, firstAlpha, secondAlpha);
        }
        // the pole is taken on the side of the first axis; it lies on either half of the second cone
        Triangle near = new Triangle(apart, 90 - firstAlpha, 90 - secondAlpha);
        Triangle far = new Triangle(apart, 90 - firstAlpha, 90 + secondAlpha);
        List<PlaneOrientation> planes = new ArrayList<>();
        for (Vector pole : near.poles(first, second)) {
            add(planes, pole);
        }
        for (Vector pole : far.poles(first, second)) {
            add(planes, pole);
        }
        Kind kind = near.slack() > ROUNDING || far.slack() > ROUNDING
                ? Kind.CROSSING
                : planes.isEmpty() ? Kind.APART : Kind.TOUCHING;
        double gap = planes.isEmpty() ? -Math.max(near.slack(), far.slack()) : 0;
        return new ConeMeeting(kind, planes, gap);
    }

    private static ConeMeeting ofOneAxis(Vector axis, double firstAlpha, double secondAlpha) {
        if (firstAlpha > 90 - ROUNDING && secondAlpha > 90 - ROUNDING) {
            return new ConeMeeting(Kind.TOUCHING, List.of(Poles.plane(axis)), 0);
        }
        return new ConeMeeting(Kind.PARALLEL, List.of(), Math.abs(firstAlpha - secondAlpha));
    }

    /** At alpha 0 both halves of a cone are one, and every plane comes twice. */
    private static void add(List<PlaneOrientation> planes, Vector pole) {
        PlaneOrientation plane = Poles.plane(pole);
        if (planes.stream().noneMatch(known -> known.angleTo(plane) < ONE_AXIS)) {
            planes.add(plane);
        }
    }

    /**
     * The spherical triangle of two axes and a pole, by its three sides in degrees: from axis to axis, from the first axis to the
     * pole and from the second axis to the pole.
     */
    private record Triangle(double apart, double first, double second) {

        private double half() {
            return (apart + first + second) / 2;
        }

        /** By how much the sides close: negative where they do not. */
        double slack() {
            double half = half();
            return 2 * Math.min(Math.min(half - apart, half - first), Math.min(half - second, 180 - half));
        }

        List<Vector> poles(Vector firstAxis, Vector secondAxis) {
            if (slack() < -ROUNDING) {
                return List.of();
            }
            Vector towards = secondAxis.across(firstAxis).unit();
            Vector aside = firstAxis.cross(towards);
            double angle = slack() <= ROUNDING ? touchingAngle() : angle();
            Vector middle =
                    firstAxis.times(Degrees.cos(first)).plus(towards.times(Degrees.sin(first) * Degrees.cos(angle)));
            Vector away = aside.times(Degrees.sin(first) * Degrees.sin(angle));
            return slack() <= ROUNDING ? List.of(middle) : List.of(middle.plus(away), middle.minus(away));
        }

        /** The angle at the first axis, by half angles, which keeps its digits where the triangle is flat. */
        private double angle() {
            double half = half();
            double above = Degrees.sin(half - apart) * Degrees.sin(half - first);
            double below = Degrees.sin(half) * Degrees.sin(half - second);
            return 2 * Degrees.atan2(Math.sqrt(Math.max(0, above)), Math.sqrt(Math.max(0, below)));
        }

        private double touchingAngle() {
            double half = half();
            boolean towards = Math.min(half - apart, half - first) <= Math.min(half - second, 180 - half);
            return towards ? 0 : 180;
        }
    }

    /** How they meet and where: {@code crossing: 55.0/130.0 (dip/dip direction), ...}. */
    @Override
    public String toString() {
        String how = kind.name().toLowerCase(Locale.ROOT);
        return planes.isEmpty()
                ? how + ", gap " + Degrees.text(gap)
                : how + ": " + planes.stream().map(PlaneOrientation::toString).collect(Collectors.joining(", "));
    }
}
