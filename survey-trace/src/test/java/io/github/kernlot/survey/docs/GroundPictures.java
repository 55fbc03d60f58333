package io.github.kernlot.survey.docs;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneNotation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Rotation;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.docs.Sheet.Anchor;
import io.github.kernlot.survey.docs.Sheet.Point;
import java.util.List;

/** Planes and lines in the ground, turns and norths. */
final class GroundPictures {

    private GroundPictures() {}

    /** The direction of plunge and trend, negative upwards. */
    static Vector line(double plunge, double trend) {
        return Sight.vector(DirectedLine.ofPlungeAndTrend(plunge, trend));
    }

    private static void north(Scene scene, double length) {
        scene.arrow(Pen.of(Pen.GROUND), Scene.ORIGIN, Vector.ofAzimuth(0).times(length));
        scene.label(Vector.ofAzimuth(0).times(length), -4, -2, "north", Pen.GROUND);
    }

    /** Half of a plane below the ground, its strike through the origin. */
    private static void plane(Scene scene, PlaneOrientation plane, double half, double fall) {
        Vector strike = Vector.ofAzimuth(plane.strike()).times(half);
        Vector down = line(plane.dip(), plane.dipDirection()).times(fall);
        scene.area(
                Pen.of(Pen.PLANE).wide(1.2).filled(Pen.PLANE, 0.2),
                List.of(strike, strike.plus(down), down.minus(strike), strike.negated()));
    }

