package io.github.kernlot.survey.docs;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HoleSense;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.docs.Sheet.Anchor;
import io.github.kernlot.survey.docs.Sheet.Point;
import java.util.ArrayList;
import java.util.List;

/** The reference line, its marks and its arrows. */
final class LinePictures {

    private static final HoleDirection HOLE = HoleDirection.ofDip(-60, 90);

    /** Half as wide as a hole is drawn in small. */
    private static final double TUBE = 11;

    private LinePictures() {}

    static Sheet lineAngle() {
        Sheet sheet = new Sheet(240, 200, "x, the line angle");
        CoreFrame lowSide = CoreFrame.at(HOLE, 0);
        Scene scene = new Scene(sheet, Sight.alongCore(lowSide), 126, 92);
        CoreDrawing core = new CoreDrawing(scene, lowSide, 54);
        core.end();
        radius(scene, core, 0);
        radius(scene, core, 50);
        scene.dot(Pen.GROUND, core.wall(0, 0));
        scene.label(core.wall(0, 0), 6, 14, "low side", Pen.GROUND);
        scene.dot(Pen.LINE, core.wall(50, 0));
        scene.label(core.wall(50, 0), -8, 6, "drawn line", Pen.LINE);
        core.turn(Pen.ANGLE, 0, 0, 50, 0.68);
        scene.label(core.wall(25, 0).times(0.4), 0, 5, "x", Pen.ANGLE);
        sheet.foot(8, "looking down-hole");
        return sheet;
    }

    private static void radius(Scene scene, CoreDrawing core, double angle) {
        scene.line(Pen.of(Pen.INK).wide(0.8), Scene.ORIGIN, core.wall(angle, 0));
    }

    static Sheet markOffset() {
        CoreDiameter diameter = CoreDiameter.ofMillimetres(63.5);
        double offset = diameter.toDegrees(40);
        double predicted = 50;
        Sheet sheet = new Sheet(240, 200, "A mark and its residual");
        CoreFrame line = CoreFrame.at(HOLE, 230);
        Scene scene = new Scene(sheet, Sight.alongCore(CoreFrame.at(HOLE, 0)), 84, 106);
        CoreDrawing core = new CoreDrawing(scene, line, 54);
        core.end();
        radius(scene, core, 0);
        radius(scene, core, offset);
        scene.line(Pen.of(Pen.INK).wide(0.8).dashed(), Scene.ORIGIN, core.wall(predicted, 0));
        scene.dot(Pen.LINE, core.wall(0, 0));
        scene.label(core.wall(0, 0), 6, -8, "drawn line", Pen.LINE);
        scene.ring(Pen.LINE, core.wall(offset, 0));
        scene.label(core.wall(offset, 0), 4, 17, "mark", Pen.LINE);
        scene.label(core.wall(predicted, 0), 8, -4, "predicted", Pen.INK);
        core.turn(Pen.ANGLE, 0, 0, offset, 0.6);
        scene.label(Scene.ORIGIN, -4, 4, "offset", Pen.ANGLE);
        core.turn(Pen.POLE, 0, predicted, offset, 1.16);
        scene.label(core.wall((predicted + offset) / 2, 0).times(1.2), 4, 5, "residual +", Pen.POLE);
        sheet.foot(8, "looking down-hole");
        return sheet;
    }

    static Sheet arrows() {
        Sheet sheet = new Sheet(240, 200, "Arrows on the line");
        arrows(sheet, 62, HoleSense.DOWN_HOLE, 60);
        arrows(
                sheet,
                180,
                HoleSense.UP_HOLE,
                BetaConvention.HOUSE.withArrowUpHole().fromHouse(60));
        return sheet;
    }

