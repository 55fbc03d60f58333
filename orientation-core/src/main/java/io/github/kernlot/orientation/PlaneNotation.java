package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The ways in which geologists write a plane. Each formats and parses; a text is only as plain as its notation is named beside it, since
 * {@code 040/60} is read in four ways.
 */
public enum PlaneNotation {
    /** Dip and dip direction, the mining order: {@code 62.4/118.9}. */
    DIP_AND_DIRECTION(Written.NUMBER + "/" + Written.NUMBER) {
        @Override
        public String format(PlaneOrientation plane, int decimals) {
            return Written.angle(plane.dip(), decimals) + "/" + Written.azimuth(plane.dipDirection(), decimals);
        }

        @Override
        PlaneOrientation read(Matcher text) {
            return PlaneOrientation.ofDipAndDirection(Written.number(text, 1), Written.number(text, 2));
        }
    },

    /** Dip direction and dip: {@code 118.9/62.4}. */
    DIRECTION_AND_DIP(Written.NUMBER + "/" + Written.NUMBER) {
        @Override
        public String format(PlaneOrientation plane, int decimals) {
            return Written.azimuth(plane.dipDirection(), decimals) + "/" + Written.angle(plane.dip(), decimals);
        }

        @Override
        PlaneOrientation read(Matcher text) {
            return PlaneOrientation.ofDipAndDirection(Written.number(text, 2), Written.number(text, 1));
        }
    },

    /** Strike by the right-hand rule (the plane falls to the right of it) and dip: {@code 028.9/62.4}. */
    STRIKE_RIGHT_HAND(Written.NUMBER + "/" + Written.NUMBER) {
        @Override
        public String format(PlaneOrientation plane, int decimals) {
            return Written.azimuth(plane.strike(), decimals) + "/" + Written.angle(plane.dip(), decimals);
        }

        @Override
        PlaneOrientation read(Matcher text) {
            return PlaneOrientation.ofStrikeRightHand(Written.number(text, 1), Written.number(text, 2));
        }
    },

    /** Strike by the left-hand rule (the plane falls to the left of it) and dip: {@code 208.9/62.4}. */
    STRIKE_LEFT_HAND(Written.NUMBER + "/" + Written.NUMBER) {
        @Override
        public String format(PlaneOrientation plane, int decimals) {
            double strike = Degrees.wrap360(plane.dipDirection() + 90);
            return Written.azimuth(strike, decimals) + "/" + Written.angle(plane.dip(), decimals);
        }

        @Override
        PlaneOrientation read(Matcher text) {
            return PlaneOrientation.ofStrikeLeftHand(Written.number(text, 1), Written.number(text, 2));
        }
    },

    /**
     * Either end of the strike, dip, and the letters of the side to which the plane falls: {@code 028.9/62.4 SE}. Written with the strike
     * below 180. Letters that lie within 30 degrees of the strike tell no side and are refused.
     */
    STRIKE_AND_SIDE(Written.NUMBER + "/" + Written.NUMBER + " ?" + Written.POINT) {
        @Override
        public String format(PlaneOrientation plane, int decimals) {
            return Written.azimuth(plane.strike() % 180, decimals) + "/" + Written.fall(plane, decimals);
        }

        @Override
        PlaneOrientation read(Matcher text) {
            return Written.falling(Written.number(text, 1), Written.number(text, 2), text.group(3));
        }
    },

    /** The strike as a bearing from north or south, dip, and the letters of the side to which the plane falls: {@code N28.9E 62.4 SE}. */
    STRIKE_BEARING(Written.BEARING + " " + Written.NUMBER + " ?" + Written.POINT) {
        @Override
        public String format(PlaneOrientation plane, int decimals) {
            double strike = plane.strike() % 180;
            return Written.bearing(strike > 90 ? strike + 180 : strike, decimals) + " " + Written.fall(plane, decimals);
        }

        @Override
        PlaneOrientation read(Matcher text) {
            return Written.falling(Written.ofBearing(text, 1), Written.number(text, 4), text.group(5));
        }
    },

    /** Plunge and trend of the pole: {@code 27.6/298.9}. */
    POLE(Written.NUMBER + "/" + Written.NUMBER) {
        @Override
        public String format(PlaneOrientation plane, int decimals) {
            return LineNotation.PLUNGE_AND_TREND.format(plane.pole(), decimals);
        }

        @Override
        PlaneOrientation read(Matcher text) {
            return PlaneOrientation.ofPole(LineNotation.PLUNGE_AND_TREND.read(text));
        }
    };

    private static final PlaneOrientation EXAMPLE = PlaneOrientation.ofDipAndDirection(62.4, 118.9);

    private final Pattern pattern;

    PlaneNotation(String pattern) {
        this.pattern = Pattern.compile(pattern);
    }

    /**
     * A plane as it is written, with one decimal.
     *
     * @param plane the plane
     * @return the text
     */
    public String format(PlaneOrientation plane) {
        return format(plane, 1);
    }

    /**
     * A plane as it is written.
     *
     * @param plane the plane
     * @param decimals how many digits stand behind the point, in [0, 12]
     * @return the text
     * @throws IllegalArgumentException if the number of decimals lies outside its range
     */
    public abstract String format(PlaneOrientation plane, int decimals);

    /**
     * The plane that is written so.
     *
     * @param text the text, with any number of decimals and with or without degree signs
     * @return the plane
     * @throws IllegalArgumentException if the text is not of this notation, an angle lies outside its range, or the letters tell no side
     */
    public PlaneOrientation parse(String text) {
        return read(Written.matched(pattern, text, this, format(EXAMPLE)));
    }

    abstract PlaneOrientation read(Matcher text);
}
