package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;

/**
 * Conversions against their definitions in 40 digits (big-math 2.3.2), everywhere and beside each edge: vertical and horizontal holes,
 * alpha 0 and 90, and results that are vertical or horizontal.
 */
class AccuracyTest {

    private static final int ROUNDS = Integer.getInteger("kernlot.accuracy.rounds", 500);

    /** Degrees in space: what the package promises, which is mostly what is spent on taking the nearly vertical for vertical. */
    private static final double BOUND = 1e-12;

    /** Degrees in space where nothing is taken for vertical, horizontal, along the core or across it. */
    private static final double ROUNDING = 2e-13;

    private final SplittableRandom random = new SplittableRandom(20261125);

    @Test
    void aPlaneOnCoreIsThatPlaneInTheGround() {
        Worst edge = new Worst("pole, at an edge");
        Worst pole = new Worst("pole");
        Worst dipDirection = new Worst("dip direction x sin(dip)");
        for (int i = 0; i < ROUNDS; i++) {
            HoleDirection hole = hole();
            double lineAngle = turn();
            CorePlane plane = corePlane(hole, lineAngle);
            PlaneOrientation found = CoreFrame.at(hole, lineAngle).toGeographic(plane);
            BigDecimal[] exact = Exact.toGround(hole, lineAngle, Exact.normal(plane));
            String where = hole.inclination() + " " + hole.azimuth() + " " + lineAngle + " " + plane.alpha() + " "
                    + plane.beta();
            boolean inside = found.dip() > 0 && found.dip() < 90;
            (inside ? pole : edge).see(Exact.apart(exact, Exact.normal(found)), where);
            if (inside) {
                // dip direction is where the upward normal leans
                BigDecimal[] up = exact[2].signum() > 0 ? Exact.scaled(exact, BigDecimal.ONE.negate()) : exact;
                dipDirection.see(Exact.turnTimesLength(found.dipDirection(), up[1], up[0]), where);
            }
        }
        edge.assertBelow(BOUND);
        pole.assertBelow(ROUNDING);
        dipDirection.assertBelow(ROUNDING);
    }

    @Test
    void aPlaneInTheGroundIsThatPlaneOnCore() {
        Worst edge = new Worst("normal on core, at an edge");
        Worst normal = new Worst("normal on core");
        Worst beta = new Worst("beta x cos(alpha)");
        for (int i = 0; i < ROUNDS; i++) {
            HoleDirection hole = hole();
            double lineAngle = turn();
            PlaneOrientation plane = groundPlane(hole, lineAngle);
            CorePlane found = CoreFrame.at(hole, lineAngle).toCore(plane);
            BigDecimal[] exact = Exact.toCore(hole, lineAngle, Exact.normal(plane));
            String where = hole.inclination() + " " + hole.azimuth() + " " + lineAngle + " " + plane.dip() + " "
                    + plane.dipDirection();
            boolean inside = found.alpha() > 0 && found.hasBeta();
            (inside ? normal : edge).see(Exact.apart(exact, Exact.normal(found)), where);
            if (inside) {
                // the normal on the down-hole side has its wall part at beta + 180
                BigDecimal[] up = exact[0].signum() > 0 ? Exact.scaled(exact, BigDecimal.ONE.negate()) : exact;
                beta.see(Exact.turnTimesLength(found.beta(), up[2], up[1]), where);
            }
        }
        edge.assertBelow(BOUND);
        normal.assertBelow(ROUNDING);
        beta.assertBelow(ROUNDING);
    }

    @Test
    void aLineOnCoreIsThatLineInTheGroundAndBack() {
        Worst forward = new Worst("line in the ground");
        Worst trend = new Worst("trend x cos(plunge)");
        Worst back = new Worst("line on core");
        for (int i = 0; i < ROUNDS; i++) {
            HoleDirection hole = hole();
            double lineAngle = turn();
            CoreFrame frame = CoreFrame.at(hole, lineAngle);
            CoreLine line = CoreLine.ofAxisAngleAndDelta(angle(90), turn());
            LineOrientation found = frame.toGeographic(line);
            BigDecimal[] exact = Exact.toGround(hole, lineAngle, Exact.direction(line));
            String where = hole.inclination() + " " + hole.azimuth() + " " + lineAngle + " " + line.axisAngle() + " "
                    + line.delta();
            forward.see(Exact.apart(exact, Exact.direction(found)), where);
            if (found.plunge() > 0 && found.plunge() < 90) {
                BigDecimal[] down = exact[2].signum() < 0 ? Exact.scaled(exact, BigDecimal.ONE.negate()) : exact;
                trend.see(Exact.turnTimesLength(found.trend(), down[1], down[0]), where);
            }
            CoreLine again = frame.toCore(found);
            BigDecimal[] exactAgain = Exact.toCore(hole, lineAngle, Exact.direction(found));
            back.see(Exact.apart(exactAgain, Exact.direction(again)), where);
        }
        forward.assertBelow(BOUND);
        trend.assertBelow(ROUNDING);
        back.assertBelow(BOUND);
    }

