package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Polar;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/** What the values of this package share when they are made of a vector. */
final class Directions {

    private Directions() {}

    /** The unit vector of three components, scaled first so that no length over- or underflows. */
    static Vector checked(double north, double east, double down) {
        Require.finite("north component", north, "");
        Require.finite("east component", east, "");
        Require.finite("down component", down, "");
        double largest = Math.max(Math.abs(north), Math.max(Math.abs(east), Math.abs(down)));
        if (largest == 0) {
            throw new IllegalArgumentException("the null vector has no direction");
        }
        return new Vector(north / largest, east / largest, down / largest).unit();
    }

    /** The unit vector of a plunge, negative upwards, and a trend. */
    static Vector ofPlunge(double plunge, double trend) {
        double across = Degrees.cos(plunge);
        return new Vector(across * Degrees.cos(trend), across * Degrees.sin(trend), Degrees.sin(plunge));
    }

    /** Whether two unit vectors lie along one line, but for rounding. */
    static boolean isAlong(Vector one, Vector other) {
        return one.cross(other).length() < Polar.ROUNDING;
    }
}
