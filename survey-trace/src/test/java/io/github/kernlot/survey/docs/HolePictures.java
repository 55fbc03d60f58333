package io.github.kernlot.survey.docs;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.docs.Sheet.Anchor;
import io.github.kernlot.survey.docs.Sheet.Point;
import java.util.List;

/** The ground, the hole in it and the sides of its wall. */
final class HolePictures {

    private static final Vector DOWN = Vector.DOWN;

    private HolePictures() {}

    static Sheet groundFrame() {
        Sheet sheet = new Sheet(240, 200, "The ground and a hole");
        Scene scene = new Scene(sheet, Sight.from(205, 24), 112, 84);
        scene.ground(62);
        HoleDirection hole = HoleDirection.ofDip(-50, 110);
        Pen ground = Pen.of(Pen.GROUND);
        scene.arrow(ground, Scene.ORIGIN, Vector.ofAzimuth(0).times(82));
        scene.label(Vector.ofAzimuth(0).times(82), 4, -3, "north", Pen.GROUND);
        scene.arrow(ground, Scene.ORIGIN, Vector.ofAzimuth(90).times(82));
        scene.label(Vector.ofAzimuth(90).times(82), 5, 4, "east", Pen.GROUND);
        scene.arrow(ground, Scene.ORIGIN, DOWN.times(105));
        scene.label(DOWN.times(105), -6, 4, "down", Pen.GROUND);
        Vector way = Sight.vector(hole);
        scene.line(
                Pen.of(Pen.INK).dashed().wide(1),
                Scene.ORIGIN,
                Vector.ofAzimuth(hole.azimuth()).times(70));
        scene.arrow(Pen.of(Pen.INK).wide(3), Scene.ORIGIN, way.times(118));
        scene.label(way.times(118), 4, 8, "hole", Pen.INK);
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 42, 0, hole.azimuth(), Vector::ofAzimuth);
        scene.label(Vector.ofAzimuth(40).times(46), 6, 2, "azimuth", Pen.ANGLE);
        scene.angle(
                Pen.ANGLE,
                Scene.ORIGIN,
                62,
                0,
                hole.inclination(),
                i -> Sight.vector(HoleDirection.ofInclination(i, hole.azimuth())));
        scene.label(DOWN.times(62), -4, 14, "inclination", Pen.ANGLE);
        return sheet;
    }

    static Sheet downwardHole() {
        HoleDirection hole = HoleDirection.ofDip(-60, 90);
        Sheet sheet = section("A hole that falls", hole, 94, 52);
        sheet.text(new Point(140, 72), "dip " + whole(hole.dip()), Anchor.START, Pen.ANGLE);
        sheet.text(new Point(140, 85), "plunge " + whole(hole.plunge()), Anchor.START, Pen.ANGLE);
        sheet.text(new Point(88, 132), "inclination " + whole(hole.inclination()), Anchor.END, Pen.ANGLE);
        return sheet;
    }

    static Sheet upwardHole() {
        HoleDirection hole = HoleDirection.ofDip(40, 90);
        Sheet sheet = section("A hole that rises", hole, 60, 112);
        sheet.text(new Point(112, 95), "dip +" + whole(hole.dip()), Anchor.START, Pen.ANGLE);
        sheet.text(new Point(112, 108), "plunge " + whole(hole.plunge()), Anchor.START, Pen.ANGLE);
        sheet.text(new Point(106, 158), "inclination " + whole(hole.inclination()), Anchor.START, Pen.ANGLE);
        return sheet;
    }

    private static Sheet section(String title, HoleDirection hole, double x, double y) {
        Sheet sheet = new Sheet(240, 200, title);
        Scene scene = new Scene(sheet, Sight.from(180, 0), x, y);
        Vector horizontal = Vector.ofAzimuth(hole.azimuth());
        scene.line(Pen.of(Pen.GROUND).wide(1), horizontal.times(-36), horizontal.times(130));
        scene.label(horizontal.times(130), -1, hole.dip() < 0 ? -5 : 13, "horizontal", Pen.GROUND);
        scene.arrow(Pen.of(Pen.GROUND), Scene.ORIGIN, DOWN.times(y > 90 ? 62 : 118));
        scene.label(DOWN.times(y > 90 ? 62 : 118), 0, 12, "down", Pen.GROUND);
        Vector way = Sight.vector(hole);
        scene.arrow(Pen.of(Pen.INK).wide(3), Scene.ORIGIN, way.times(hole.dip() < 0 ? 130 : 112));
        scene.dot(Pen.INK, Scene.ORIGIN);
        scene.label(Scene.ORIGIN, -5, -6, "collar", Pen.INK);
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 46, 0, hole.dip(), d -> Sight.vector(HoleDirection.ofDip(d, 90)));
        scene.angle(
                Pen.ANGLE,
                Scene.ORIGIN,
                hole.dip() < 0 ? 82 : 34,
                0,
                hole.inclination(),
                i -> Sight.vector(HoleDirection.ofInclination(i, 90)));
        return sheet;
    }

    private static String whole(double angle) {
        return Long.toString(Math.round(angle));
    }

    static Sheet sides() {
        HoleDirection hole = HoleDirection.ofDip(-40, 90);
        Sheet sheet = new Sheet(240, 200, "Low side and high side");
        Scene scene = new Scene(sheet, Sight.from(212, 10), 122, 102);
        CoreDrawing core = new CoreDrawing(scene, CoreFrame.at(hole, 0), 30);
        core.body(-72, 72);
        core.alongWall(0, -72, 72, Pen.GROUND);
        core.alongWall(180, -72, 72, Pen.GROUND);
        scene.label(core.wall(180, 10), 8, -8, "high side", Pen.GROUND);
        scene.label(core.wall(0, 10), -8, 16, "low side", Pen.GROUND);
        scene.eye(core.axis().times(-100), core.axis());
        scene.arrow(Pen.of(Pen.INK), core.axis().times(84), core.axis().times(112));
        scene.label(core.axis().times(108), -6, 14, "down-hole", Pen.INK);
        sheet.arrow(Pen.of(Pen.GROUND), List.of(new Point(26, 120), new Point(26, 158)));
        sheet.text(new Point(14, 172), "down", Anchor.START, Pen.GROUND);
        return sheet;
    }

    static Sheet clockwise() {
        Sheet sheet = new Sheet(240, 200, "Round the core");
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(-40, 90), 0);
        Scene scene = new Scene(sheet, Sight.alongCore(frame), 120, 104);
        CoreDrawing core = new CoreDrawing(scene, frame, 52);
        core.end();
        core.turn(Pen.ANGLE, 0, 12, 348, 0.72);
        scene.label(core.wall(0, 0), 0, 15, "0 low side", Pen.GROUND);
        scene.label(core.wall(180, 0), 0, -6, "180 high side", Pen.GROUND);
        scene.label(core.wall(90, 0), -6, 4, "90 left", Pen.GROUND);
        scene.label(core.wall(270, 0), 6, 4, "270 right", Pen.GROUND);
        scene.label(Scene.ORIGIN, 0, -2, "looking", Pen.INK);
        scene.label(Scene.ORIGIN, 0, 11, "down-hole", Pen.INK);
        sheet.foot(8, "clockwise, also in a hole that rises");
        return sheet;
    }

    static Sheet clockwiseUpwards() {
        HoleDirection hole = HoleDirection.ofDip(35, 90);
        Sheet sheet = new Sheet(240, 200, "The same in a hole that rises");
        Scene scene = new Scene(sheet, Sight.from(192, -18), 112, 108);
        CoreDrawing core = new CoreDrawing(scene, CoreFrame.at(hole, 0), 32);
        core.body(-58, 58);
        core.alongWall(0, -58, 58, Pen.GROUND);
        core.turn(Pen.ANGLE, -20, 0, 320, 1.22);
        scene.eye(core.axis().times(-104), core.axis());
        scene.label(core.axis().times(-104), 2, 22, "looking down-hole", Pen.INK);
        scene.arrow(Pen.of(Pen.INK), core.axis().times(68), core.axis().times(96));
        scene.label(core.axis().times(96), -4, -6, "down-hole", Pen.INK);
        scene.label(core.wall(0, 40), 6, 14, "low side", Pen.GROUND);
        return sheet;
    }

    static Sheet lineFromNorth() {
        Sheet sheet = new Sheet(240, 200, "A vertical hole: from north");
        HoleDirection hole = HoleDirection.ofDip(-90, 0);
        CoreFrame frame = CoreFrame.at(hole, WallReference.north(), 0);
        Scene scene = new Scene(sheet, Sight.map(), 108, 110);
        CoreDrawing core = new CoreDrawing(scene, frame, 50);
        core.end();
        scene.arrow(Pen.of(Pen.GROUND), core.wall(0, 0), core.wall(0, 0).times(1.46));
        scene.label(core.wall(0, 0).times(1.46), 6, 8, "north", Pen.GROUND);
        scene.line(Pen.of(Pen.INK).wide(0.8), Scene.ORIGIN, core.wall(0, 0));
        scene.line(Pen.of(Pen.INK).wide(0.8), Scene.ORIGIN, core.wall(70, 0));
        scene.dot(Pen.LINE, core.wall(70, 0));
        scene.label(core.wall(70, 0), 8, 4, "drawn line", Pen.LINE);
        core.turn(Pen.ANGLE, 0, 0, 70, 0.66);
        scene.label(core.wall(35, 0).times(0.3), 8, 4, "x", Pen.ANGLE);
        sheet.foot(8, "looking down-hole: as on a map");
        return sheet;
    }
}
