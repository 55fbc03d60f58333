package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The errors of a survey by its sigmas alone: one independent error for each station, and one that all stations of a hole share.
 * Both work on the direction: along the dip by the dip sigma, sideways by {@code sqrt((azimuth sigma sin I)^2 + dip sigma^2)},
 * since no tool knows the azimuth of a vertical hole.
 *
 * @param azimuth sigma of the azimuth of one station, degrees
 * @param dip sigma of the dip of one station, degrees
 * @param azimuthBias sigma of what the azimuths of a hole share, degrees
 * @param dipBias sigma of what the dips of a hole share, degrees
 * @param own what single stations have instead of the first two; an azimuth sigma of a station's own is not joined by its dip sigma
 */
public record SurveySigmas(double azimuth, double dip, double azimuthBias, double dipBias, List<StationSigma> own) {

    private static final String UNIT = "sigma";

    /**
     * Checks the sigmas and copies the list.
     *
     * @throws IllegalArgumentException if a sigma is negative or not finite, or two of the list share a depth
     */
    public SurveySigmas {
        azimuth = Require.notNegative("azimuth sigma", azimuth, "degrees");
        dip = Require.notNegative("dip sigma", dip, "degrees");
        azimuthBias = Require.notNegative("bias sigma of azimuths", azimuthBias, "degrees");
        dipBias = Require.notNegative("bias sigma of dips", dipBias, "degrees");
        own = List.copyOf(own);
        byDepth(own);
    }

    private static Map<Double, StationSigma> byDepth(List<StationSigma> own) {
        Map<Double, StationSigma> found = new HashMap<>();
        for (StationSigma sigma : own) {
            if (found.put(sigma.depth(), sigma) != null) {
                throw new IllegalArgumentException(
                        "two stations with sigmas of their own at " + sigma.depth() + " m; expected one");
            }
        }
        return found;
    }

    /**
     * Sigmas for all stations alike.
     *
     * @param azimuth sigma of the azimuth of one station, degrees
     * @param dip sigma of the dip of one station, degrees
     * @param azimuthBias sigma of what the azimuths of a hole share, degrees
     * @param dipBias sigma of what the dips of a hole share, degrees
     * @return the sigmas
     * @throws IllegalArgumentException if one is negative or not finite
     */
    public static SurveySigmas of(double azimuth, double dip, double azimuthBias, double dipBias) {
        return new SurveySigmas(azimuth, dip, azimuthBias, dipBias, List.of());
    }

    /**
     * What is assumed until a user says better: 1.0 and 0.3 degrees, biases 0.5 and 0.1 degrees. Not a statement about any tool.
     *
     * @return the sigmas
     */
    public static SurveySigmas assumed() {
        return of(1.0, 0.3, 0.5, 0.1);
    }

    /**
     * These sigmas with others for single stations.
     *
     * @param stations what they have of their own
     * @return the sigmas
     * @throws IllegalArgumentException if two share a depth
     */
    public SurveySigmas withStations(List<StationSigma> stations) {
        return new SurveySigmas(azimuth, dip, azimuthBias, dipBias, stations);
    }

    /**
     * The errors as a model of four sources: dip, azimuth, and the biases of both.
     *
     * @return the model
     */
    public SurveyErrorModel model() {
        Map<Double, StationSigma> stations = byDepth(own);
        return new SurveyErrorModel(
                "sigmas of the survey",
                List.of(
                        source("survey dip", PropagationMode.RANDOM, point -> point.inclined(dip(at(stations, point)))),
                        source(
                                "survey azimuth",
                                PropagationMode.RANDOM,
                                point -> point.turned(sideways(at(stations, point), point))),
                        source("survey dip bias", PropagationMode.PER_WELL, point -> point.inclined(dipBias)),
                        source(
                                "survey azimuth bias",
                                PropagationMode.PER_WELL,
                                point -> point.turned(Math.hypot(azimuthBias * sine(point), dipBias)))));
    }

    private static Optional<StationSigma> at(Map<Double, StationSigma> stations, SurveyedPoint point) {
        return Optional.ofNullable(stations.get(point.depth()));
    }

    private double dip(Optional<StationSigma> station) {
        return station.map(StationSigma::dip).orElse(OptionalDouble.empty()).orElse(dip);
    }

    private double sideways(Optional<StationSigma> station, SurveyedPoint point) {
        OptionalDouble alone = station.map(StationSigma::azimuth).orElse(OptionalDouble.empty());
        return alone.isPresent() ? alone.getAsDouble() * sine(point) : Math.hypot(azimuth * sine(point), dip(station));
    }

    private static double sine(SurveyedPoint point) {
        return Degrees.sin(point.direction().inclination());
    }

    private static SurveyErrorSource source(String name, PropagationMode mode, ErrorWeighting weighting) {
        return new SurveyErrorSource(name, 1, UNIT, mode, weighting);
    }

    /** The sigmas: {@code azimuth 1.0, dip 0.3, biases 0.5 and 0.1 degrees}. */
    @Override
    public String toString() {
        String alone = own.isEmpty() ? "" : ", " + own.size() + " stations with their own";
        return "azimuth " + azimuth + ", dip " + dip + ", biases " + azimuthBias + " and " + dipBias + " degrees"
                + alone;
    }
}
