package io.github.kernlot.survey;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A smooth piece of a path. It is asked by the run, the length since its beginning; how far it goes is for the path to know.
 */
abstract sealed class Leg permits StraightLeg, ArcLeg, CylinderLeg {

    /** The depth where it begins, metres. */
    final double from;
    /** Where it begins, from the collar. */
    final Displacement start;
    /** What holds at its first depth: at a station the direction that was measured. */
    final Heading at;
    /** What it begins with just below: another direction than {@code at} where the path has a corner. */
    final Heading begin;
    /** Whether it lies below the last station. */
    final boolean isBeyond;

    Leg(Station station, Heading begin, boolean isBeyond) {
        this.from = station.depth;
        this.start = station.place;
        this.at = station.heading;
        this.begin = begin;
        this.isBeyond = isBeyond;
    }

    /** Where a leg begins. */
    record Station(double depth, Displacement place, Heading heading) {}

    /** The way from the beginning. */
    abstract Vector way(double run);

    /** The direction below the first depth. */
    abstract HoleDirection direction(double run);

    /** The direction below the first depth, and what is carried with it. */
    abstract Heading heading(double run);

    /** The bend at a run where the direction is known. */
    abstract Curvature curvature(double run, HoleDirection there);

    final Displacement place(double run) {
        Vector way = way(run);
        return new Displacement(start.north() + way.north(), start.east() + way.east(), start.down() + way.down());
    }

    final HoleDirection directionAt(double run) {
        return run == 0 ? at.direction() : direction(run);
    }

    final Heading headingAt(double run) {
        return run == 0 ? at : heading(run);
    }
}
