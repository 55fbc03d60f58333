package io.github.kernlot.survey.check;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;

/** A slip of the pen, or of a setting, that makes one station point elsewhere. */
public enum StationSlip {
    /** The azimuth points the other way: 180 degrees off. */
    REVERSED_AZIMUTH("a reversed azimuth") {
        @Override
        public HoleDirection undone(HoleDirection direction) {
            return direction.withAzimuthTurned(180);
        }
    },
    /** The dip has the other sign. */
    MIRRORED_DIP("a dip with the other sign") {
        @Override
        public HoleDirection undone(HoleDirection direction) {
            return HoleDirection.ofInclination(180 - direction.inclination(), direction.azimuth());
        }
    },
    /** The angle from vertical was written where that from the horizontal belongs, or the other way round. */
    DIP_FROM_VERTICAL("an inclination from vertical written as a dip") {
        @Override
        public HoleDirection undone(HoleDirection direction) {
            double inclination = direction.inclination();
            return HoleDirection.ofInclination(
                    inclination <= 90 ? 90 - inclination : 270 - inclination, direction.azimuth());
        }
    },
    /** The azimuth was counted anticlockwise. */
    ANTICLOCKWISE_AZIMUTH("an azimuth counted anticlockwise") {
        @Override
        public HoleDirection undone(HoleDirection direction) {
            return HoleDirection.ofInclination(direction.inclination(), Degrees.wrap360(-direction.azimuth()));
        }
    };

    private final String text;

    StationSlip(String text) {
        this.text = text;
    }

    /**
     * The direction without the slip.
     *
     * @param direction the direction as it was written
     * @return the direction that was meant, if this was the slip
     */
    public abstract HoleDirection undone(HoleDirection direction);

    /** In words: {@code a reversed azimuth}. */
    @Override
    public String toString() {
        return text;
    }
}
