package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A hole whose truth is known: a straight line on its core, carried down by rotations of Hipparchus 4.0.3, and what a geologist
 * would read of the line, of the sides and of structures in the ground. Nothing here asks the library for an angle.
 */
final class TrueHole {

    static final CoreDiameter DIAMETER = CoreDiameter.ofMillimetres(63.5);

    private final List<SurveyStation> stations;
    private final Vector3D[] lines;

    /** A structure as it is read, with what it is in the ground. */
    record Reading(Structure structure, PlaneOrientation plane, LineOrientation lineation) {}

    /** The core at one depth: axis, line, and the wall a quarter turn clockwise of the line. */
    private record Core(Vector3D axis, Vector3D line) {
        Vector3D quarter() {
            return axis.crossProduct(line);
        }

        /** Where a direction stands round the core, clockwise from the line looking down-hole, degrees in [0, 360). */
        double angle(Vector3D direction) {
            double angle = Math.toDegrees(
                    Math.atan2(Vector3D.dotProduct(direction, quarter()), Vector3D.dotProduct(direction, line)));
            return (angle + 360) % 360;
        }
    }

    /** The line begins at some wall direction of the first station. */
    TrueHole(List<SurveyStation> stations, RandomGenerator random) {
        this.stations = stations;
        this.lines = new Vector3D[stations.size()];
        Vector3D first = tangent(0);
        Vector3D any = new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
        lines[0] = across(any, first);
        for (int i = 1; i < lines.length; i++) {
            lines[i] = carried(lines[i - 1], tangent(i - 1), tangent(i));
        }
    }

    private Vector3D tangent(int station) {
        return Traces.vector(stations.get(station).direction());
    }

    private static Vector3D across(Vector3D vector, Vector3D axis) {
        return vector.subtract(axis.scalarMultiply(Vector3D.dotProduct(vector, axis)))
                .normalize();
    }

    private static Vector3D carried(Vector3D line, Vector3D from, Vector3D to) {
        return from.distance(to) == 0 ? line : new Rotation(from, to).applyTo(line);
    }

    private Core core(double depth) {
        int upper = 0;
        while (upper + 2 < stations.size() && stations.get(upper + 1).depth() <= depth) {
            upper++;
        }
        double from = stations.get(upper).depth();
        double fraction = (depth - from) / (stations.get(upper + 1).depth() - from);
        Vector3D one = tangent(upper);
        Vector3D other = tangent(upper + 1);
        double dogleg = Vector3D.angle(one, other);
        Vector3D axis = dogleg == 0
                ? one
                : new Vector3D(Math.sin((1 - fraction) * dogleg), one, Math.sin(fraction * dogleg), other).normalize();
        return new Core(axis, carried(lines[upper], one, axis));
    }

    /** A mark of the side nearest to a direction: straight down for the low side, up for the high one, north. */
    OrientationMark mark(double depth, Vector3D towards) {
        Core core = core(depth);
        return OrientationMark.of(depth, core.angle(across(towards, core.axis())), DIAMETER);
    }

    /** A plane of some orientation, with a line in it, as it is read on the core. */
    Reading reading(double depth, BetaConvention convention, RandomGenerator random) {
        Core core = core(depth);
        Vector3D normal = new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).normalize();
        if (Vector3D.dotProduct(normal, core.axis()) < 0) {
            normal = normal.negate();
        }
        double alpha = 90 - Math.toDegrees(Vector3D.angle(normal, core.axis()));
        // the normal leans away from the down-hole end of the long axis
        double beta = core.angle(normal.negate());
        Vector3D longAxis = across(core.axis(), normal);
        Vector3D shortAxis = normal.crossProduct(longAxis);
        double gamma = 360 * random.nextDouble();
        // clockwise looking down-hole, as the normal on the down-hole side points
        Vector3D lineation =
                new Vector3D(Math.cos(Math.toRadians(gamma)), longAxis, Math.sin(Math.toRadians(gamma)), shortAxis);
        Structure structure = new Structure(
                depth,
                "vein",
                alpha,
                OptionalDouble.of(convention.fromHouse(beta)),
                OptionalDouble.of(gamma),
                Map.of());
        return new Reading(
                structure,
                PlaneOrientation.ofNormal(normal.getX(), normal.getY(), normal.getZ()),
                LineOrientation.ofVector(lineation.getX(), lineation.getY(), lineation.getZ()));
    }
}
