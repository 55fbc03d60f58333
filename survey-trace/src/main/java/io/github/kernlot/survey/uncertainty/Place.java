package io.github.kernlot.survey.uncertainty;

import org.jspecify.annotations.Nullable;

/**
 * Where a depth falls among the stations.
 *
 * @param station the last station above it; the first where the depth lies above all
 * @param head how much of the way from the collar to the first station, for a depth above it; else 1
 * @param part the part of the arc below that station, where the depth lies between two
 * @param tail the depth itself, where it lies beyond the last station
 */
record Place(
        int station,
        double head,
        @Nullable ArcDerivative part,
        @Nullable SurveyedPoint tail) {}
