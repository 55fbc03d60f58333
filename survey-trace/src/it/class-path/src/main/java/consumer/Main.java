package consumer;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;

/** A plane square to the core dips as much as the hole is off vertical, against the azimuth: plain geometry. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(-60, 90), 0);
        PlaneOrientation plane = frame.toGeographic(CorePlane.perpendicular());
        if (Math.abs(plane.dip() - 30) > 1e-9 || Math.abs(plane.dipDirection() - 270) > 1e-9) {
            throw new AssertionError(
                    "A plane square to a hole of dip -60 towards 090 dips 30 towards 270, not " + plane);
        }
        if (Main.class.getModule().isNamed() || CoreFrame.class.getModule().isNamed()) {
            throw new AssertionError("not on the class path");
        }
    }
}
