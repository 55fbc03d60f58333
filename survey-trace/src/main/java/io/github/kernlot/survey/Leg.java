package io.github.kernlot.survey;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;

/**
 * A smooth piece of a path. It is asked by the run, the length since its beginning; how far it goes is for the path to know. Answers
 * are written into an array of the caller, so that a million of them need no memory.
 */
abstract sealed class Leg permits StraightLeg, ArcLeg, CylinderLeg {

    /** The depth where it begins, metres. */
    final double from;
    /** What holds at its first depth: at a station the direction that was measured. */
    final Heading at;
    /** What it begins with just below: another direction than {@code at} where the path has a corner. */
    final Heading begin;
    /** Whether it lies below the last station. */
    final boolean isBeyond;

    final double startNorth;
    final double startEast;
    final double startDown;

    Leg(Station station, Heading begin, boolean isBeyond) {
        this.from = station.depth;
        this.at = station.heading;
        this.begin = begin;
        this.isBeyond = isBeyond;
        this.startNorth = station.place.north();
        this.startEast = station.place.east();
        this.startDown = station.place.down();
    }

    /** Where a leg begins. */
    record Station(double depth, Displacement place, Heading heading) {}

    /** Writes the way from the beginning: north, east, down, metres. */
    abstract void way(double run, double[] out);

    /** Fills rows of places, all of whose depths lie on the leg; the array is for work. */
    void places(
            double[] depths,
            int row,
            int end,
            Position collar,
            double[] easting,
            double[] northing,
            double[] elevation,
            double[] work) {
        for (int i = row; i < end; i++) {
            way(depths[i] - from, work);
            easting[i] = collar.easting() + (startEast + work[1]);
            northing[i] = collar.northing() + (startNorth + work[0]);
            elevation[i] = collar.elevation() - (startDown + work[2]);
        }
    }

    /** Fills rows of directions, all of whose depths lie on the leg; the array is for work. */
    void angles(double[] depths, int row, int end, double[] inclination, double[] azimuth, double[] work) {
        for (int i = row; i < end; i++) {
            double run = depths[i] - from;
            if (run == 0) {
                inclination[i] = at.direction().inclination();
                azimuth[i] = at.direction().azimuth();
            } else {
                angles(run, work);
                inclination[i] = work[0];
                azimuth[i] = work[1];
            }
        }
    }

    /** Writes the inclination and the azimuth below the first depth, degrees. */
    abstract void angles(double run, double[] out);

    /** The direction below the first depth, and what is carried with it. */
    abstract Heading heading(double run);

    /** The bend at a run where the direction is known. */
    abstract Curvature curvature(double run, HoleDirection there);

    final Displacement place(double run) {
        double[] way = new double[3];
        way(run, way);
        return new Displacement(startNorth + way[0], startEast + way[1], startDown + way[2]);
    }

    /** The direction below the first depth. */
    final HoleDirection direction(double run) {
        double[] angles = new double[3];
        angles(run, angles);
        return new HoleDirection(angles[0], angles[1]);
    }

    final HoleDirection directionAt(double run) {
        return run == 0 ? at.direction() : direction(run);
    }

    final Heading headingAt(double run) {
        return run == 0 ? at : heading(run);
    }
}
