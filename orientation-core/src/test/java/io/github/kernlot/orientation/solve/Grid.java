package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import java.util.ArrayList;
import java.util.List;

/** Brute force over all poles of the hemisphere, with trigonometry of radians and no geometry of cones. */
final class Grid {

    private Grid() {}

    /** Planes at every step of dip and dip direction. */
    static List<PlaneOrientation> planes(double step) {
        List<PlaneOrientation> planes = new ArrayList<>();
        for (double dip = 0; dip <= 90; dip += step) {
            double turn = dip == 0 ? 360 : step / Math.sin(Math.toRadians(dip));
            for (double direction = 0; direction < 360; direction += turn) {
                planes.add(PlaneOrientation.ofDipAndDirection(dip, direction));
            }
        }
        return planes;
    }

    /** Alpha by the sine of a scalar product. */
    static double alpha(PlaneOrientation plane, HoleDirection hole) {
        double dip = Math.toRadians(plane.dip());
        double plunge = Math.toRadians(hole.plunge());
        double turn = Math.toRadians(hole.azimuth() - plane.dipDirection());
        double sine = Math.cos(dip) * Math.sin(plunge) - Math.sin(dip) * Math.cos(plunge) * Math.cos(turn);
        return Math.toDegrees(Math.asin(Math.min(1, Math.abs(sine))));
    }
}
