package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A mark seen in the hole.
 *
 * @param mark the mark
 * @param angle where this mark puts the drawn line in the carried frame, degrees; 0 where its side does not exist
 * @param sigma the mark's standard deviation without the bias of the hole, degrees; infinite where its side does not exist
 * @param isWitness whether it is no mark of a crew but the stand-in of a structure that speaks for the line
 */
record Sighting(OrientationMark mark, double angle, double sigma, boolean isWitness) {

    /** A mark of a crew. */
    Sighting(OrientationMark mark, double angle, double sigma) {
        this(mark, angle, sigma, false);
    }

    /**
     * All marks of a hole in the order of depth.
     *
     * @throws IllegalArgumentException if the path does not reach a mark, or the side of a mark that is used does not exist there
     */
    static List<Sighting> all(List<OrientationMark> marks, HolePath path, WallReference side, MarkNoise noise) {
        return marks.stream()
                .map(mark -> of(mark, path, side, noise))
                .sorted(Comparator.comparingDouble(Sighting::depth).thenComparingDouble(Sighting::angle))
                .toList();
    }

    private static Sighting of(OrientationMark mark, HolePath path, WallReference side, MarkNoise noise) {
        HoleDirection direction = path.directionAt(mark.depth());
        if (mark.leftOut().isPresent() && !side.existsIn(direction)) {
            return new Sighting(mark, 0, Double.POSITIVE_INFINITY);
        }
        CoreFrame asMarked = mark.frameBy(path, side);
        double sigma = mark.sigma().orElseGet(() -> noise.sigma(direction, side, mark.diameter()));
        return new Sighting(mark, asMarked.turnFrom(path.carriedFrameAt(mark.depth())), sigma);
    }

    double depth() {
        return mark.depth();
    }

    boolean isUsed() {
        return mark.leftOut().isEmpty();
    }

    /** The offset at which the mark would put the line at an angle of the carried frame; none where its side does not exist. */
    OptionalDouble offsetFor(double lineAngle) {
        return Double.isInfinite(sigma)
                ? OptionalDouble.empty()
                : OptionalDouble.of(Degrees.wrap360(mark.offset() + angle - lineAngle));
    }
}
