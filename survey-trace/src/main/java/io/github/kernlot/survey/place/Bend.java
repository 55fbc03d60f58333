package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.survey.Curvature;
import io.github.kernlot.survey.DesurveyMethod;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.SurveyStation;
import java.util.List;

/**
 * How a trace bends between two of its breaks.
 *
 * @param curvature the greatest curvature there, radians in a metre
 * @param isPlane whether it is straight or a circular arc
 */
record Bend(double curvature, boolean isPlane) {

    private static final double SEVERITY_LENGTH = 30;

    static Bend of(HoleTrace trace, double from, double to) {
        if (from == to) {
            return new Bend(0, true);
        }
        double middle = from + (to - from) / 2;
        Curvature there = trace.curvatureAt(middle);
        double curvature = Math.toRadians(there.doglegSeverity()) / SEVERITY_LENGTH;
        if (curvature == 0 || !isCylinder(trace, middle)) {
            return new Bend(curvature, true);
        }
        double toolface = there.toolface().orElse(0);
        double build = curvature * Degrees.cos(toolface);
        double turn = curvature * Degrees.sin(toolface);
        double inclination = trace.directionAt(middle).inclination();
        if (turn == 0 || (build == 0 && inclination == 90)) {
            return new Bend(curvature, true);
        }
        // the curvature on a cylinder is hypot(build, c sin^2 I) with the inclination linear in depth
        double sine = Degrees.sin(inclination);
        double greatest = greatestSine(
                trace.directionAt(from).inclination(), trace.directionAt(to).inclination());
        return new Bend(Math.hypot(build, turn * greatest * greatest / (sine * sine)), false);
    }

    private static double greatestSine(double one, double other) {
        boolean isThroughHorizontal = (one - 90) * (other - 90) <= 0;
        return isThroughHorizontal ? 1 : Math.max(Degrees.sin(one), Degrees.sin(other));
    }

    private static boolean isCylinder(HoleTrace trace, double depth) {
        HoleTrace owner = trace;
        while (owner.parent().isPresent() && depth < owner.kickOffDepth().orElseThrow()) {
            owner = owner.parent().get();
        }
        List<SurveyStation> stations = owner.survey().stations();
        return owner.settings().method() == DesurveyMethod.RADIUS_OF_CURVATURE
                && depth < stations.get(stations.size() - 1).depth();
    }
}