    @Test
    void theLowSideAndTheLineAngleAreExactBesideTheVertical() {
        Worst side = new Worst("line on the wall");
        for (int i = 0; i < ROUNDS; i++) {
            HoleDirection hole = HoleDirection.ofInclination(beside(() -> random.nextBoolean() ? 0 : 180, 180), turn());
            if (hole.isVertical()) {
                continue;
            }
            double lineAngle = turn();
            LineOrientation found = CoreFrame.at(hole, lineAngle).toGeographic(CoreLine.ofAxisAngleAndDelta(90, 0));
            side.see(
                    Exact.apart(Exact.wall(hole, lineAngle), Exact.direction(found)),
                    hole.inclination() + " " + hole.azimuth() + " " + lineAngle);
        }
        side.assertBelow(BOUND);
    }

    @Test
    void aLineIsCarriedByTheSmallestRotation() {
        Worst carried = new Worst("carried line");
        Worst almostOpposite = new Worst("carried line, dogleg above 170");
        for (int i = 0; i < ROUNDS; i++) {
            HoleDirection from = HoleDirection.ofInclination(0.5 + 179 * random.nextDouble(), turn());
            double lineAngle = turn();
            HoleDirection to = i % 2 == 0
                    ? hole()
                    : HoleDirection.ofInclination(
                            Math.min(180, Math.max(0, 180 - from.inclination() + 10 * (random.nextDouble() - 0.5))),
                            (from.azimuth() + 180) % 360);
            double dogleg = from.angleTo(to);
            if (dogleg > 179.89) {
                continue;
            }
            LineOrientation found =
                    CoreFrame.at(from, lineAngle).carriedAlong(to).toGeographic(CoreLine.ofAxisAngleAndDelta(90, 0));
            BigDecimal[] exact = Exact.carried(Exact.wall(from, lineAngle), Exact.axis(from), Exact.axis(to));
            (dogleg > 170 ? almostOpposite : carried)
                    .see(
                            Exact.apart(exact, Exact.direction(found)),
                            from.inclination() + " " + from.azimuth() + " " + lineAngle + " to " + to.inclination()
                                    + " " + to.azimuth());
        }
        carried.assertBelow(BOUND);
        almostOpposite.assertBelow(2e-11);
    }

    /** The largest error seen, and where. */
    private static final class Worst {
        private final String what;
        private double error;
        private String where = "";

        Worst(String what) {
            this.what = what;
        }

        void see(double seen, String place) {
            if (!(Math.abs(seen) <= error)) {
                error = Math.abs(seen);
                where = place;
            }
        }

        void assertBelow(double bound) {
            if (Boolean.getBoolean("kernlot.accuracy.print")) {
                System.out.println(what + ": " + error + " degrees at " + where);
            }
            assertTrue(error > 0 && error < bound, () -> what + ": " + error + " degrees at " + where);
        }
    }

    private HoleDirection hole() {
        double inclination = angle(180);
        return HoleDirection.ofInclination(inclination == 0 || inclination == 180 ? 1e-7 : inclination, turn());
    }

    private double turn() {
        return random.nextInt(4) == 0 ? beside(() -> 90.0 * random.nextInt(5), 360) : 360 * random.nextDouble();
    }

    private double angle(int limit) {
        return switch (random.nextInt(4)) {
            case 0 -> 90.0 * random.nextInt(limit / 90 + 1);
            case 1 -> beside(() -> 90.0 * random.nextInt(limit / 90 + 1), limit);
            default -> limit * random.nextDouble();
        };
    }

    /** Within 1e-6 degrees of an edge, at every scale down to 1e-15. */
    private double beside(DoubleSupplier edge, double limit) {
        double offset = (2 * random.nextDouble() - 1) * Math.pow(10, -6 - 9 * random.nextDouble());
        return Math.min(limit, Math.max(0, edge.getAsDouble() + offset));
    }

    /** A plane on core; of three one that comes out flat, upright, or along the axis within 1e-6 degrees. */
    private CorePlane corePlane(HoleDirection hole, double lineAngle) {
        int kind = random.nextInt(6);
        if (kind == 0 || kind == 1) {
            PlaneOrientation wanted = PlaneOrientation.ofDipAndDirection(beside(() -> kind == 0 ? 0 : 90, 90), turn());
            return CoreFrame.at(hole, lineAngle).toCore(wanted);
        }
        return CorePlane.of(angle(90), turn());
    }

    /** A plane in the ground; of three one that comes out along the core or across it within 1e-6 degrees. */
    private PlaneOrientation groundPlane(HoleDirection hole, double lineAngle) {
        int kind = random.nextInt(6);
        if (kind == 0 || kind == 1) {
            CorePlane wanted = CorePlane.of(beside(() -> kind == 0 ? 0 : 90, 90), turn());
            return CoreFrame.at(hole, lineAngle).toGeographic(wanted);
        }
        return PlaneOrientation.ofDipAndDirection(angle(90), turn());
    }
}
