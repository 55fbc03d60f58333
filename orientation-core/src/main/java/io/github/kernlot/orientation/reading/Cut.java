package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.internal.Vector;

/**
 * Where a plane cuts a core of radius 1: {@code n . p = offset} for the points p, counted along the axis, along the reference line and
 * 90 degrees clockwise of it.
 */
record Cut(Vector normal, double offset) {

    /** This cut with its normal and offset moved along a step, the normal along two directions across it. */
    Cut moved(Vector one, Vector two, double stepOne, double stepTwo, double stepOffset) {
        Vector moved = normal.plus(one.times(stepOne)).plus(two.times(stepTwo));
        double length = moved.length();
        return new Cut(moved.times(1 / length), (offset + stepOffset) / length);
    }

    /** With the normal on the down-hole side. */
    Cut facingDownHole() {
        return normal.north() < 0 ? new Cut(normal.negated(), -offset) : this;
    }
}
