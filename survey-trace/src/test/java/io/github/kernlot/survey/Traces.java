package io.github.kernlot.survey;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.random.RandomGenerator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Traces for tests, and the vectors of Hipparchus to check them by. */
public final class Traces {

    public static final Position COLLAR = Position.ofEastingNorthingElevation(5000, 7000, 300);
    private static final double FAR = 1e6;

    private Traces() {}

    /** A trace of stations written as depth, inclination and azimuth: {@code 0 30 90; 30 31 95}. It reaches as far as one likes. */
    public static HoleTrace of(String stations) {
        return of(stations(stations));
    }

    public static List<SurveyStation> stations(String stations) {
        return Arrays.stream(stations.split(";"))
                .map(text -> text.strip().split(" "))
                .map(row -> SurveyStation.ofInclination(
                        Double.parseDouble(row[0]), Double.parseDouble(row[1]), Double.parseDouble(row[2])))
                .toList();
    }

    public static HoleTrace of(List<SurveyStation> stations) {
        return of(stations, DesurveyMethod.MINIMUM_CURVATURE);
    }

    public static HoleTrace of(List<SurveyStation> stations, DesurveyMethod method) {
        TraceSettings settings = TraceSettings.assumed().withMethod(method).withExtrapolationLimit(FAR);
        return HoleTrace.of(COLLAR, Survey.of(stations, NorthReference.grid()), settings);
    }

    public static HoleTrace of(String stations, DesurveyMethod method) {
        return of(stations(stations), method);
    }

    public static Displacement way(HoleTrace trace, double from, double to) {
        Displacement one = trace.displacementAt(from);
        Displacement other = trace.displacementAt(to);
        return new Displacement(other.north() - one.north(), other.east() - one.east(), other.down() - one.down());
    }

    /** The unit vector of a direction, by the textbook's formula and apart from the library's own. */
    public static Vector3D vector(HoleDirection direction) {
        double inclination = Math.toRadians(direction.inclination());
        double azimuth = Math.toRadians(direction.azimuth());
        return new Vector3D(
                Math.sin(inclination) * Math.cos(azimuth),
                Math.sin(inclination) * Math.sin(azimuth),
                Math.cos(inclination));
    }

    public static Vector3D vector(Displacement way) {
        return new Vector3D(way.north(), way.east(), way.down());
    }

    public static HoleDirection direction(Vector3D vector) {
        return HoleDirection.ofVector(vector.getX(), vector.getY(), vector.getZ());
    }

    /** Stations of a hole that keeps its direction, drifts, turns hard or doubles back almost, in any direction. */
    public static List<SurveyStation> wandering(RandomGenerator random, int count) {
        Vector3D tangent =
                new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).normalize();
        List<SurveyStation> stations = new ArrayList<>();
        double depth = 0;
        for (int i = 0; i < count; i++) {
            stations.add(new SurveyStation(depth, direction(tangent)));
            depth += 1 + 59 * random.nextDouble();
            tangent = turned(tangent, 360 * random.nextDouble(), dogleg(random));
        }
        return stations;
    }

    private static double dogleg(RandomGenerator random) {
        return switch (random.nextInt(5)) {
            case 0 -> 0;
            case 1 -> Math.pow(10, -12 + 9 * random.nextDouble());
            case 2 -> 170 * random.nextDouble();
            default -> 5 * random.nextDouble();
        };
    }

    /** Stations of a hole that wanders by a few degrees from station to station and stays clear of vertical. */
    public static List<SurveyStation> drifting(RandomGenerator random, int count, double leastInclination) {
        List<SurveyStation> stations = new ArrayList<>();
        double span = 180 - 2 * leastInclination;
        double inclination = leastInclination + span * random.nextDouble();
        double azimuth = 360 * random.nextDouble();
        for (int i = 0; i < count; i++) {
            stations.add(SurveyStation.ofInclination(30.0 * i, inclination, azimuth));
            inclination = clamped(inclination + 6 * random.nextDouble() - 3, leastInclination);
            azimuth = (azimuth + 20 * random.nextDouble() - 10 + 360) % 360;
        }
        return stations;
    }

    private static double clamped(double inclination, double least) {
        return Math.max(least, Math.min(180 - least, inclination));
    }

    private static Vector3D turned(Vector3D tangent, double towards, double dogleg) {
        Vector3D across = new Rotation(tangent, Math.toRadians(towards), RotationConvention.VECTOR_OPERATOR)
                .applyTo(tangent.orthogonal());
        return new Rotation(across, Math.toRadians(dogleg), RotationConvention.VECTOR_OPERATOR).applyTo(tangent);
    }

    public static double lastDepth(List<SurveyStation> stations) {
        return stations.get(stations.size() - 1).depth();
    }

    /** Many small pieces of a path's direction added up: by Gauss and Legendre (Hipparchus 4.0.3). */
    public static Vector3D integral(DoubleFunction<HoleDirection> direction, double from, double to) {
        GaussIntegrator integrator = new GaussIntegratorFactory().legendre(30, from, to);
        return new Vector3D(
                integrator.integrate(depth -> vector(direction.apply(depth)).getX()),
                integrator.integrate(depth -> vector(direction.apply(depth)).getY()),
                integrator.integrate(depth -> vector(direction.apply(depth)).getZ()));
    }

    /** How far one angle lies from another round the circle. */
    public static double apart(double one, double other) {
        return Math.abs(Math.IEEEremainder(one - other, 360));
    }
}
