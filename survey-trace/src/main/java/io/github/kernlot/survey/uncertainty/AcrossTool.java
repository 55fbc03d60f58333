package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Vector;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/** Errors of a pair of sensors across the tool, freed of its toolface (docs/survey-uncertainty.md section 4). */
final class AcrossTool {

    private AcrossTool() {}

    static UnitShift shift(Vector tangent, double factor) {
        return new UnitShift(0, tangent.north() * factor, tangent.east() * factor, tangent.down() * factor);
    }

    static List<SurveyErrorSource> bias(
            String name, double sigma, String unit, BiFunction<SurveyedPoint, Vector, UnitShift> effect) {
        return List.of(
                source(name + ", high side", sigma, unit, point -> effect.apply(point, point.highSide())),
                source(name + ", right", sigma, unit, point -> effect.apply(point, point.right())));
    }

    /**
     * The mean m of two scale errors, and their half difference d that turns with twice the toolface: m and d have the variance
     * sigma^2 / 2, d cos 2T and d sin 2T over all toolfaces a half of it.
     */
    static List<SurveyErrorSource> scale(
            String name,
            double sigma,
            Function<SurveyedPoint, Vector> measured,
            BiFunction<SurveyedPoint, Vector, UnitShift> effect) {
        return List.of(
                source(
                        name + ", mean across",
                        sigma / Math.sqrt(2),
                        "",
                        point -> effect.apply(point, mixed(point, measured.apply(point), 1, 1, 0))),
                source(
                        name + ", difference across",
                        sigma / 2,
                        "",
                        point -> effect.apply(point, mixed(point, measured.apply(point), 1, -1, 0))),
                source(
                        name + ", crossed",
                        sigma / 2,
                        "",
                        point -> effect.apply(point, mixed(point, measured.apply(point), 0, 0, 1))));
    }

    /** The part of a vector across the hole, by a symmetric matrix in the frame of high side and right. */
    private static Vector mixed(SurveyedPoint point, Vector measured, double high, double right, double crossed) {
        double onHigh = measured.dot(point.highSide());
        double onRight = measured.dot(point.right());
        return point.highSide()
                .times(high * onHigh + crossed * onRight)
                .plus(point.right().times(right * onRight + crossed * onHigh));
    }

    private static SurveyErrorSource source(String name, double sigma, String unit, ErrorWeighting weighting) {
        return new SurveyErrorSource(name, sigma, unit, PropagationMode.SYSTEMATIC, weighting);
    }
}