    private static void arrows(Sheet sheet, double x, HoleSense sense, double read) {
        boolean down = sense == HoleSense.DOWN_HOLE;
        int along = down ? 1 : -1;
        CoreFrame frame = CoreFrame.at(HoleDirection.ofInclination(90, 90), 235);
        Scene scene = new Scene(sheet, Sight.from(180 + 24 * along, 14), x + 7 * along, 50);
        CoreDrawing core = new CoreDrawing(scene, frame, 15);
        core.body(-38, 38);
        core.alongWall(0, -38, 38, Pen.LINE);
        for (double barb : new double[] {-18, 4, 26}) {
            core.barb(0, barb, 8 * along, Pen.LINE);
        }
        scene.eye(core.axis().times(-55.0 * along), core.axis().times(along));
        // what that eye sees, the line at the top: clockwise to the end that lies ahead
        Sight ahead = Sight.alongCore(frame.turned(180));
        Scene seen = new Scene(sheet, down ? ahead : new Sight(ahead.right().negated(), ahead.up()), x, 124);
        CoreDrawing end = new CoreDrawing(seen, frame, 32);
        end.end();
        seen.line(Pen.of(Pen.PLANE).wide(1.2), end.wall(60, 0), end.wall(240, 0));
        seen.dot(Pen.PLANE, end.wall(60, 0));
        seen.ring(Pen.PLANE, end.wall(240, 0));
        seen.dot(Pen.LINE, end.wall(0, 0));
        end.turn(Pen.ANGLE, 0, 0, along * read, 1.26);
        sheet.text(new Point(x, 178), down ? "arrow down-hole" : "arrow up-hole", Anchor.MIDDLE, Pen.INK);
        sheet.text(new Point(x, 191), "reads " + Math.round(read), Anchor.MIDDLE, Pen.ANGLE);
    }

    static Sheet scribeTurn() {
        HoleTrace trace = HoleTrace.minimumCurvature(
                Position.ofEastingNorthingElevation(0, 0, 0),
                Survey.of(
                                List.of(
                                        SurveyStation.ofDip(0, -66, 30),
                                        SurveyStation.ofDip(80, -68, 70),
                                        SurveyStation.ofDip(160, -70, 110)),
                                NorthReference.grid())
                        .toGrid());
        Sheet sheet = new Sheet(240, 200, "A straight line in a curved hole");
        Scene scene = new Scene(sheet, Sight.from(250, 14), 64, 46);
        double start = trace.carriedFrameAt(0).lineAngle();
        List<Vector> path = new ArrayList<>();
        List<Vector> low = new ArrayList<>();
        List<Vector> line = new ArrayList<>();
        for (int depth = 0; depth <= 160; depth += 2) {
            Vector place = placeAt(trace, depth);
            Vector lowSide = Sight.wall(CoreFrame.at(trace.directionAt(depth), 0), 0);
            path.add(place);
            line.add(place.plus(Sight.wall(trace.carriedFrameAt(depth), -start).times(TUBE)));
            if (lowSide.dot(scene.sight().towardsOnlooker()) > 0) {
                low.add(place.plus(lowSide.times(TUBE)));
            }
        }
        scene.line(Pen.of(Pen.INK).wide(2 * TUBE + 2), path);
        scene.line(Pen.of(Pen.CORE).wide(2 * TUBE), path);
        scene.line(Pen.of(Pen.GROUND).wide(1.6).dashed(), low);
        scene.line(Pen.of(Pen.LINE).wide(2), line);
        dial(sheet, trace, 0, 170, 66);
        dial(sheet, trace, 160, 170, 136);
        sheet.dot(Pen.LINE, 130, 175, "drawn line");
        sheet.dot(Pen.GROUND, 130, 189, "low side");
        return sheet;
    }

    private static Vector placeAt(HoleTrace trace, double depth) {
        var way = trace.displacementAt(depth);
        return new Vector(way.north(), way.east(), way.down());
    }

    private static void dial(Sheet sheet, HoleTrace trace, double depth, double x, double y) {
        CoreFrame lowSide = CoreFrame.at(trace.directionAt(depth), 0);
        Scene scene = new Scene(sheet, Sight.alongCore(lowSide), x, y);
        CoreDrawing core = new CoreDrawing(scene, lowSide, 22);
        core.end();
        double turn = depth == 0 ? 0 : trace.scribeTurn(0, depth);
        radius(scene, core, 0);
        radius(scene, core, turn);
        scene.dot(Pen.GROUND, core.wall(0, 0).times(0.8));
        scene.dot(Pen.LINE, core.wall(turn, 0));
        if (depth > 0) {
            core.turn(Pen.ANGLE, 0, 0, turn, 0.55);
        }
        scene.label(core.wall(180, 0), 0, -6, "at " + Math.round(depth) + " m: x " + Math.round(turn), Pen.INK);
    }
}
