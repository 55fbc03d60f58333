package io.github.kernlot.survey.check;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.survey.SurveyStation;
import java.util.Locale;
import java.util.Optional;

/**
 * A station whose direction its neighbours do not bear out.
 *
 * @param station the station as it was recorded
 * @param predicted what the sound stations round it say: the arc between its neighbours; at an end, the bend of the last two carried on
 * @param sigma the sigma of one station, from what the others miss each other by, not less than the floor, degrees
 * @param limit how far from the prediction a station may lie there, degrees
 * @param end whether it is the first or the last station, where a bend of the hole looks the same
 * @param slip the simple slip that would explain it; empty where none does
 */
public record OutlyingStation(
        SurveyStation station,
        HoleDirection predicted,
        double sigma,
        double limit,
        boolean end,
        Optional<StationSlip> slip) {

    /**
     * How far the direction lies from the prediction.
     *
     * @return degrees in [0, 180]
     */
    public double angle() {
        return station.direction().angleTo(predicted);
    }

    /** The station, the prediction and the slip: {@code 560.39 m -87.4/160.0 (dip/azimuth), expected ...: a reversed azimuth}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s, expected %s, %.2f degrees away (limit %.2f)%s",
                station,
                predicted,
                angle(),
                limit,
                slip.map(why -> ": " + why).orElse(""));
    }
}
