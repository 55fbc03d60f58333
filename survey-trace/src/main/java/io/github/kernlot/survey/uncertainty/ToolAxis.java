package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;

/**
 * An axis of the triads of sensors in a survey tool: z along the hole, down-hole, x and y across it, right-handed. At toolface 0 the y
 * axis lies on the high side and x on the left, as the sensor equations of the published framework have it (from memory).
 */
public enum ToolAxis {
    /** Across the hole, a quarter turn anticlockwise of y looking down-hole. */
    X,
    /** Across the hole, the toolface clockwise of the high side. */
    Y,
    /** Along the hole. */
    Z;

    /** The unit vector of the axis: x = sin T h - cos T r, y = cos T h + sin T r, z = t. */
    Vector at(SurveyedPoint point) {
        if (this == Z) {
            return point.tangent();
        }
        double toolface = point.neededToolface();
        double high = this == X ? Degrees.sin(toolface) : Degrees.cos(toolface);
        double right = this == X ? -Degrees.cos(toolface) : Degrees.sin(toolface);
        return point.highSide().times(high).plus(point.right().times(right));
    }
}
