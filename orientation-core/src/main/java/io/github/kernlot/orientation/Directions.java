package io.github.kernlot.orientation;

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
}
