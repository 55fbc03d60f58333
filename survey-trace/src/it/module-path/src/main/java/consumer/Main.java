package consumer;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import java.util.List;

/**
 * A straight hole of dip -60 towards 090, and a plane square to its core. What both must come to is plain geometry.
 */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        Survey survey = Survey.of(
                List.of(SurveyStation.ofDip(0, -60, 90), SurveyStation.ofDip(200, -60, 90)), NorthReference.grid());
        HoleTrace trace = HoleTrace.minimumCurvature(Position.ofEastingNorthingElevation(500, 1000, 300), survey);

        Position position = trace.positionAt(100);
        expect("easting", 550, position.easting());
        expect("northing", 1000, position.northing());
        expect("elevation", 300 - 100 * Math.sqrt(0.75), position.elevation());

        CoreFrame frame = CoreFrame.at(trace.directionAt(100), 0);
        PlaneOrientation plane = frame.toGeographic(CorePlane.perpendicular());
        expect("dip", 30, plane.dip());
        expect("dip direction", 270, plane.dipDirection());

        if (!Main.class.getModule().isNamed() || !HoleTrace.class.getModule().isNamed()) {
            throw new AssertionError("not on the module path");
        }
    }

    private static void expect(String what, double expected, double actual) {
        if (!(Math.abs(actual - expected) < 1e-9)) {
            throw new AssertionError(what + " should be " + expected + " and is " + actual);
        }
    }
}
