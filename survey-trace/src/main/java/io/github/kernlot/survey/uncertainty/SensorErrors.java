package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;

/**
 * What errors of measured gravity and field do to the measured direction, docs/survey-uncertainty.md section 4. A tool reads down
 * from gravity, east from {@code g x b} and north from both; all three are regular in any attitude.
 */
final class SensorErrors {

    private SensorErrors() {}

    /** Of an error of the gravity measured, metres per second squared in the ground's frame. */
    static UnitShift ofGravity(SurveyedPoint point, Vector error) {
        return of(point, error, new Vector(0, 0, 0));
    }

    /** Of an error of the field measured, nanotesla in the ground's frame. */
    static UnitShift ofField(SurveyedPoint point, Vector error) {
        return of(point, new Vector(0, 0, 0), error);
    }

    /** Gravity at a point. */
    static Vector gravity(SurveyedPoint point) {
        return Vector.DOWN.times(point.neededEarth().gravity());
    }

    /** The magnetic field at a point. */
    static Vector field(SurveyedPoint point) {
        EarthReference earth = point.neededEarth();
        return magnetic(point, 0)
                .times(earth.horizontalField())
                .plus(Vector.DOWN.times(earth.field() * Degrees.sin(earth.dip())));
    }

    /** The horizontal unit vector of an azimuth from magnetic north. */
    private static Vector magnetic(SurveyedPoint point, double azimuth) {
        return Vector.ofAzimuth(point.direction().azimuth() - point.neededMagneticAzimuth() + azimuth);
    }

    private static UnitShift of(SurveyedPoint point, Vector gravityError, Vector fieldError) {
        EarthReference earth = point.neededEarth();
        Vector north = magnetic(point, 0);
        Vector east = magnetic(point, 90);
        Vector tangent = point.tangent();
        double tiltNorth = gravityError.dot(north) / earth.gravity();
        double tiltEast = gravityError.dot(east) / earth.gravity();
        double tangentOfDip = Degrees.sin(earth.dip()) / Degrees.cos(earth.dip());
        // dA = tan(dip) dg_E / G - db_E / H
        double swing = tiltEast * tangentOfDip - fieldError.dot(east) / earth.horizontalField();
        double alongNorth = tangent.dot(north);
        double alongEast = tangent.dot(east);
        Vector shift = north.times(-swing * alongEast - tiltNorth * tangent.down())
                .plus(east.times(swing * alongNorth - tiltEast * tangent.down()))
                .plus(Vector.DOWN.times(tiltNorth * alongNorth + tiltEast * alongEast));
        return new UnitShift(0, shift.north(), shift.east(), shift.down());
    }
}
