package io.github.kernlot.survey.check;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.survey.SurveyStation;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Holes that wander from station to station, surveyed with noise, all by the vectors of Hipparchus. */
public final class SimulatedHoles {

    private SimulatedHoles() {}

    /** Wander (from station to station) and noise in degrees along each axis. */
    public static List<SurveyStation> sound(
            long seed, int count, double spacing, double inclination, double wander, double noise) {
        Random random = new Random(seed);
        Vector3D tangent = new Vector3D(random.nextDouble() * 2 * Math.PI, Math.PI / 2 - Math.toRadians(inclination));
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            stations.add(new SurveyStation(spacing * i, direction(moved(tangent, noise, random))));
            tangent = moved(tangent, wander, random);
        }
        return stations;
    }

    private static Vector3D moved(Vector3D tangent, double degrees, Random random) {
        double step = Math.toRadians(degrees);
        return new Vector3D(
                        tangent.getX() + step * random.nextGaussian(),
                        tangent.getY() + step * random.nextGaussian(),
                        tangent.getZ() + step * random.nextGaussian())
                .normalize();
    }

    /** A station turned by an angle, towards some side. */
    public static SurveyStation turned(SurveyStation station, double degrees, double towards) {
        HoleDirection direction = station.direction();
        Vector3D tangent = new Vector3D(direction.north(), direction.east(), direction.down());
        Vector3D axis = new Rotation(tangent, Math.toRadians(towards), RotationConvention.VECTOR_OPERATOR)
                .applyTo(tangent.orthogonal());
        return new SurveyStation(
                station.depth(),
                direction(new Rotation(axis, Math.toRadians(degrees), RotationConvention.VECTOR_OPERATOR)
                        .applyTo(tangent)));
    }

    private static HoleDirection direction(Vector3D vector) {
        return HoleDirection.ofVector(vector.getX(), vector.getY(), vector.getZ());
    }
}
