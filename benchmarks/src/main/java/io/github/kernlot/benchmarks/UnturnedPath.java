package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;

/** A hole as one sees it who forgets that a straight scribe turns from the low side. */
record UnturnedPath(HolePath path) implements HolePath {

    @Override
    public HoleDirection directionAt(double depth) {
        return path.directionAt(depth);
    }

    @Override
    public CoreFrame carriedFrameAt(double depth) {
        return CoreFrame.at(path.directionAt(depth), 0);
    }

    @Override
    public Displacement displacementAt(double depth) {
        return path.displacementAt(depth);
    }

    @Override
    public double scribeTurn(double from, double to) {
        return 0;
    }
}
