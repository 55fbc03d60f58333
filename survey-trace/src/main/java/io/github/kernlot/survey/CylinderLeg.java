package io.github.kernlot.survey;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A curve on a vertical cylinder: the inclination is linear in depth, the azimuth in the horizontal length h. Over a run s the
 * horizontal length is {@code s sinc(dI/2) sin((I1+I2)/2)}, the way down {@code s sinc(dI/2) cos((I1+I2)/2)} and the chord of the
 * plan {@code h sinc(dA/2)} along the mean azimuth, with sinc x = sin x / x: the product formula of the textbooks without its
 * divisions by differences of angles. Since cos I is linear in h too, a scribe turns by {@code -dA (cos I1 + cos I2)/2}.
 */
final class CylinderLeg extends Leg {

    private final double inclination;
    private final double azimuth;
    private final double build;
    private final double turn;
    private final double lowest;
    private final double highest;
    private final double horizontal;

    CylinderLeg(Station station, Heading begin, double inclination, double turn, double length) {
        super(station, begin, false);
        this.inclination = begin.direction().inclination();
        this.azimuth = begin.direction().azimuth();
        this.build = (inclination - this.inclination) / length;
        this.turn = turn;
        this.lowest = Math.min(inclination, this.inclination);
        this.highest = Math.max(inclination, this.inclination);
        this.horizontal = horizontal(length);
    }

    private static double sinc(double degrees) {
        double angle = Math.toRadians(degrees);
        return ArcSeries.along(angle * angle);
    }

    private double chord(double run) {
        return run * sinc(build * run / 2);
    }

    private double horizontal(double run) {
        return chord(run) * Degrees.sin(inclination + build * run / 2);
    }

    private double turn(double run) {
        return turn == 0 ? 0 : turn * (horizontal(run) / horizontal);
    }

    private double inclination(double run) {
        return Math.max(lowest, Math.min(highest, inclination + build * run));
    }

    @Override
    void way(double run, double[] out) {
        double turned = turn(run);
        double plan = horizontal(run) * sinc(turned / 2);
        double mean = azimuth + turned / 2;
        out[0] = plan * Degrees.cos(mean);
        out[1] = plan * Degrees.sin(mean);
        out[2] = chord(run) * Degrees.cos(inclination + build * run / 2);
    }

    @Override
    void angles(double run, double[] out) {
        out[0] = inclination(run);
        out[1] = Degrees.wrap360(azimuth + turn(run));
    }

    @Override
    Heading heading(double run) {
        HoleDirection to = direction(run);
        if (turn == 0) {
            // in one vertical plane, where either end may be vertical
            return begin.turnedTo(to);
        }
        double scribe = -turn(run) * (Degrees.cos(inclination) + Degrees.cos(to.inclination())) / 2;
        CoreFrame carried = CoreFrame.at(to, begin.carried().lineAngle() + scribe);
        return new Heading(to, carried, begin.turn() + scribe);
    }

    @Override
    Curvature curvature(double run, HoleDirection there) {
        HoleDirection to = direction(run);
        double sine = Degrees.sin(to.inclination());
        double cosine = Degrees.cos(to.inclination());
        double building = Math.toRadians(build);
        double turning = turn == 0 ? 0 : Math.toRadians(turn) * sine * sine / horizontal;
        Vector high = Vector.ofAzimuth(to.azimuth()).times(cosine).plus(new Vector(0, 0, -sine));
        Vector towards =
                high.times(building).plus(Vector.ofAzimuth(to.azimuth() + 90).times(turning));
        return Curvature.ofRadians(there, towards, Math.sqrt(building * building + turning * turning));
    }
}
