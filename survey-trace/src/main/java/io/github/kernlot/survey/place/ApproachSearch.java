package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.internal.Vector;
import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.function.DoubleUnaryOperator;

/**
 * The closest approach of two paths, by branch and bound and then by the zeros of the slope of the distance.
 *
 * <p>A piece of length L with the chord c lies within half of {@code sqrt(L^2 - c^2)} of its chord (its points have the sum of their
 * ways to both ends at most L, which is an ellipsoid), and within {@code K L^2 / 8} where its curvature is at most K. So two
 * pieces are no nearer than their chords less the two bulges. Pairs of pieces are halved, the most promising first, until no pair
 * can be nearer than what was found less {@link #TOLERANCE}; nothing is missed by more than that. A second search then takes the least
 * depth of what is as near.
 */
final class ApproachSearch {

    /** Nothing is nearer than what is found by more than this, metres. */
    static final double TOLERANCE = 1e-6;

    /** Places are as near as each other within this, metres. */
    private static final double TIE = 1e-9;

    /** Pieces that bulge by less are as near as their chords, and halving them tells no more, metres. */
    private static final double FLAT = 1e-10;

    private static final double FIRST_STEP = 1e-4;
    private static final double GREATEST_STEP = 50;

    /** How far a sum of ways may be off by rounding, for a piece's length and chord, metres. */
    private static final double ROUNDING = 1e-11;

    private final Legs one;
    private final Legs other;

    ApproachSearch(Legs one, Legs other) {
        this.one = one;
        this.other = other;
    }

    /** A depth on each path and the distance between them. */
    record Link(double depth, double otherDepth, double distance) {}

    /** Some legs of a path, or a part of one leg; {@code bulge} is how far it may lie from its chord. */
    private record Piece(int leg, int legs, double from, Vector start, double to, Vector end, double bulge) {

        static Piece of(Legs path, int leg, int legs, double from, Vector start, double to, Vector end) {
            double length = to - from;
            double chord = end.minus(start).length();
            double slack = Math.max(0, (length - chord) * (length + chord)) + ROUNDING * length;
            double bulge = Math.sqrt(slack) / 2;
            if (legs == 1) {
                bulge = Math.min(bulge, path.curvature(leg) * length * length / 8);
            }
            return new Piece(leg, legs, from, start, to, end, bulge);
        }

        static Piece whole(Legs path) {
            int count = path.count();
            return of(path, 0, count, path.from(), path.wayTo(0), path.to(), path.wayTo(count));
        }

        Piece[] halves(Legs path) {
            if (legs > 1) {
                int upper = legs / 2;
                double middle = path.depth(leg + upper);
                Vector place = path.wayTo(leg + upper);
                return new Piece[] {
                    of(path, leg, upper, from, start, middle, place),
                    of(path, leg + upper, legs - upper, middle, place, to, end)
                };
            }
            double middle = from + (to - from) / 2;
            Vector place = path.way(middle);
            return new Piece[] {of(path, leg, 1, from, start, middle, place), of(path, leg, 1, middle, place, to, end)};
        }

        double length() {
            return to - from;
        }
    }

    /** Two pieces, how near they can be at the least, and how near they are at one pair of depths. */
    private record Pair(Piece one, Piece other, double least, Link link) {}

    Link closest() {
        return refined(leastDepth(refined(nearest())));
    }

    private Link nearest() {
        PriorityQueue<Pair> queue = new PriorityQueue<>(Comparator.comparingDouble(Pair::least));
        Pair start = pair(Piece.whole(one), Piece.whole(other));
        queue.add(start);
        Link best = start.link();
        while (!queue.isEmpty() && queue.peek().least() < best.distance() - TOLERANCE) {
            for (Pair half : halves(queue.remove())) {
                if (half.link().distance() < best.distance()) {
                    best = half.link();
                }
                if (half.least() < best.distance() - TOLERANCE) {
                    queue.add(half);
                }
            }
        }
        return best;
    }

