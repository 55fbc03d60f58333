package io.github.kernlot.survey.uncertainty;

/** What one unit of an error does to a station. */
@FunctionalInterface
public interface ErrorWeighting {

    /**
     * The shift of a station by one unit of the error, to first order.
     *
     * @param point the station, or a depth beyond the last one
     * @return what the error does there
     * @throws IllegalArgumentException if the point lacks what the error depends on, say a toolface
     */
    UnitShift at(SurveyedPoint point);
}
