package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.BetaConvention.Apex;
import io.github.kernlot.orientation.BetaConvention.Sense;
import io.github.kernlot.orientation.BetaConvention.View;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

/** The sixteen ways of reading beta are four maps (derived and checked numerically for this project; no publication). */
@Domain(CoreDomain.class)
class BetaConventionProperties {

    /** One way of reading beta, the map to beta from the low side that it stands for, and the name of the map. */
    private record Way(BetaConvention convention, boolean lineOnTop, String map) {

        double fromLowSide(double beta) {
            return maps().get(map).applyAsDouble(beta);
        }

        CoreFrame frame(HoleDirection hole) {
            return CoreFrame.at(hole, lineOnTop ? WallReference.highSide() : WallReference.lowSide(), 0);
        }
    }

    private static Map<String, DoubleUnaryOperator> maps() {
        return Map.of("b", b -> b, "-b", b -> -b, "b + 180", b -> b + 180, "180 - b", b -> 180 - b);
    }

    /** The table written out, not computed: what each way of reading makes of beta. */
    private static List<Way> ways() {
        List<Way> ways = new ArrayList<>();
        add(ways, Sense.CLOCKWISE, View.DOWN_HOLE, "b", "b + 180");
        add(ways, Sense.ANTICLOCKWISE, View.UP_HOLE, "b", "b + 180");
        add(ways, Sense.ANTICLOCKWISE, View.DOWN_HOLE, "-b", "180 - b");
        add(ways, Sense.CLOCKWISE, View.UP_HOLE, "-b", "180 - b");
        return ways;
    }

    private static void add(List<Way> ways, Sense sense, View view, String straight, String opposite) {
        ways.add(new Way(new BetaConvention(sense, view, Apex.DOWN_HOLE), false, straight));
        ways.add(new Way(new BetaConvention(sense, view, Apex.DOWN_HOLE), true, opposite));
        ways.add(new Way(new BetaConvention(sense, view, Apex.UP_HOLE), false, opposite));
        ways.add(new Way(new BetaConvention(sense, view, Apex.UP_HOLE), true, straight));
    }

    @Example
    void thereAreSixteenWaysAndFourOfEachMap() {
        Map<String, Integer> counts = new HashMap<>();
        ways().forEach(way -> counts.merge(way.map(), 1, Integer::sum));
        assertEquals(Map.of("b", 4, "-b", 4, "b + 180", 4, "180 - b", 4), counts);
        assertEquals(
                16,
                ways().stream()
                        .map(way -> way.convention() + "" + way.lineOnTop())
                        .distinct()
                        .count());
    }

    @Property
    void eachWayIsItsMap(@ForAll HoleDirection hole, @ForAll double alpha, @ForAll double beta) {
        Assume.that(!hole.isVertical());
        double acute = alpha / 4;
        for (Way way : ways()) {
            CorePlane read = CorePlane.of(acute, way.convention().toHouse(beta));
            PlaneOrientation found = way.frame(hole).toGeographic(read);
            double expected = ((way.fromLowSide(beta) % 360) + 360) % 360;
            PlaneOrientation low = CoreFrame.at(hole, 0).toGeographic(CorePlane.of(acute, expected));
            assertEquals(0, Rotations.apart(low, found), 2e-12, way::toString);
        }
    }

    @Property
    void awayFromTheEdgesTwoWaysMakeOnePlaneOnlyIfTheyAreOneMap(@ForAll double azimuth) {
        HoleDirection hole = HoleDirection.ofPlunge(60, azimuth);
        for (Way one : ways()) {
            for (Way other : ways()) {
                double apart = Rotations.apart(plane(one, hole, 33), plane(other, hole, 33));
                assertTrue(one.map().equals(other.map()) ? apart < 2e-12 : apart > 10);
            }
        }
    }

    private static PlaneOrientation plane(Way way, HoleDirection hole, double beta) {
        return way.frame(hole).toGeographic(CorePlane.of(40, way.convention().toHouse(beta)));
    }

    @Property
    void eachConventionReadsBackWhatItWrote(@ForAll double beta) {
        for (Way way : ways()) {
            double house = way.convention().toHouse(beta);
            double back = way.convention().fromHouse(house);
            assertTrue(house >= 0 && house < 360 && back >= 0 && back < 360);
            assertEquals(0, Math.IEEEremainder(back - beta, 360), 1e-13);
        }
    }

    /** Who reads along an arrow up-hole stands half a turn about a line across the core: beta becomes 180 - beta. */
    @Property
    void anArrowUpHoleMirrorsBetaAndChangesTheEndOfTheEllipse(@ForAll double beta) {
        for (Way way : ways()) {
            BetaConvention turned = way.convention().withArrowUpHole();
            assertEquals(way.convention(), turned.withArrowUpHole());
            double sum = way.convention().toHouse(beta) + turned.toHouse(beta);
            assertEquals(0, Math.IEEEremainder(sum - 180, 360), 1e-12, way::toString);
        }
    }

    @Example
    void theHouseConventionLeavesBetaAsItIs() {
        DoubleStream.of(0, 1e-300, 12.3, 180, Math.nextDown(360.0)).forEach(beta -> {
            assertEquals(beta, BetaConvention.HOUSE.toHouse(beta));
            assertEquals(beta, BetaConvention.HOUSE.fromHouse(beta));
        });
    }
}
