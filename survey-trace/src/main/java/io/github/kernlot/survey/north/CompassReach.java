package io.github.kernlot.survey.north;

/**
 * How far a compass can be trusted where the field is steep. The limits are those of the blackout and caution zones that the World
 * Magnetic Model's publishers show on their maps, from memory.
 */
public enum CompassReach {
    /** A horizontal field of 6,000 nT or more. */
    SOUND,
    /** Below 6,000 nT: compasses may become unreliable. */
    CAUTION,
    /** Below 2,000 nT: compasses are not to be relied on. */
    BLACKOUT;

    private static final double CAUTION_BELOW = 6_000;
    private static final double BLACKOUT_BELOW = 2_000;

    static CompassReach of(double horizontal) {
        if (horizontal < BLACKOUT_BELOW) {
            return BLACKOUT;
        }
        return horizontal < CAUTION_BELOW ? CAUTION : SOUND;
    }
}
