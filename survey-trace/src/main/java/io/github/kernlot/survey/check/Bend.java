package io.github.kernlot.survey.check;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.SurveyStation;

/** What happens between two stations. */
record Bend(SurveyStation upper, SurveyStation lower) {

    double length() {
        return lower.depth() - upper.depth();
    }

    double dogleg() {
        return upper.direction().angleTo(lower.direction());
    }

    double severity(double perMetres) {
        return dogleg() / length() * perMetres;
    }

    /**
     * The azimuth's share of the dogleg, from sin^2(D/2) = sin^2(dI/2) + sin I1 sin I2 sin^2(dA/2): unlike the turn of the azimuth it
     * means the same at every inclination.
     */
    double azimuthShare() {
        double turn = lower.direction().azimuth() - upper.direction().azimuth();
        double across = Degrees.sin(upper.direction().inclination())
                * Degrees.sin(lower.direction().inclination());
        return 2 * Math.toDegrees(Math.asin(Math.min(1, Math.sqrt(across) * Math.abs(Degrees.sin(turn / 2)))));
    }

    static Vector vector(HoleDirection direction) {
        return new Vector(direction.north(), direction.east(), direction.down());
    }

    static HoleDirection direction(Vector vector) {
        return HoleDirection.ofVector(vector.north(), vector.east(), vector.down());
    }

    /** The unit vector at a fraction of the arc from one unit vector to another, beyond its ends too; opposite ones have no arc. */
    static Vector along(Vector from, Vector to, double fraction) {
        double angle = from.angleTo(to);
        double whole = Math.sin(angle);
        if (whole < 1e-9) {
            return angle < 1 ? from.times(1 - fraction).plus(to.times(fraction)).unit() : from;
        }
        return from.times(Math.sin((1 - fraction) * angle) / whole).plus(to.times(Math.sin(fraction * angle) / whole));
    }
}
