package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/** A hole that keeps one direction. */
record StraightPath(HoleDirection direction) implements HolePath {

    /** {@code straight -60.0/090.0 (dip/azimuth)}. */
    @Override
    public String toString() {
        return "straight " + direction;
    }

    @Override
    public HoleDirection directionAt(double depth) {
        Require.notNegative("depth", depth, "m");
        return direction;
    }

    @Override
    public CoreFrame carriedFrameAt(double depth) {
        Require.notNegative("depth", depth, "m");
        return CoreFrame.carriedTo(direction);
    }

    @Override
    public Displacement displacementAt(double depth) {
        Vector way = direction.vector().times(Require.notNegative("depth", depth, "m"));
        return new Displacement(way.north(), way.east(), way.down());
    }

    @Override
    public double scribeTurn(double from, double to) {
        Require.notNegative("depth", from, "m");
        Require.notNegative("depth", to, "m");
        if (direction.isVertical()) {
            throw new IllegalArgumentException("a vertical hole has no low side from which a scribe could turn");
        }
        return 0;
    }
}
