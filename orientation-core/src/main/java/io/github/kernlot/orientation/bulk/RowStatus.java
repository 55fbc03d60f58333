package io.github.kernlot.orientation.bulk;

/**
 * What became of a row. 0 is a plain answer, above 0 an answer in which an angle was chosen, below 0 a refusal: NaN stands in every
 * column of the answer. Of several reasons for a refusal the first is told, in the order frame, alpha, beta, gamma.
 */
public final class RowStatus {

    /** Answered. */
    public static final byte ANSWERED = 0;

    /** Answered, but the second angle says nothing and is 0: a horizontal plane, a vertical line, alpha 90, a line along the axis. */
    public static final byte SECOND_ANGLE_IDLE = 1;

    /**
     * Answered, but the second angle and its opposite say the same and the one below 180 is given: a vertical plane, a horizontal line,
     * alpha 0, a line at right angles to the axis.
     */
    public static final byte SECOND_ANGLE_TWOFOLD = 2;

    /** Refused: the inclination outside [0, 180] or the dip of the hole outside [-90, 90]. */
    public static final byte INCLINATION_REFUSED = -1;

    /** Refused: the azimuth of the hole outside [0, 360]. */
    public static final byte AZIMUTH_REFUSED = -2;

    /** Refused: a line angle that is not finite. */
    public static final byte LINE_ANGLE_REFUSED = -3;

    /** Refused: a vertical hole, which has no low side for the line angle to be counted from. */
    public static final byte NO_LOW_SIDE = -4;

    /** Refused: the first angle of the plane or line (alpha, axis angle, dip, plunge) outside [0, 90]. */
    public static final byte FIRST_ANGLE_REFUSED = -5;

    /** Refused: the second angle of the plane or line (beta, delta, dip direction, trend) outside [0, 360]. */
    public static final byte SECOND_ANGLE_REFUSED = -6;

    /** Refused: no beta (NaN) at an alpha below 90, so that the plane is not oriented. */
    public static final byte NOT_ORIENTED = -7;

    /** Refused: gamma outside [0, 360], or outside [-180, 360] where {@link FrameColumns#withGamma} told how it is read. */
    public static final byte GAMMA_REFUSED = -8;

    /** Refused: gamma at alpha 90, where there is no long axis to count it from. */
    public static final byte NO_LONG_AXIS = -9;

    private RowStatus() {}

    /**
     * Whether the row has no answer.
     *
     * @param status the status of a row
     * @return true below 0
     */
    public static boolean isRefused(byte status) {
        return status < 0;
    }

    /**
     * The status in words.
     *
     * @param status the status of a row
     * @return the words, in lower case
     * @throws IllegalArgumentException if no row has such a status
     */
    public static String text(byte status) {
        return switch (status) {
            case ANSWERED -> "answered";
            case SECOND_ANGLE_IDLE -> "answered, the second angle says nothing";
            case SECOND_ANGLE_TWOFOLD -> "answered, the second angle and its opposite say the same";
            case INCLINATION_REFUSED -> "inclination or dip of the hole missing or out of range";
            case AZIMUTH_REFUSED -> "azimuth of the hole missing or out of range";
            case LINE_ANGLE_REFUSED -> "line angle missing or not finite";
            case NO_LOW_SIDE -> "vertical hole without a low side";
            case FIRST_ANGLE_REFUSED -> "alpha, axis angle, dip or plunge missing or out of range";
            case SECOND_ANGLE_REFUSED -> "beta, delta, dip direction or trend missing or out of range";
            case NOT_ORIENTED -> "no beta";
            case GAMMA_REFUSED -> "gamma missing or out of range";
            case NO_LONG_AXIS -> "gamma at alpha 90";
            default ->
                throw new IllegalArgumentException("status is " + status + "; expected within [" + NO_LONG_AXIS + ", "
                        + SECOND_ANGLE_TWOFOLD + "]");
        };
    }
}