    /** Of all that is as near, the least depth. */
    private Link leastDepth(Link nearest) {
        double limit = nearest.distance() + TIE;
        PriorityQueue<Pair> queue = new PriorityQueue<>(
                Comparator.comparingDouble((Pair pair) -> pair.one().from()).thenComparingDouble(Pair::least));
        queue.add(pair(Piece.whole(one), Piece.whole(other)));
        Link first = nearest;
        while (!queue.isEmpty() && queue.peek().one().from() < first.depth()) {
            Pair pair = queue.remove();
            if (pair.one().bulge() + pair.other().bulge() <= FLAT) {
                continue;
            }
            for (Pair half : halves(pair)) {
                if (half.link().distance() <= limit && half.link().depth() < first.depth()) {
                    first = half.link();
                }
                if (half.least() <= limit && half.one().from() < first.depth()) {
                    queue.add(half);
                }
            }
        }
        return first;
    }

    /** The pair with the piece halved that bulges more; of straight pieces the longer one. */
    private Pair[] halves(Pair pair) {
        Piece mine = pair.one();
        Piece its = pair.other();
        boolean straight = mine.bulge() == 0 && its.bulge() == 0;
        if (straight ? mine.length() >= its.length() : mine.bulge() >= its.bulge()) {
            Piece[] halves = mine.halves(one);
            return new Pair[] {pair(halves[0], its), pair(halves[1], its)};
        }
        Piece[] halves = its.halves(other);
        return new Pair[] {pair(mine, halves[0]), pair(mine, halves[1])};
    }

    private Pair pair(Piece mine, Piece its) {
        Chords chords = Chords.between(mine.start(), mine.end(), its.start(), its.end());
        double depth = mine.from() + chords.onOne() * mine.length();
        double otherDepth = its.from() + chords.onOther() * its.length();
        Link link = link(Math.min(depth, mine.to()), Math.min(otherDepth, its.to()));
        return new Pair(mine, its, Math.max(0, chords.distance() - mine.bulge() - its.bulge()), link);
    }

    private Link link(double depth, double otherDepth) {
        return new Link(
                depth, otherDepth, other.way(otherDepth).minus(one.way(depth)).length());
    }

    /** The depths where the slope of the distance is zero or turns up, beside those that were found. */
    private Link refined(Link found) {
        double depth = foot(at -> along(one, at, other.way(otherFoot(at, found))), found.depth(), one);
        Link refined = link(depth, otherFoot(depth, found));
        return refined.distance() <= found.distance() + ROUNDING ? refined : found;
    }

    private double otherFoot(double depth, Link found) {
        Vector place = one.way(depth);
        return foot(at -> along(other, at, place), found.otherDepth(), other);
    }

    /** How far a place lies behind the point of a path at a depth: the slope of half of the square of the distance. */
    private static double along(Legs path, double depth, Vector place) {
        return path.way(depth).minus(place).dot(path.tangent(depth));
    }

    /** Downhill from a depth to where the slope changes its sign, or to the end of the path. */
    private static double foot(DoubleUnaryOperator slope, double start, Legs path) {
        double begin = slope.applyAsDouble(start);
        // a slope made of rounding alone would lead along parallel paths
        if (Math.abs(begin) <= ROUNDING) {
            return start;
        }
        double sense = -Math.signum(begin);
        double end = sense > 0 ? path.to() : path.from();
        double behind = start;
        for (double step = FIRST_STEP; behind != end && step < GREATEST_STEP; step *= 2) {
            double ahead = sense > 0 ? Math.min(end, behind + step) : Math.max(end, behind - step);
            if (slope.applyAsDouble(ahead) * begin <= 0) {
                return Turns.zero(slope, Math.min(behind, ahead), Math.max(behind, ahead));
            }
            behind = ahead;
        }
        return behind == end ? end : start;
    }
}
