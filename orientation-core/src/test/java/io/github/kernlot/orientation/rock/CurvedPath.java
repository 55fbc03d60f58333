package io.github.kernlot.orientation.rock;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;

/** A hole that builds up along one arc in a vertical plane: inclination start + rate times depth. */
record CurvedPath(double start, double rate, double azimuth) implements HolePath {

    @Override
    public HoleDirection directionAt(double depth) {
        return HoleDirection.ofInclination(start + rate * depth, azimuth);
    }

    @Override
    public CoreFrame carriedFrameAt(double depth) {
        return CoreFrame.carriedTo(directionAt(0)).carriedAlong(directionAt(depth));
    }

    @Override
    public Displacement displacementAt(double depth) {
        double curve = Math.toRadians(rate);
        double from = Math.toRadians(start);
        double to = from + curve * depth;
        double across = (Math.cos(from) - Math.cos(to)) / curve;
        double turn = Math.toRadians(azimuth);
        return new Displacement(
                across * Math.cos(turn), across * Math.sin(turn), (Math.sin(to) - Math.sin(from)) / curve);
    }

    @Override
    public double scribeTurn(double from, double to) {
        return 0;
    }
}
