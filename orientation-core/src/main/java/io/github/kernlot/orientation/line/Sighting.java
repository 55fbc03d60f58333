package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import java.util.Comparator;
import java.util.List;

/**
 * A mark seen in the hole.
 *
 * @param mark the mark
 * @param angle where this mark puts the drawn line in the carried frame, degrees
 * @param sigma the mark's standard deviation without the bias of the hole, degrees
 */
record Sighting(OrientationMark mark, double angle, double sigma) {

    static Sighting of(OrientationMark mark, HolePath path, WallReference side, MarkNoise noise) {
        // the mark stands for the side, so the drawn line lies -offset from that side
        HoleDirection direction = path.directionAt(mark.depth());
        CoreFrame asMarked = CoreFrame.at(direction, side, -mark.offset());
        double sigma = mark.sigma().orElseGet(() -> noise.sigma(direction, side, mark.diameter()));
        return new Sighting(mark, asMarked.turnFrom(path.carriedFrameAt(mark.depth())), sigma);
    }

    /** All marks of a hole, in the order of depth. */
    static List<Sighting> all(List<OrientationMark> marks, HolePath path, WallReference side, MarkNoise noise) {
        return marks.stream()
                .map(mark -> of(mark, path, side, noise))
                .sorted(Comparator.comparingDouble(Sighting::depth).thenComparingDouble(Sighting::angle))
                .toList();
    }

    double depth() {
        return mark.depth();
    }

    boolean isUsed() {
        return mark.leftOut().isEmpty();
    }
}
