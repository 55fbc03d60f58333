package io.github.kernlot.survey.docs;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.BetaConvention.Apex;
import io.github.kernlot.orientation.BetaConvention.Sense;
import io.github.kernlot.orientation.BetaConvention.View;
import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.survey.docs.Sheet.Anchor;
import io.github.kernlot.survey.docs.Sheet.Point;
import java.util.List;

/** Planes as they are measured on core. */
final class PlanePictures {

    /** A hole that falls to the right of the sheet, its reference line towards the onlooker. */
    private static final CoreFrame FRAME = CoreFrame.at(HoleDirection.ofDip(-35, 90), 235);

    private static final Sight SIGHT = Sight.from(206, 14);

    private PlanePictures() {}

    static Sheet alpha() {
        Sheet sheet = new Sheet(240, 200, "alpha");
        // the long axis lies across the line of sight
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(-35, 90), 0);
        Scene scene = new Scene(sheet, Sight.from(194, 6), 112, 98);
        CoreDrawing core = new CoreDrawing(scene, frame, 34);
        CorePlane plane = CorePlane.of(40, 0);
        core.body(-92, 92);
        core.plane(plane);
        scene.line(Pen.of(Pen.PLANE), core.onWall(plane, 180), core.onWall(plane, 0));
        scene.line(
                Pen.of(Pen.INK).dashed().wide(1),
                core.axis().times(-86),
                core.axis().times(106));
        scene.label(core.axis().times(106), 4, 6, "axis", Pen.INK);
        scene.arrow(Pen.of(Pen.POLE), Scene.ORIGIN, core.normal(plane).times(80));
        scene.label(core.normal(plane).times(80), 4, 0, "normal", Pen.POLE);
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 42, 0, 40, angle -> core.arrow(angle, 0));
        scene.label(core.onWall(plane, 0), 8, 14, "alpha", Pen.ANGLE);
        scene.angle(Pen.POLE, Scene.ORIGIN, 64, 0, 50, angle -> core.arrow(angle, 180));
        scene.label(core.arrow(30, 180).times(68), 4, 4, "90 - alpha", Pen.POLE);
        return sheet;
    }

    static Sheet beta() {
        Sheet sheet = new Sheet(240, 200, "beta");
        Scene scene = new Scene(sheet, SIGHT, 116, 98);
        CoreDrawing core = new CoreDrawing(scene, FRAME, 36);
        CorePlane plane = CorePlane.of(44, 65);
        core.body(-76, 88);
        core.alongWall(0, -76, 88, Pen.LINE);
        for (double along : new double[] {-62, 74}) {
            core.barb(0, along, 9, Pen.LINE);
        }
        core.plane(plane);
        scene.line(Pen.of(Pen.PLANE).dashed().wide(1), core.onWall(plane, 180), core.onWall(plane, 0));
        double apex = core.trace(plane).applyAsDouble(65);
        core.turn(Pen.ANGLE, apex, 0, 65, 1.08);
        scene.dot(Pen.PLANE, core.onWall(plane, 0));
        scene.label(core.wall(40, apex), 14, 34, "beta", Pen.ANGLE);
        scene.eye(core.axis().times(-112), core.axis());
        sheet.foot(8, "dot: down-hole end", "of the long axis");
        return sheet;
    }

    static Sheet betaMaps() {
        Sheet sheet = new Sheet(492, 200, "Four ways to read one plane, looking down-hole");
        double x = 66;
        for (Apex apex : Apex.values()) {
            for (Sense sense : Sense.values()) {
                map(sheet, x, new BetaConvention(sense, View.DOWN_HOLE, apex));
                x += 120;
            }
        }
        sheet.dot(Pen.LINE, 12, 188, "drawn line");
        sheet.dot(Pen.PLANE, 100, 188, "down-hole end of the long axis");
        sheet.ring(Pen.PLANE, 300, 188, "up-hole end");
        return sheet;
    }

    private static void map(Sheet sheet, double x, BetaConvention convention) {
        double house = 60;
        double read = convention.fromHouse(house);
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(-60, 90), 180);
        Scene scene = new Scene(sheet, Sight.alongCore(frame.turned(180)), x, 84);
        CoreDrawing core = new CoreDrawing(scene, frame, 36);
        core.end();
        scene.line(Pen.of(Pen.PLANE).wide(1.2), core.wall(house, 0), core.wall(house + 180, 0));
        scene.dot(Pen.PLANE, core.wall(house, 0));
        scene.ring(Pen.PLANE, core.wall(house + 180, 0));
        scene.dot(Pen.LINE, core.wall(0, 0));
        core.turn(Pen.ANGLE, 0, 0, convention.sense() == Sense.CLOCKWISE ? read : -read, 1.24);
        boolean down = convention.apex() == Apex.DOWN_HOLE;
        boolean clockwise = convention.sense() == Sense.CLOCKWISE;
        String name = clockwise ? (down ? "b" : "b + 180") : down ? "-b" : "180 - b";
        sheet.text(new Point(x, 143), name + ": reads " + Math.round(read), Anchor.MIDDLE, Pen.ANGLE);
        sheet.text(new Point(x, 158), clockwise ? "clockwise" : "anticlockwise", Anchor.MIDDLE, Pen.INK);
        sheet.text(new Point(x, 171), down ? "to down-hole end" : "to up-hole end", Anchor.MIDDLE, Pen.INK);
    }

    static Sheet alpha90() {
        Sheet sheet = new Sheet(240, 200, "alpha 90: no beta");
        Scene scene = new Scene(sheet, SIGHT, 116, 100);
        CoreDrawing core = new CoreDrawing(scene, FRAME, 34);
        core.body(-80, 80);
        core.alongWall(0, -80, 80, Pen.LINE);
        core.plane(CorePlane.perpendicular());
        sheet.foot(8, "a circle has no long axis");
        return sheet;
    }

    static Sheet alpha0() {
        Sheet sheet = new Sheet(240, 200, "alpha 0: along the core");
        Scene scene = new Scene(sheet, Sight.from(212, 12), 116, 100);
        CoreDrawing core = new CoreDrawing(scene, FRAME.turned(55), 34);
        core.body(-80, 80);
        double beta = 40;
        scene.area(
                Pen.area(Pen.PLANE, 0.2),
                List.of(
                        core.wall(beta + 90, -80),
                        core.wall(beta + 90, 80),
                        core.wall(beta - 90, 80),
                        core.wall(beta - 90, -80)));
        core.alongWall(beta + 90, -80, 80, Pen.PLANE);
        core.alongWall(beta - 90, -80, 80, Pen.PLANE);
        scene.line(Pen.of(Pen.PLANE).wide(2), core.wall(beta + 90, -80), core.wall(beta - 90, -80));
        core.alongWall(0, -80, 80, Pen.LINE);
        sheet.foot(8, "beta and beta + 180: one plane");
        return sheet;
    }
}