    static Sheet dip() {
        Sheet sheet = new Sheet(240, 200, "Dip, dip direction, strike");
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(50, 110);
        Scene scene = new Scene(sheet, Sight.from(160, 32), 116, 92);
        scene.ground(58);
        north(scene, 84);
        plane(scene, plane, 66, 84);
        Vector strike = Vector.ofAzimuth(plane.strike());
        scene.arrow(Pen.of(Pen.PLANE).wide(2), strike.times(-66), strike.times(78));
        scene.label(strike.times(78), 4, 0, "strike", Pen.PLANE);
        scene.line(
                Pen.of(Pen.INK).dashed().wide(1),
                Scene.ORIGIN,
                Vector.ofAzimuth(plane.dipDirection()).times(74));
        scene.arrow(
                Pen.of(Pen.PLANE),
                Scene.ORIGIN,
                line(plane.dip(), plane.dipDirection()).times(84));
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 36, 0, plane.dipDirection(), Vector::ofAzimuth);
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 58, 0, plane.dip(), dip -> line(dip, plane.dipDirection()));
        scene.label(line(25, 110).times(60), 4, 4, "dip", Pen.ANGLE);
        scene.label(Vector.ofAzimuth(70).times(40), 4, -4, "dip direction", Pen.ANGLE);
        return sheet;
    }

    static Sheet strikes() {
        Sheet sheet = new Sheet(240, 200, "Strike by either hand");
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(50, 130);
        strike(sheet, 62, plane.strike(), "right hand", PlaneNotation.STRIKE_RIGHT_HAND.format(plane, 0));
        strike(sheet, 178, plane.strike() + 180, "left hand", PlaneNotation.STRIKE_LEFT_HAND.format(plane, 0));
        return sheet;
    }

    private static void strike(Sheet sheet, double x, double azimuth, String rule, String written) {
        Scene scene = new Scene(sheet, Sight.map(), x, 96);
        Vector strike = Vector.ofAzimuth(azimuth).times(44);
        scene.arrow(Pen.of(Pen.PLANE).wide(2.2), strike.negated(), strike);
        Vector fall = Vector.ofAzimuth(130);
        scene.line(Pen.of(Pen.PLANE).wide(2.2), Scene.ORIGIN, fall.times(13));
        scene.arrow(
                Pen.of(Pen.GROUND).wide(1), Scene.ORIGIN, Vector.ofAzimuth(0).times(52));
        scene.label(Vector.ofAzimuth(0).times(52), -4, 2, "N", Pen.GROUND);
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 26, 0, azimuth, Vector::ofAzimuth);
        sheet.text(new Point(x, 168), rule, Anchor.MIDDLE, Pen.INK);
        sheet.text(new Point(x, 182), written, Anchor.MIDDLE, Pen.ANGLE);
    }

    static Sheet pole() {
        Sheet sheet = new Sheet(240, 200, "Pole");
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(35, 90);
        Scene scene = new Scene(sheet, Sight.from(180, 0), 122, 62);
        Vector horizontal = Vector.ofAzimuth(90);
        scene.line(Pen.of(Pen.GROUND).wide(1), horizontal.times(-104), horizontal.times(98));
        scene.label(horizontal.times(98), -1, -6, "horizontal", Pen.GROUND);
        plane(scene, plane, 50, 98);
        Vector pole = Sight.vector(plane.pole());
        scene.arrow(Pen.of(Pen.POLE).wide(2), Scene.ORIGIN, pole.times(108));
        scene.label(pole.times(108), -6, 8, "pole", Pen.POLE);
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 60, 0, plane.dip(), dip -> line(dip, 90));
        scene.label(line(18, 90).times(66), 2, 6, "dip", Pen.ANGLE);
        scene.angle(
                Pen.POLE,
                Scene.ORIGIN,
                50,
                0,
                plane.pole().plunge(),
                plunge -> line(plunge, plane.pole().trend()));
        scene.label(line(30, 270).times(54), -2, 8, "90 - dip", Pen.POLE);
        return sheet;
    }

    static Sheet plunge() {
        Sheet sheet = new Sheet(240, 200, "Plunge and trend");
        Scene scene = new Scene(sheet, Sight.from(160, 28), 108, 110);
        scene.ground(62);
        north(scene, 88);
        double trend = 115;
        scene.line(
                Pen.of(Pen.INK).dashed().wide(1),
                Vector.ofAzimuth(trend).times(-60),
                Vector.ofAzimuth(trend).times(76));
        scene.arrow(Pen.of(Pen.POLE).wide(2), Scene.ORIGIN, line(35, trend).times(98));
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 38, 0, trend, Vector::ofAzimuth);
        scene.label(Vector.ofAzimuth(62).times(40), 5, -4, "trend", Pen.ANGLE);
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 70, 0, 35, plunge -> line(plunge, trend));
        scene.label(line(16, trend).times(72), 4, 6, "plunge", Pen.ANGLE);
        scene.arrow(
                Pen.of(Pen.POLE).wide(2).dashed(),
                Scene.ORIGIN,
                line(-45, trend + 180).times(74));
        scene.label(line(-45, trend + 180).times(74), -4, -6, "plunge -45", Pen.POLE);
        return sheet;
    }

    static Sheet rotation() {
        Sheet sheet = new Sheet(240, 200, "Turned about an axis");
        DirectedLine axis = DirectedLine.ofPlungeAndTrend(20, 60);
        DirectedLine before = DirectedLine.ofPlungeAndTrend(70, 240);
        Scene scene = new Scene(sheet, Sight.from(190, 14), 124, 98);
        Vector along = Sight.vector(axis);
        scene.arrow(Pen.of(Pen.INK).wide(2), along.times(-56), along.times(92));
        scene.label(along.times(92), 4, -4, "axis", Pen.INK);
        scene.eye(along.times(-92), along);
        scene.arrow(
                Pen.of(Pen.POLE).wide(2).dashed(),
                Scene.ORIGIN,
                Sight.vector(before).times(80));
        Vector after = Sight.vector(Rotation.about(axis, 130).apply(before));
        scene.arrow(Pen.of(Pen.POLE).wide(2), Scene.ORIGIN, after.times(80));
        scene.angle(
                Pen.ANGLE,
                Scene.ORIGIN,
                62,
                0,
                128,
                angle -> Sight.vector(Rotation.about(axis, angle).apply(before)));
        scene.label(Sight.vector(before).times(80), 6, 2, "before", Pen.POLE);
        scene.label(after.times(80), -2, -4, "after", Pen.POLE);
        sheet.foot(8, "clockwise, looking along the axis");
        return sheet;
    }

    static Sheet norths() {
        Sheet sheet = new Sheet(240, 200, "Three norths");
        double declination = 14;
        double convergence = -9;
        Survey measured =
                Survey.of(List.of(SurveyStation.ofDip(0, -60, 60)), NorthReference.magnetic(declination, convergence));
        HoleDirection grid = measured.toGrid().stations().get(0).direction();
        // the map has true north up: an azimuth on the grid is turned by the convergence
        Vector hole = Vector.ofAzimuth(grid.withAzimuthTurned(convergence).azimuth());
        Scene scene = new Scene(sheet, Sight.map(), 108, 168);
        north(scene, 0, "true north", 126);
        north(scene, declination, "magnetic", 104);
        north(scene, convergence, "grid", 104);
        scene.arrow(Pen.of(Pen.INK).wide(3), Scene.ORIGIN, hole.times(118));
        scene.label(hole.times(112), 0, 20, "hole", Pen.INK);
        scene.angle(Pen.ANGLE, Scene.ORIGIN, 44, convergence, grid.azimuth() + convergence, Vector::ofAzimuth);
        scene.label(Vector.ofAzimuth(56).times(44), 6, -3, "grid " + Math.round(grid.azimuth()), Pen.ANGLE);
        scene.angle(Pen.POLE, Scene.ORIGIN, 82, 0, declination, Vector::ofAzimuth);
        scene.angle(Pen.PLANE, Scene.ORIGIN, 70, 0, convergence, Vector::ofAzimuth);
        scene.label(Vector.ofAzimuth(declination).times(74), 6, 0, "declination +", Pen.POLE);
        scene.label(Vector.ofAzimuth(convergence).times(62), -6, 0, "convergence -", Pen.PLANE);
        return sheet;
    }

    private static void north(Scene scene, double azimuth, String name, double length) {
        Vector tip = Vector.ofAzimuth(azimuth).times(length);
        scene.arrow(Pen.of(Pen.GROUND), Scene.ORIGIN, tip);
        scene.label(tip, azimuth == 0 ? 0 : azimuth > 0 ? 4 : -4, -4, name, Pen.GROUND);
    }
}
