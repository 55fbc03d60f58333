package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The parts of which the notations of planes and lines are made: numbers, bearings and points of the compass. */
final class Written {

    static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
    static final String BEARING = "([NS]) ?" + NUMBER + " ?([EW])";
    static final String POINT = "(NE|SE|SW|NW|N|E|S|W)";

    private static final String[] POINTS = {"N", "NE", "E", "SE", "S", "SW", "W", "NW"};

    private Written() {}

    static Matcher matched(Pattern pattern, String text, Enum<?> notation, String example) {
        String plain =
                text.strip().replace("\u00b0", "").replaceAll("\\s*/\\s*", "/").replaceAll("\\s+", " ");
        Matcher matcher = pattern.matcher(plain);
        if (!matcher.matches()) {
            String name = notation.name().toLowerCase(Locale.ROOT).replace('_', ' ');
            throw new IllegalArgumentException(
                    "'" + text + "' is not written as " + name + "; expected such as " + example);
        }
        return matcher;
    }

    static double number(Matcher text, int group) {
        return Double.parseDouble(text.group(group));
    }

    /** An angle that has no need of leading zeros. */
    static String angle(double degrees, int decimals) {
        return String.format(Locale.ROOT, "%." + checked(decimals) + "f", degrees);
    }

    /** An azimuth with three digits before the point. */
    static String azimuth(double degrees, int decimals) {
        int width = checked(decimals) == 0 ? 3 : 4 + decimals;
        String text = String.format(Locale.ROOT, "%0" + width + "." + decimals + "f", degrees);
        return text.startsWith("360") ? azimuth(0, decimals) : text;
    }

    /** An azimuth as its angle from north or south: N 49.9 E. */
    static String bearing(double azimuth, int decimals) {
        double fromNorth = Math.abs(Degrees.wrap180(azimuth));
        String side = Degrees.wrap360(azimuth) <= 180 ? "E" : "W";
        return fromNorth <= 90
                ? "N" + angle(fromNorth, decimals) + side
                : "S" + angle(180 - fromNorth, decimals) + side;
    }

    /** The azimuth of a bearing whose three parts begin at a group. */
    static double ofBearing(Matcher text, int group) {
        double angle = Require.inRange("bearing", number(text, group + 1), 0, 90, "degrees");
        double fromNorth = text.group(group).equals("N") ? angle : 180 - angle;
        return Degrees.wrap360(text.group(group + 2).equals("E") ? fromNorth : -fromNorth);
    }

    /** Dip and the point of the compass nearest to the dip direction. */
    static String fall(PlaneOrientation plane, int decimals) {
        return angle(plane.dip(), decimals) + " " + POINTS[(int) Math.rint(plane.dipDirection() / 45) % 8];
    }

    /** The plane with an end of its strike, that falls to the side of a point of the compass. */
    static PlaneOrientation falling(double strike, double dip, String point) {
        PlaneOrientation right = PlaneOrientation.ofStrikeRightHand(strike, dip);
        double aside = Degrees.wrap180(azimuthOf(point) - right.dipDirection());
        if (Math.abs(aside) > 60 && Math.abs(aside) < 120) {
            throw new IllegalArgumentException("side " + point + " lies along the strike " + Degrees.azimuthText(strike)
                    + "; expected the side to which the plane falls");
        }
        return Math.abs(aside) <= 60 ? right : PlaneOrientation.ofStrikeLeftHand(strike, dip);
    }

    private static double azimuthOf(String point) {
        int eighths = 0;
        while (!POINTS[eighths].equals(point)) {
            eighths++;
        }
        return 45.0 * eighths;
    }

    private static int checked(int decimals) {
        return (int) Require.inRange("decimals", decimals, 0, 12, "");
    }
}
