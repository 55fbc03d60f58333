package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.SurveyStation;
import java.util.Arrays;
import java.util.List;

/**
 * Minimum curvature as one would write it down: what does not depend on the depth asked for is worked out once for each interval,
 * the rest is a binary search, the textbook's formula by the functions of Math, and a new object for each answer.
 */
final class PlainTrace {

    /** A place with the direction there. */
    record Answer(Position position, HoleDirection direction) {}

    private final double[] depths;
    private final double[][] tangents;
    private final double[][] places;
    private final double[] doglegs;

    PlainTrace(Position collar, List<SurveyStation> stations) {
        int count = stations.size();
        depths = stations.stream().mapToDouble(SurveyStation::depth).toArray();
        tangents = new double[count][];
        places = new double[count][];
        doglegs = new double[count];
        places[0] = new double[] {collar.northing(), collar.easting(), -collar.elevation()};
        for (int i = 0; i < count; i++) {
            HoleDirection direction = stations.get(i).direction();
            double inclination = Math.toRadians(direction.inclination());
            double azimuth = Math.toRadians(direction.azimuth());
            tangents[i] = new double[] {
                Math.sin(inclination) * Math.cos(azimuth),
                Math.sin(inclination) * Math.sin(azimuth),
                Math.cos(inclination)
            };
        }
        for (int i = 0; i + 1 < count; i++) {
            doglegs[i] = dogleg(tangents[i], tangents[i + 1]);
            places[i + 1] = place(i, 1, tangents[i + 1]);
        }
    }

    private static double dogleg(double[] one, double[] other) {
        double north = one[1] * other[2] - one[2] * other[1];
        double east = one[2] * other[0] - one[0] * other[2];
        double down = one[0] * other[1] - one[1] * other[0];
        double dot = one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
        return Math.atan2(Math.sqrt(north * north + east * east + down * down), dot);
    }

    private int arc(double depth) {
        int found = Arrays.binarySearch(depths, depth);
        return Math.min(found >= 0 ? found : -found - 2, depths.length - 2);
    }

    private double fraction(int arc, double depth) {
        return (depth - depths[arc]) / (depths[arc + 1] - depths[arc]);
    }

    /** t(f) = (sin((1-f)D) t1 + sin(fD) t2) / sin D. */
    private double[] tangent(int arc, double fraction) {
        double dogleg = doglegs[arc];
        if (dogleg == 0) {
            return tangents[arc];
        }
        double whole = Math.sin(dogleg);
        double upper = Math.sin((1 - fraction) * dogleg) / whole;
        double lower = Math.sin(fraction * dogleg) / whole;
        double[] tangent = new double[3];
        for (int i = 0; i < 3; i++) {
            tangent[i] = upper * tangents[arc][i] + lower * tangents[arc + 1][i];
        }
        return tangent;
    }

    /** r(f) = (L/D) tan(fD/2) (t1 + t(f)). */
    private double[] place(int arc, double fraction, double[] tangent) {
        double length = depths[arc + 1] - depths[arc];
        double dogleg = doglegs[arc];
        double half = length * (dogleg == 0 ? fraction / 2 : Math.tan(fraction * dogleg / 2) / dogleg);
        double[] place = new double[3];
        for (int i = 0; i < 3; i++) {
            place[i] = places[arc][i] + half * (tangents[arc][i] + tangent[i]);
        }
        return place;
    }

    Position positionAt(double depth) {
        int arc = arc(depth);
        double fraction = fraction(arc, depth);
        double[] place = place(arc, fraction, tangent(arc, fraction));
        return new Position(place[1], place[0], -place[2]);
    }

    Answer answerAt(double depth) {
        int arc = arc(depth);
        double fraction = fraction(arc, depth);
        double[] tangent = tangent(arc, fraction);
        double[] place = place(arc, fraction, tangent);
        double inclination =
                Math.toDegrees(Math.atan2(Math.sqrt(tangent[0] * tangent[0] + tangent[1] * tangent[1]), tangent[2]));
        double azimuth = Math.toDegrees(Math.atan2(tangent[1], tangent[0]));
        return new Answer(
                new Position(place[1], place[0], -place[2]),
                new HoleDirection(inclination, azimuth < 0 ? azimuth + 360 : azimuth));
    }
}
