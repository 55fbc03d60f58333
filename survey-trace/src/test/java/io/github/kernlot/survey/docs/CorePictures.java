package io.github.kernlot.survey.docs;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HoleSense;
import io.github.kernlot.orientation.internal.Vector;

/** Lines and facings as they are measured on core. */
final class CorePictures {

    private static final CoreFrame FRAME = CoreFrame.at(HoleDirection.ofDip(-35, 90), 235);

    /** Where the lines meet the wall. */
    private static final double DELTA = 100;

    private CorePictures() {}

    static Sheet gamma() {
        Sheet sheet = new Sheet(240, 200, "gamma, in a plane");
        Scene scene = new Scene(sheet, Sight.from(232, 22), 92, 104);
        CoreDrawing core = new CoreDrawing(scene, FRAME, 50);
        CorePlane plane = CorePlane.of(52, 50);
        core.body(core.trace(plane), angle -> 96);
        core.face(plane);
        scene.line(Pen.of(Pen.PLANE).dashed().wide(1), core.onWall(plane, 180), core.onWall(plane, 0));
        scene.dot(Pen.PLANE, core.onWall(plane, 0));
        scene.label(core.onWall(plane, 0), 7, 12, "down-hole end", Pen.PLANE);
        double gamma = 75;
        scene.line(Pen.of(Pen.POLE).wide(2), core.onWall(plane, gamma + 180), core.onWall(plane, gamma));
        scene.label(core.onWall(plane, gamma), -8, 4, "line", Pen.POLE);
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 26, 0, gamma, angle -> core.inPlane(plane, angle));
        scene.label(core.inPlane(plane, gamma / 2).times(40), 0, 8, "gamma", Pen.ANGLE);
        core.alongWallBelow(0, core.trace(plane), 96, Pen.LINE);
        sheet.foot(8, "looking down-hole at the face");
        return sheet;
    }

    static Sheet axisAngle() {
        Sheet sheet = new Sheet(240, 200, "A line through the core");
        Scene scene = through(sheet);
        CoreDrawing core = drawn(scene);
        double axisAngle = 40;
        Vector line = core.arrow(axisAngle, DELTA);
        scene.line(Pen.of(Pen.POLE).wide(2), line.times(-64), line.times(72));
        measured(scene, core, axisAngle);
        scene.label(core.arrow(axisAngle / 2, DELTA).times(46), 8, -3, "axis angle", Pen.POLE);
        return sheet;
    }

    static Sheet directedLine() {
        Sheet sheet = new Sheet(240, 200, "A line with an arrow");
        Scene scene = through(sheet);
        CoreDrawing core = drawn(scene);
        double axisAngle = 125;
        Vector line = core.arrow(axisAngle, DELTA);
        scene.arrow(Pen.of(Pen.POLE).wide(2), line.times(-52), line.times(66));
        measured(scene, core, axisAngle);
        scene.label(core.arrow(50, DELTA).times(40), 4, 8, "axis angle", Pen.POLE);
        return sheet;
    }

    private static void measured(Scene scene, CoreDrawing core, double axisAngle) {
        scene.angle(Pen.POLE, Scene.ORIGIN, axisAngle > 90 ? 26 : 42, 0, axisAngle, angle -> core.arrow(angle, DELTA));
        Vector line = core.arrow(axisAngle, DELTA);
        Vector meets = line.times(36 / line.across(core.axis()).length());
        double along = meets.dot(core.axis());
        core.turn(Pen.ANGLE, along, 0, DELTA, 1);
        scene.dot(Pen.POLE, meets);
        scene.label(
                core.wall(DELTA * 0.4, along), axisAngle > 90 ? -5 : 24, axisAngle > 90 ? 4 : -26, "delta", Pen.ANGLE);
    }

    private static Scene through(Sheet sheet) {
        return new Scene(sheet, Sight.from(206, 14), 116, 100);
    }

    private static CoreDrawing drawn(Scene scene) {
        CoreDrawing core = new CoreDrawing(scene, FRAME, 36);
        core.body(-84, 84);
        core.alongWall(0, -84, 84, Pen.LINE);
        scene.line(
                Pen.of(Pen.INK).dashed().wide(1),
                core.axis().times(-80),
                core.axis().times(100));
        return core;
    }

    static Sheet facing() {
        Sheet sheet = new Sheet(240, 200, "The side to which a bed faces");
        Scene scene = new Scene(sheet, Sight.from(194, 6), 112, 104);
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(-35, 90), 0);
        CoreDrawing core = new CoreDrawing(scene, frame, 34);
        CorePlane plane = CorePlane.of(50, 0);
        core.body(-88, 88);
        core.plane(plane);
        Vector up = core.arrow(plane.facing(HoleSense.UP_HOLE));
        scene.arrow(Pen.of(Pen.POLE).wide(2), Scene.ORIGIN, up.times(74));
        scene.label(up.times(74), 0, -8, "up-hole", Pen.POLE);
        Vector down = core.arrow(plane.facing(HoleSense.DOWN_HOLE));
        scene.arrow(Pen.of(Pen.POLE).wide(2).dashed(), Scene.ORIGIN, down.times(74));
        scene.label(down.times(74), 0, -8, "down-hole", Pen.POLE);
        sheet.foot(8, "at right angles to the bed");
        return sheet;
    }
}
