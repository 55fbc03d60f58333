package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where the sum of the angles to all vectors, or to all axes, is least. The sum may have several low places, so that the search begins at
 * many: the mean, the lowest of the sample, the lowest of an even lattice and a ring about the best of all these. Of places that are as low it takes the nearest to the mean.
 */
final class SphericalMedian {

    private static final int LATTICE = 300;
    private static final int STARTS = 24;
    private static final int ROUNDS = 300;
    private static final double SAME = 1e-12;
    private static final double NEAR = 1e-5;

    /** After so short a step of Newton's the next is nothing. */
    private static final double SETTLED = 1e-7;

    /** So long a step may be needed where the sum is level to its last digit; a longer one tells of a corner beside the place. */
    private static final double FLAT = 1e-2;

    /** The longest step away from a vector of the sample. */
    private static final double OFF = 0.1;

    private final List<Vector> vectors;
    private final boolean axial;

    SphericalMedian(List<Vector> vectors, boolean axial) {
        this.vectors = vectors;
        this.axial = axial;
    }

    Vector from(Vector mean) {
        int stride = Math.max(1, vectors.size() / LATTICE);
        List<Vector> starts = new ArrayList<>(List.of(mean));
        starts.addAll(lowest(
                IntStream.iterate(0, i -> i < vectors.size(), i -> i + stride).mapToObj(vectors::get)));
        starts.addAll(lowest(IntStream.range(0, LATTICE).mapToObj(SphericalMedian::lattice)));
        List<Place> ends = new ArrayList<>();
        starts.forEach(start -> descended(start, ends).ifPresent(ends::add));
        around(lowest(ends)).forEach(start -> descended(start, ends).ifPresent(ends::add));
        double least = lowest(ends).sum();
        Vector nearest = ends.stream()
                .filter(end -> end.sum() <= least + SAME * vectors.size())
                .map(Place::vector)
                .min(Comparator.comparingDouble(end -> turned(end, mean).angleTo(mean)))
                .orElseThrow();
        return axial ? Unit.towards(nearest, mean) : nearest;
    }

    private static Place lowest(List<Place> places) {
        return places.stream().min(Comparator.comparingDouble(Place::sum)).orElseThrow();
    }

    /** The sum has an edge a quarter turn from each axis, and a lower place may lie just beyond one. */
    private static List<Vector> around(Place place) {
        Vector one = Unit.across(place.vector());
        Vector other = place.vector().cross(one);
        return DoubleStream.of(1e-4, 1e-3, 1e-2, 1e-1)
                .boxed()
                .flatMap(angle -> IntStream.range(0, 8)
                        .mapToObj(i ->
                                one.times(angle * Degrees.cos(45 * i)).plus(other.times(angle * Degrees.sin(45 * i)))))
                .map(step -> stepped(place.vector(), step))
                .toList();
    }

    private record Place(Vector vector, double sum) {}

    private Place place(Vector vector) {
        return new Place(vector, sum(vector));
    }

    private List<Vector> lowest(Stream<Vector> vectors) {
        return vectors.map(this::place)
                .sorted(Comparator.comparingDouble(Place::sum))
                .limit(STARTS)
                .map(Place::vector)
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

    /**
     * Newton's steps where the sum is curved upwards and goes down by them, else those of Weiszfeld's weighted mean, until a place is low.
     *
     * @return the place, if it is not one of those found before
     */
    private Optional<Place> descended(Vector start, List<Place> ends) {
        Vector here = start;
        for (int round = 0; round < ROUNDS; round++) {
            here = snapped(here);
            double sum = sum(here);
            if (isNearOneOf(ends, here)) {
                return Optional.empty();
            }
            Slope slope = new Slope(here);
            Vector newton = slope.newton();
            Vector next = newton.length() < SETTLED ? here : lower(here, newton, sum);
            if (next.equals(here) && newton.length() == 0) {
                next = lower(here, slope.weighted(), sum);
            }
            if (next.equals(here)) {
                // what the sum can no longer tell, its slope can
                here = newton.length() < FLAT ? stepped(here, newton) : here;
                break;
            }
            here = next;
        }
        return Optional.of(place(snapped(here)));
    }

    private boolean isNearOneOf(List<Place> ends, Vector place) {
        return ends.stream().anyMatch(end -> turned(end.vector(), place).angleTo(place) < NEAR);
    }

    /** A vector of the sample that is all but reached, where the sum has a corner that steps only creep up to. */
    private Vector snapped(Vector place) {
        double sum = sum(place);
        return vectors.stream()
                .map(vector -> turned(vector, place))
                .filter(vector -> vector.angleTo(place) < NEAR && sum(vector) <= sum)
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
            // away from a vector of the sample the length of the way is not known beforehand
            double share = here > 0 ? (pull > here ? OFF / pull : 0) : 1 / weights;
            return one.times(share * pullOne).plus(other.times(share * pullOther));
        }
    }
}
