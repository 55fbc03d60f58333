package io.github.kernlot.orientation.rock;

import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.orientation.solve.PlaneEstimate;
import java.util.Locale;
import java.util.Optional;

/**
 * What a hole, straight or curved, cuts between two contacts, by the displacement {@code D = r2 - r1} between the places where it
 * pierces them: across parallel contacts with normal n the thickness is {@code |n . D|}, however the hole went in between.
 *
 * <p>Sigmas are to first order. They are too small along a line that comes within some three sigmas of the contacts, as a plumb line
 * does in steep ones, and where the hole crosses the contacts at right angles, where their orientation counts only to second order.
 */
public final class HoleIntercept {

    private final double from;
    private final double to;
    private final double depthSigma;
    private final Vector way;
    private final Vector startAxis;
    private final Vector endAxis;

    private HoleIntercept(double from, double to, double depthSigma, Vector way, Vector startAxis, Vector endAxis) {
        this.from = from;
        this.to = to;
        this.depthSigma = depthSigma;
        this.way = way;
        this.startAxis = startAxis;
        this.endAxis = endAxis;
    }

    /**
     * The intercept between two depths.
     *
     * @param path the path of the hole
     * @param from depth of the first contact, metres along the hole
     * @param to depth of the second, metres along the hole, not less than {@code from}
     * @return the intercept, its depths exact
     * @throws IllegalArgumentException if the depths are not in order, or the path does not reach one
     */
    public static HoleIntercept of(HolePath path, double from, double to) {
        Require.notNegative("from", from, "m");
        Require.inRange("to", to, from, Double.MAX_VALUE, "m");
        return new HoleIntercept(
                from,
                to,
                0,
                Ways.between(path.displacementAt(from), path.displacementAt(to)),
                Ways.axis(path.directionAt(from)),
                Ways.axis(path.directionAt(to)));
    }

    /**
     * The same intercept with the uncertainty of its depths.
     *
     * @param depthSigma standard deviation of each depth, independent of the other, metres, 0 or more
     * @return the intercept
     * @throws IllegalArgumentException if the sigma is negative or not finite
     */
    public HoleIntercept withDepthSigma(double depthSigma) {
        Require.notNegative("depth sigma", depthSigma, "m");
        return new HoleIntercept(from, to, depthSigma, way, startAxis, endAxis);
    }

    /**
     * The length along the hole.
     *
     * @return metres
     */
    public double length() {
        return to - from;
    }

    /**
     * The true thickness between contacts whose orientation is taken as exact.
     *
     * @param contacts the orientation of both contacts
     * @return the thickness across them, its sigma from the depths alone
     */
    public Thickness trueThickness(PlaneOrientation contacts) {
        return trueThickness(exact(contacts));
    }

    /**
     * The true thickness between contacts whose orientation is uncertain: {@code dT = D . dn + n . t2 ds2 - n . t1 ds1} with the
     * directions t of the hole at both ends.
     *
     * @param contacts the orientation of both contacts with the covariance of its pole
     * @return the thickness across them
     */
    public Thickness trueThickness(PlaneEstimate contacts) {
        return thickness(contacts, 1, new Vector(0, 0, 0)).orElseThrow();
    }

    /**
     * The vertical thickness between contacts whose orientation is taken as exact.
     *
     * @param contacts the orientation of both contacts
     * @return the length of a plumb line between the contacts, its sigma from the depths alone; empty where they are vertical
     */
    public Optional<Thickness> verticalThickness(PlaneOrientation contacts) {
        return verticalThickness(exact(contacts));
    }

    /**
     * The vertical thickness, {@code T / cos(dip)}.
     *
     * @param contacts the orientation of both contacts with the covariance of its pole
     * @return the length of a plumb line between the contacts; empty where they are vertical
     */
    public Optional<Thickness> verticalThickness(PlaneEstimate contacts) {
        return along(contacts, Vector.DOWN);
    }

    /**
     * The horizontal thickness between contacts whose orientation is taken as exact.
     *
     * @param contacts the orientation of both contacts
     * @return the length of the horizontal line across strike between the contacts, its sigma from the depths alone; empty where they are
     *     horizontal
     */
    public Optional<Thickness> horizontalThickness(PlaneOrientation contacts) {
        return horizontalThickness(exact(contacts));
    }

    /**
     * The horizontal thickness across strike, {@code T / sin(dip)}.
     *
     * @param contacts the orientation of both contacts with the covariance of its pole
     * @return the length of the horizontal line across strike between the contacts; empty where they are horizontal
     */
    public Optional<Thickness> horizontalThickness(PlaneEstimate contacts) {
        return along(contacts, Vector.ofAzimuth(contacts.plane().dipDirection()));
    }

