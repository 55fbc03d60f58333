package io.github.kernlot.survey.sensor;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.uncertainty.EarthReference;

/**
 * What the accelerometers and magnetometers of a tool at rest read at one depth, in the axes that the package tells. Azimuths are
 * counted from magnetic north: a {@link io.github.kernlot.survey.Survey} of such stations has a magnetic north reference.
 *
 * <p>Down is along g, east along g x b, north along both's product; inclination, azimuth and roll follow by atan2 alone (docs/north.md
 * section 5).
 *
 * @param gravity the accelerometers
 * @param field the magnetometers
 */
public record SensorReading(GravityReading gravity, FieldReading field) {

    /**
     * Checks that the two tell a north.
     *
     * @throws IllegalArgumentException if the field lies along gravity, as at a magnetic pole
     */
    public SensorReading {
        Vector east = gravity.vector().unit().cross(field.vector().unit());
        if (!(east.length() > 0)) {
            throw new IllegalArgumentException("the magnetic field " + field + " lies along gravity " + gravity
                    + "; expected an angle between them, without which there is no magnetic north");
        }
    }

    /**
     * A reading of both.
     *
     * @param gravity the accelerometers
     * @param field the magnetometers
     * @return the reading
     * @throws IllegalArgumentException if the field lies along gravity, as at a magnetic pole
     */
    public static SensorReading of(GravityReading gravity, FieldReading field) {
        return new SensorReading(gravity, field);
    }

    /**
     * What a tool without errors reads.
     *
     * @param direction the direction of the hole, its azimuth from magnetic north; of a vertical one the azimuth is that from which the
     *     roll is counted
     * @param roll where the y axis lies, clockwise from the high side looking down-hole, degrees, any finite number
     * @param earth gravity and field of the place
     * @return the reading
     * @throws IllegalArgumentException if the roll is not finite
     */
    public static SensorReading simulated(HoleDirection direction, double roll, EarthReference earth) {
        ToolAxes axes = ToolAxes.of(direction, Require.finite("roll", roll, "degrees"));
        Vector field = axes.inTool(new Vector(earth.horizontalField(), 0, earth.field() * Degrees.sin(earth.dip())));
        return new SensorReading(
                GravityReading.simulated(direction, roll, earth.gravity()),
                new FieldReading(field.north(), field.east(), field.down()));
    }

    /**
     * The direction of the hole, its azimuth from magnetic north.
     *
     * @return the direction; azimuth 0 where the tool hangs exactly vertical
     */
    public HoleDirection direction() {
        return HoleDirection.ofVector(north().down(), east().down(), down().down());
    }

    /**
     * The station of this reading in a survey from magnetic north.
     *
     * @param depth metres along the hole, 0 or more
     * @return the station
     * @throws IllegalArgumentException if the depth is negative or not finite
     */
    public SurveyStation station(double depth) {
        return new SurveyStation(depth, direction());
    }

    /**
     * The roll of the tool from the high side.
     *
     * @return where the y axis lies, clockwise from the high side looking down-hole, degrees in [0, 360)
     * @throws IllegalArgumentException if the tool hangs exactly vertical
     */
    public double roll() {
        return gravity.roll();
    }

    /**
     * The roll of the tool from the low side.
     *
     * @return where the y axis lies, clockwise from the low side looking down-hole, degrees in [0, 360)
     * @throws IllegalArgumentException if the tool hangs exactly vertical
     */
    public double rollFromLowSide() {
        return gravity.rollFromLowSide();
    }

    /**
     * The roll of the tool from north, as a mark referred to north is counted; in a vertical hole also called its magnetic toolface.
     *
     * @return where the y axis lies, clockwise looking down-hole from the wall direction nearest magnetic north, degrees in [0, 360)
     * @throws IllegalArgumentException if the hole runs exactly along magnetic north or south, where no wall direction is nearest
     */
    public double rollFromNorth() {
        Vector north = north();
        if (north.north() == 0 && north.east() == 0) {
            throw new IllegalArgumentException(
                    "the hole runs along magnetic north, so that no side of its wall is nearest to it; count the roll from the high"
                            + " side");
        }
        return Degrees.azimuth(north.north(), north.east());
    }

    /**
     * The dip of the measured field, to be compared with that of the place.
     *
     * @return degrees below the horizontal in [-90, 90], positive down
     */
    public double dip() {
        Vector g = gravity.vector().unit();
        Vector b = field.vector();
        return Degrees.atan2(g.dot(b), g.cross(b).length());
    }

    /**
     * Where core stood whose reference line was drawn along the y axis of the tool. It exists in every attitude; its north is the
     * magnetic one.
     *
     * @return the frame
     */
    public CoreFrame frame() {
        Vector north = north();
        boolean steep = Math.hypot(north.north(), north.east()) > Math.hypot(down().north(), down().east());
        return steep
                ? CoreFrame.at(direction(), WallReference.north(), rollFromNorth())
                : CoreFrame.at(direction(), WallReference.highSide(), roll());
    }

    /**
     * How well direction and roll are known.
     *
     * @param sigmas those of the sensors
     * @return the uncertainty
     */
    public AttitudeUncertainty uncertainty(SensorSigmas sigmas) {
        return new AttitudeUncertainty(this, sigmas);
    }

    /** The unit vector downwards in the axes of the tool. */
    Vector down() {
        return gravity.vector().unit();
    }

    /** The unit vector towards magnetic east in the axes of the tool. */
    Vector east() {
        return down().cross(field.vector().unit()).unit();
    }

    /** The unit vector towards magnetic north in the axes of the tool. */
    Vector north() {
        return east().cross(down());
    }

    /** The direction, told to be magnetic. */
    @Override
    public String toString() {
        return direction() + " from magnetic north";
    }
}
