package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where the sum of the angles to all vectors, or to all axes, is least. The sum may have several low places, so that the search begins at
 * many: the mean, the lowest of an even lattice and the lowest of the sample. Of places that are as low it takes the nearest to the mean.
 */
final class SphericalMedian {

    private static final int LATTICE = 300;
    private static final int STARTS = 6;
    private static final double SAME = 1e-12;
    private static final double NEAR = 1e-5;

    private final List<Vector> vectors;
    private final boolean axial;

    SphericalMedian(List<Vector> vectors, boolean axial) {
        this.vectors = vectors;
        this.axial = axial;
    }

    Vector from(Vector mean) {
        int stride = Math.max(1, vectors.size() / LATTICE);
        List<Vector> starts = new ArrayList<>(List.of(mean));
        starts.addAll(lowest(IntStream.range(0, LATTICE).mapToObj(SphericalMedian::lattice)));
        starts.addAll(lowest(
                IntStream.iterate(0, i -> i < vectors.size(), i -> i + stride).mapToObj(vectors::get)));
        List<Vector> ends = starts.stream().map(this::descended).toList();
        double least = ends.stream().mapToDouble(this::sum).min().orElseThrow();
        Vector nearest = ends.stream()
                .filter(end -> sum(end) <= least + SAME * vectors.size())
                .min(Comparator.comparingDouble(end -> turned(end, mean).angleTo(mean)))
                .orElseThrow();
        return axial ? Unit.towards(nearest, mean) : nearest;
    }

    private List<Vector> lowest(Stream<Vector> places) {
        return places.sorted(Comparator.comparingDouble(this::sum))
                .limit(STARTS)
                .toList();
    }

    private static Vector lattice(int i) {
        double down = 1 - (2 * i + 1.0) / LATTICE;
        return Vector.ofInclination(Math.toDegrees(Math.acos(down)), 222.49223594996212 * i);
    }

    private Vector turned(Vector vector, Vector towards) {
        return axial ? Unit.towards(vector, towards) : vector;
    }

    double sum(Vector place) {
        double sum = 0;
        for (Vector vector : vectors) {
            sum += turned(vector, place).angleTo(place);
        }
        return sum;
    }

    /** Newton's steps where the sum is curved upwards and goes down by them, else those of Weiszfeld's weighted mean. */
    private Vector descended(Vector start) {
        Vector here = start;
        double sum = sum(here);
        for (int round = 0; round < 300; round++) {
            Slope slope = new Slope(here);
            Vector next = lower(here, slope.newton(), sum);
            if (next.equals(here)) {
                next = lower(here, slope.weighted(), sum);
            }
            if (next.equals(here)) {
                // what the sum can no longer tell, its slope can
                here = stepped(here, slope.newton());
                break;
            }
            here = next;
            sum = sum(here);
        }
        return snapped(here, sum);
    }

    /** A vector of the sample that is all but reached, where the sum has a corner that steps only creep up to. */
    private Vector snapped(Vector place, double sum) {
        return vectors.stream()
                .map(vector -> turned(vector, place))
                .filter(vector -> vector.angleTo(place) < NEAR && sum(vector) <= sum + SAME)
                .min(Comparator.comparingDouble(vector -> vector.angleTo(place)))
                .orElse(place);
    }

    private Vector lower(Vector here, Vector step, double sum) {
        double length = step.length();
        if (!(length > 1e-16)) {
            return here;
        }
        Vector way = step.times(1 / length);
        for (double angle = Math.min(length, 0.5); angle > 1e-12; angle /= 4) {
            Vector next = stepped(here, way.times(angle));
            // less by rounding is not less: where the sum is level the search stays
            if (sum(next) < sum * (1 - 1e-15)) {
                return next;
            }
        }
        return here;
    }

    private static Vector stepped(Vector here, Vector step) {
        double angle = step.length();
        return angle > 0 && angle < 1
                ? here.times(Math.cos(angle))
                        .plus(step.times(Math.sin(angle) / angle))
                        .unit()
                : here;
    }

    /** The pull of all vectors at a place, in the plane that touches the sphere there. */
    private final class Slope {

        private final Vector one;
        private final Vector other;
        private double pullOne;
        private double pullOther;
        private double oneOne;
        private double oneOther;
        private double otherOther;
        private double weights;
        private int here;

        Slope(Vector place) {
            one = Unit.across(place);
            other = place.cross(one);
            for (Vector vector : vectors) {
                add(turned(vector, place), place);
            }
        }

        private void add(Vector vector, Vector place) {
            double x = vector.dot(one);
            double y = vector.dot(other);
            double sine = Math.hypot(x, y);
            if (sine < 1e-14) {
                here += vector.dot(place) > 0 ? 1 : 0;
                return;
            }
            double cotangent = vector.dot(place) / sine;
            pullOne += x / sine;
            pullOther += y / sine;
            oneOne += cotangent * y * y / (sine * sine);
            oneOther -= cotangent * x * y / (sine * sine);
            otherOther += cotangent * x * x / (sine * sine);
            weights += 1 / Math.atan2(sine, vector.dot(place));
        }

        Vector newton() {
            double determinant = oneOne * otherOther - oneOther * oneOther;
            if (here > 0 || !(determinant > 1e-12 * (oneOne + otherOther) * (oneOne + otherOther)) || oneOne < 0) {
                return new Vector(0, 0, 0);
            }
            return one.times((otherOther * pullOne - oneOther * pullOther) / determinant)
                    .plus(other.times((oneOne * pullOther - oneOther * pullOne) / determinant));
        }

        Vector weighted() {
            double pull = Math.hypot(pullOne, pullOther);
            double share = pull > here ? (1 - here / pull) / weights : 0;
            return one.times(share * pullOne).plus(other.times(share * pullOther));
        }
    }
}
