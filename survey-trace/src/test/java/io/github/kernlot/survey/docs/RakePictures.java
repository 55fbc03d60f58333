package io.github.kernlot.survey.docs;

import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Slip;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.docs.Sheet.Anchor;
import io.github.kernlot.survey.docs.Sheet.Point;
import java.util.List;
import java.util.Locale;

/** Lines and movements in a plane in the ground, seen from above and square to it. */
final class RakePictures {

    private RakePictures() {}

    /** The direction in the plane with a slip rake, positive up-dip. */
    private static Vector slip(PlaneOrientation plane, double rake) {
        return Sight.vector(new Slip(plane, rake).hangingWall());
    }

    private static Scene onto(Sheet sheet, PlaneOrientation plane, double y, double up, double down) {
        Scene scene = new Scene(sheet, Sight.ontoPlane(plane), 120, y);
        Vector strike = slip(plane, 0).times(104);
        Vector top = slip(plane, 90).times(up);
        Vector foot = slip(plane, -90).times(down);
        scene.area(
                Pen.area(Pen.PLANE, 0.14),
                List.of(strike.plus(top), strike.plus(foot), foot.minus(strike), top.minus(strike)));
        scene.arrow(Pen.of(Pen.PLANE).wide(2), strike.negated(), strike);
        return scene;
    }

    static Sheet rake() {
        Sheet sheet = new Sheet(240, 200, "Rake");
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(56, 234);
        LineOrientation line = plane.lineAtRakeFrom(324, 78);
        Scene scene = onto(sheet, plane, 56, 0, 112);
        double rightHand = plane.rake(line);
        double other = plane.rakeFrom(324, line);
        scene.line(Pen.of(Pen.POLE).wide(2), Scene.ORIGIN, Sight.vector(line).times(104));
        scene.label(Sight.vector(line).times(104), 5, 0, "line", Pen.POLE);
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 62, 0, rightHand, rake -> slip(plane, -rake));
        scene.label(slip(plane, -45).times(62), 6, 6, "rake " + whole(rightHand), Pen.ANGLE);
        scene.angle(Pen.POLE, Scene.ORIGIN, 44, 180, rightHand, rake -> slip(plane, -rake));
        scene.label(slip(plane, -145).times(46), -2, 12, whole(other) + " from 324", Pen.POLE);
        scene.label(slip(plane, 0).times(104), -1, -9, "strike " + whole(plane.strike()), Pen.PLANE);
        scene.label(slip(plane, 180).times(104), 1, -9, "324", Pen.PLANE);
        sheet.foot(8, "from above, square to the plane");
        return sheet;
    }

    static Sheet slip() {
        Sheet sheet = new Sheet(240, 200, "Slip of the hanging wall");
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(60, 90);
        Scene scene = onto(sheet, plane, 104, 74, 74);
        for (int rake : new int[] {0, 90, 180, -90}) {
            scene.arrow(
                    Pen.of(Pen.POLE).wide(2), Scene.ORIGIN, slip(plane, rake).times(52));
        }
        scene.label(slip(plane, 90).times(52), 0, -6, "90 reverse", Pen.POLE);
        scene.label(slip(plane, -90).times(52), 0, 14, "-90 normal", Pen.POLE);
        scene.label(slip(plane, 180).times(66), 0, -8, "180 dextral", Pen.POLE);
        scene.label(slip(plane, 0).times(70), 0, -8, "0 sinistral", Pen.POLE);
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 28, 0, 70, rake -> slip(plane, rake));
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 28, 0, -70, rake -> slip(plane, rake));
        scene.label(slip(plane, 40).times(30), 4, -2, "+", Pen.ANGLE);
        scene.label(slip(plane, -40).times(30), 4, 8, "-", Pen.ANGLE);
        sheet.text(new Point(234, 122), "strike", Anchor.END, Pen.PLANE);
        sheet.foot(8, "from above, square to the plane");
        return sheet;
    }

    private static String whole(double angle) {
        return String.format(Locale.ROOT, "%.0f", angle);
    }
}
