package io.github.kernlot.survey;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Vector;

/** A straight piece. */
final class StraightLeg extends Leg {

    private final Vector tangent;

    StraightLeg(Station station, Heading begin, boolean isBeyond) {
        super(station, begin, isBeyond);
        this.tangent = Heading.vector(begin.direction());
    }

    @Override
    Vector way(double run) {
        return tangent.times(run);
    }

    @Override
    HoleDirection direction(double run) {
        return begin.direction();
    }

    @Override
    Heading heading(double run) {
        return begin;
    }

    @Override
    Curvature curvature(double run, HoleDirection there) {
        return Curvature.straight(there);
    }
}
