package io.github.kernlot.survey.sensor;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;

/** The axes of a tool in the ground: unit vectors north, east, down. */
record ToolAxes(Vector x, Vector y, Vector z) {

    /** A tool whose y axis lies so far clockwise of the high side. */
    static ToolAxes of(HoleDirection direction, double roll) {
        double inclination = direction.inclination();
        double azimuth = direction.azimuth();
        Vector z = Vector.ofInclination(inclination, azimuth);
        // d z / dI, which at inclination 0 lies at the azimuth; sines by degrees, so that nothing is left at 90 degrees
        Vector high = new Vector(
                Degrees.cos(inclination) * Degrees.cos(azimuth),
                Degrees.cos(inclination) * Degrees.sin(azimuth),
                -Degrees.sin(inclination));
        Vector right = new Vector(-Degrees.sin(azimuth), Degrees.cos(azimuth), 0);
        double cosine = Degrees.cos(roll);
        double sine = Degrees.sin(roll);
        return new ToolAxes(
                high.times(sine).minus(right.times(cosine)), high.times(cosine).plus(right.times(sine)), z);
    }

    /** The components of a vector of the ground along x, y and z. */
    Vector inTool(Vector ground) {
        return new Vector(ground.dot(x), ground.dot(y), ground.dot(z));
    }
}
