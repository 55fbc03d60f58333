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
    void way(double run, double[] out) {
        out[0] = run * tangent.north();
        out[1] = run * tangent.east();
        out[2] = run * tangent.down();
    }

    @Override
    void angles(double run, double[] out) {
        out[0] = begin.direction().inclination();
        out[1] = begin.direction().azimuth();
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