    /**
     * The thickness along any line between contacts whose orientation is taken as exact.
     *
     * @param contacts the orientation of both contacts
     * @param line along which the thickness is measured
     * @return the length on the line between the contacts, its sigma from the depths alone; empty where it is parallel to them
     */
    public Optional<Thickness> thicknessAlong(PlaneOrientation contacts, LineOrientation line) {
        return thicknessAlong(exact(contacts), line);
    }

    /**
     * The thickness along any line, {@code T / |n . d|}.
     *
     * @param contacts the orientation of both contacts with the covariance of its pole
     * @param line along which the thickness is measured
     * @return the length on the line between the contacts; empty where it is parallel to them
     */
    public Optional<Thickness> thicknessAlong(PlaneEstimate contacts, LineOrientation line) {
        return along(contacts, Ways.line(line));
    }

    /**
     * The apparent thickness on a section between contacts whose orientation is taken as exact.
     *
     * @param contacts the orientation of both contacts
     * @param section the section; a vertical one has dip 90
     * @return the thickness that the section shows, its sigma from the depths alone; empty where the section is parallel to the contacts
     */
    public Optional<Thickness> thicknessOnSection(PlaneOrientation contacts, PlaneOrientation section) {
        return thicknessOnSection(exact(contacts), section);
    }

    /**
     * The apparent thickness on a section: at right angles to the traces of the contacts on it, {@code T / |n - (n . s) s|} with the
     * normal s of the section.
     *
     * @param contacts the orientation of both contacts with the covariance of its pole
     * @param section the section; a vertical one has dip 90
     * @return the thickness that the section shows; empty where the section is parallel to the contacts
     */
    public Optional<Thickness> thicknessOnSection(PlaneEstimate contacts, PlaneOrientation section) {
        Vector normal = Ways.normal(contacts.plane());
        Vector across = Ways.normal(section);
        double sine = normal.cross(across).length();
        Vector inSection = normal.minus(across.times(normal.dot(across)));
        return thickness(contacts, sine, inSection.times(1 / sine));
    }

    private Optional<Thickness> along(PlaneEstimate contacts, Vector line) {
        return thickness(contacts, Ways.normal(contacts.plane()).dot(line), line);
    }

    /**
     * The thickness {@code n . D / part}.
     *
     * @param part what the line or section shows of the normal
     * @param slope the derivative of the part by the normal
     */
    private Optional<Thickness> thickness(PlaneEstimate contacts, double part, Vector slope) {
        if (Math.abs(part) < Ways.ROUNDING) {
            return Optional.empty();
        }
        Vector normal = Ways.normal(contacts.plane());
        double value = normal.dot(way) / part;
        // by the normal, in the plane that touches the sphere there
        Vector byNormal = way.minus(slope.times(value)).times(1 / part);
        Vector withDip = Vector.ofInclination(
                contacts.plane().dip() + 90, contacts.plane().dipDirection() + 180);
        Vector withDirection = Vector.ofAzimuth(contacts.plane().dipDirection() + 270);
        double onDip = byNormal.dot(withDip) * Math.toRadians(contacts.dipSigma());
        double onStrike = byNormal.dot(withDirection) * Math.toRadians(contacts.strikeSigma());
        double ofPlane = onDip * onDip + onStrike * onStrike + 2 * contacts.correlation() * onDip * onStrike;
        double ofDepths = depthSigma / part * Math.hypot(normal.dot(startAxis), normal.dot(endAxis));
        return Optional.of(new Thickness(Math.abs(value), Math.sqrt(Math.max(0, ofPlane) + ofDepths * ofDepths)));
    }

    private static PlaneEstimate exact(PlaneOrientation plane) {
        return new PlaneEstimate(plane, 0, 0, 0);
    }

    /**
     * The thicknesses between contacts that are not parallel, of which there is no single one. The contacts are taken as planes
     * through the places where the hole pierces them.
     *
     * @param first the orientation of the contact at the lesser depth
     * @param second that at the greater depth
     * @return the thicknesses
     */
    public WedgeThickness betweenContacts(PlaneOrientation first, PlaneOrientation second) {
        Vector one = Ways.normal(first);
        Vector other = Ways.normal(second);
        other = one.dot(other) < 0 ? other.negated() : other;
        double cosine = one.dot(other);
        double acrossFirst = Math.abs(one.dot(way));
        double acrossSecond = Math.abs(other.dot(way));
        boolean square = cosine < Ways.ROUNDING;
        Vector bisector = one.plus(other).unit();
        return new WedgeThickness(
                square ? Optional.empty() : Optional.of(acrossSecond / cosine),
                square ? Optional.empty() : Optional.of(acrossFirst / cosine),
                Math.abs(bisector.dot(way)),
                Degrees.atan2(one.cross(other).length(), cosine));
    }

    /** The depths and the straight length: {@code 102.30 to 131.90 m, 29.58 m apart}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f to %.2f m, %.2f m apart", from, to, way.length());
    }
}
