package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.orientation.line.Fabric;

/**
 * How probable a reading is of a structure of a fabric, on the sphere of poles in core coordinates, where the two ends of a pole and
 * the edges of alpha need no care.
 *
 * @param predicted the pole that the fabric's mean shows on the core, on the down-hole side
 * @param alphaDeviation standard deviation of a reading's pole where alpha changes, degrees
 * @param betaDeviation standard deviation of a reading's pole where beta changes, degrees
 * @param scatter the fabric's part in it, degrees
 * @param stray how probable it is that the structure is not of the fabric
 */
record FabricLikelihood(Vector predicted, double alphaDeviation, double betaDeviation, double scatter, double stray) {

    private static final Vector AXIS = new Vector(1, 0, 0);

    /** A sharper fabric than this, in degrees, would fall between the nodes of any grid. */
    private static final double LEAST_SCATTER = 0.05;

    /** A wider one, in degrees, is as flat over the whole sphere. */
    private static final double FLAT = 1e6;

    /** A hemisphere in square degrees. */
    private static final double HEMISPHERE = 2 * Math.PI * Math.toDegrees(1) * Math.toDegrees(1);

    static FabricLikelihood of(Fabric fabric, CorePlane shown, double alphaSigma, double betaSigma) {
        double scatter = scatter(fabric);
        return new FabricLikelihood(
                pole(shown.alpha(), shown.beta()),
                Math.hypot(scatter, flattest(alphaSigma)),
                Math.hypot(scatter, Degrees.cos(shown.alpha()) * flattest(betaSigma)),
                scatter,
                fabric.stray());
    }

    static double scatter(Fabric fabric) {
        return Math.max(flattest(fabric.sigma()), LEAST_SCATTER);
    }

    static double flattest(double sigma) {
        return Math.min(sigma, FLAT);
    }

    /** The normal on the down-hole side in core coordinates: axis, line, 90 clockwise of the line. */
    static Vector pole(double alpha, double beta) {
        double across = -Degrees.cos(alpha);
        return new Vector(Degrees.sin(alpha), across * Degrees.cos(beta), across * Degrees.sin(beta));
    }

    /** The logarithm of the density of a pole that was read, per square degree. */
    double log(Vector read) {
        return sum(sum(member(read), member(read.negated())), lost());
    }

    /** The log density of a member of the fabric whose pole was read by this end. */
    double member(Vector read) {
        // an error of beta turns the pole round the core, on no great circle: its likeliest share is turned back
        double share = Math.max(0, 1 - Math.pow(scatter / betaDeviation, 2));
        double turn = Degrees.wrap180(beta(read) - beta(predicted));
        Vector aside = AXIS.cross(predicted);
        double turned = turn * aside.length() / betaDeviation;
        Vector pole = turned(read, -share * turn);
        Vector across = pole.across(predicted);
        double length = across.length();
        double angle = Math.toDegrees(predicted.angleTo(pole));
        double square = share * turned * turned;
        if (length == 0 || aside.length() < 1e-9) {
            square += angle * angle / (alphaDeviation * alphaDeviation);
        } else {
            // the deviation as a vector that touches the sphere at the predicted pole
            double round = across.times(angle / length).dot(aside.unit());
            square += round * round / (scatter * scatter)
                    + Math.max(0, angle * angle - round * round) / (alphaDeviation * alphaDeviation);
        }
        return Math.log((1 - stray) / (2 * Math.PI * alphaDeviation * betaDeviation)) - square / 2;
    }

    private static double beta(Vector pole) {
        return Degrees.atan2(-pole.down(), -pole.east());
    }

    /** A pole in core coordinates turned clockwise round the axis, looking down-hole. */
    private static Vector turned(Vector pole, double angle) {
        double cosine = Degrees.cos(angle);
        double sine = Degrees.sin(angle);
        return new Vector(
                pole.north(), pole.east() * cosine - pole.down() * sine, pole.east() * sine + pole.down() * cosine);
    }

    /** The log density of a stray, whose pole is anywhere. */
    double lost() {
        return Math.log(stray / HEMISPHERE);
    }

    private static double sum(double one, double other) {
        double most = Math.max(one, other);
        return most + Math.log(Math.exp(one - most) + Math.exp(other - most));
    }
}
