package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import java.util.ArrayList;
import java.util.List;

/** Places on planes. */
final class Places {

    private Places() {}

    static Position at(double east, double north, double up) {
        return Position.ofEastingNorthingElevation(east, north, up);
    }

    /** Points on a plane about a centre far from the origin, so far along dip direction and strike. */
    static List<Position> on(PlaneOrientation plane, double[][] places) {
        double dip = Math.toRadians(plane.dip());
        double direction = Math.toRadians(plane.dipDirection());
        List<Position> positions = new ArrayList<>();
        for (double[] place : places) {
            double down = place[0] * Math.sin(dip);
            double across = place[0] * Math.cos(dip);
            positions.add(at(
                    500_000 + across * Math.sin(direction) - place[1] * Math.cos(direction),
                    6_000_000 + across * Math.cos(direction) + place[1] * Math.sin(direction),
                    300 - down));
        }
        return positions;
    }

    static final double[][] PLACES = {
        {0, 0}, {120, 10}, {-40, 200}, {60, -150}, {-90, -60}, {30, 90}, {80, 160}, {-120, 40}
    };
}
