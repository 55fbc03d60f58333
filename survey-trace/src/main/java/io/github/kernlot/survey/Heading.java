package io.github.kernlot.survey;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;

/**
 * The direction of a hole and what is carried with it.
 *
 * @param direction the direction
 * @param carried the frame carried without twist from the collar
 * @param turn how far a scribe has turned since the collar, degrees, not wrapped
 */
record Heading(HoleDirection direction, CoreFrame carried, double turn) {

    /** Where the carrying begins. */
    static Heading start(HoleDirection direction) {
        return new Heading(direction, CoreFrame.carriedTo(direction), 0);
    }

    static Vector vector(HoleDirection direction) {
        return Vector.ofInclination(direction.inclination(), direction.azimuth());
    }

    /** Carried on by the smallest rotation: along an arc, or round a corner. */
    Heading turnedTo(HoleDirection to) {
        return turnedTo(to, Degrees.wrap180(to.azimuth() - direction.azimuth()));
    }

    /**
     * Carried on by the smallest rotation, which turns the azimuth by what is given: where that is half a turn, rounding must not
     * choose another way at each depth.
     */
    Heading turnedTo(HoleDirection to, double azimuthTurn) {
        return to.equals(direction)
                ? this
                : new Heading(to, carried.carriedAlong(to), turn + scribeTurn(to, azimuthTurn));
    }

    /** The turn of a scribe along the arc to another direction (docs/mathematics.md, section 5). */
    private double scribeTurn(HoleDirection to, double azimuthTurn) {
        double mean = (direction.inclination() + to.inclination()) / 2;
        double halfBuild = (to.inclination() - direction.inclination()) / 2;
        return -2
                * Degrees.atan2(
                        Degrees.sin(azimuthTurn / 2) * Degrees.cos(mean),
                        Degrees.cos(azimuthTurn / 2) * Degrees.cos(halfBuild));
    }
}
