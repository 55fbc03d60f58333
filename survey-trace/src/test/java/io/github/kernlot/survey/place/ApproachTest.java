package io.github.kernlot.survey.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.DesurveyMethod;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.TraceSettings;
import io.github.kernlot.survey.Traces;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.geometry.euclidean.threed.Line;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class ApproachTest {

    private static HoleTrace at(Displacement shift, List<SurveyStation> stations) {
        return at(shift, stations, DesurveyMethod.MINIMUM_CURVATURE);
    }

    private static HoleTrace at(Displacement shift, List<SurveyStation> stations, DesurveyMethod method) {
        return HoleTrace.of(
                Traces.COLLAR.plus(shift),
                Survey.of(stations, NorthReference.grid()),
                TraceSettings.assumed().withMethod(method).withExtrapolationLimit(1000));
    }

    private static HoleTrace straight(Displacement shift, double inclination, double azimuth) {
        return at(shift, List.of(SurveyStation.ofInclination(0, inclination, azimuth)));
    }

    private static Vector3D vector(Position place) {
        return Traces.vector(place.minus(Traces.COLLAR));
    }

    @Test
    void twoHolesThatCrossMeet() {
        HoleTrace down = straight(Displacement.ZERO, 0, 0);
        HoleTrace level = straight(new Displacement(0, -80, 120), 90, 90);

        Approach found = TraceSearch.of(down).closestTo(TraceSearch.of(level));

        assertEquals(120, found.depth(), 1e-9);
        assertEquals(80, found.otherDepth(), 1e-9);
        assertEquals(0, found.distance(), 1e-9);
        assertFalse(found.isParallel());
        assertTrue(found.extrapolated());
        assertEquals("0.00 m between 120.00 m here and 80.00 m there, extrapolated", found.toString());
    }

    @Test
    void parallelHolesAnswerWithTheLeastDepth() {
        HoleTrace one = straight(Displacement.ZERO, 30, 40);
        HoleTrace other = straight(new Displacement(6, -8, 0), 30, 40);

        Approach found = TraceSearch.of(one).between(100, 600).closestTo(TraceSearch.of(other));

        assertTrue(found.isParallel());
        double distance =
                new Line(Vector3D.ZERO, Traces.vector(one.directionAt(0)), 1e-10).distance(new Vector3D(6, -8, 0));
        assertEquals(distance, found.distance(), 1e-9);
        assertEquals(100, found.depth(), 1e-3);
    }

    /** The bound between two curves side by side is sharp only on short pieces: the hardest case for the search. */
    @Test
    void curvedHolesThatRunSideBySideAnswerSoon() {
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            stations.add(SurveyStation.ofInclination(30 * i, 10 + 1.5 * i, 0));
        }
        TraceSearch one = TraceSearch.of(at(Displacement.ZERO, stations));
        TraceSearch other = TraceSearch.of(at(new Displacement(0, 5, 0), stations));

        Approach found = assertTimeout(Duration.ofSeconds(20), () -> one.closestTo(other));

        assertEquals(5, found.distance(), 1e-9);
        assertEquals(0, found.depth(), 1e-3);
        assertTrue(found.isParallel());
    }

    @Test
    void branchesThatShareTheirUpperPartBeginTogether() {
        List<SurveyStation> shared =
                List.of(SurveyStation.ofInclination(0, 20, 90), SurveyStation.ofInclination(200, 25, 95));
        List<SurveyStation> left = new ArrayList<>(shared);
        left.add(SurveyStation.ofInclination(300, 35, 80));
        List<SurveyStation> right = new ArrayList<>(shared);
        right.add(SurveyStation.ofInclination(300, 35, 110));
        TraceSearch one = TraceSearch.of(at(Displacement.ZERO, left));
        TraceSearch other = TraceSearch.of(at(Displacement.ZERO, right));

        Approach whole = one.closestTo(other);
        Approach below = one.between(250, 300).closestTo(other.between(250, 300));

        assertEquals(0, whole.depth(), 1e-3);
        assertEquals(0, whole.distance(), 1e-9);
        assertTrue(whole.isParallel());
        assertEquals(250, below.depth(), 1e-9);
        assertTrue(below.distance() > 1);
    }

    @Test
    void aHoleOfOneDepthIsAPoint() {
        HoleTrace one = straight(Displacement.ZERO, 30, 40);
        HoleTrace other = straight(new Displacement(50, 0, 100), 90, 90);

        Approach found = TraceSearch.of(one).closestTo(TraceSearch.of(other).between(17, 17));
        NearestPoint nearest = TraceSearch.of(one).nearestTo(other.positionAt(17));

        assertEquals(nearest.depth(), found.depth(), 1e-9);
        assertEquals(nearest.distance(), found.distance(), 1e-9);
        assertEquals(17, found.otherDepth());
    }

    @Property(tries = 200)
    void straightHolesAreAsFarApartAsLines(@ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace one = straight(Displacement.ZERO, 180 * random.nextDouble(), 360 * random.nextDouble());
        HoleTrace other = straight(
                new Displacement(100 * random.nextGaussian(), 100 * random.nextGaussian(), 100 * random.nextGaussian()),
                180 * random.nextDouble(),
                360 * random.nextDouble());

        Approach found = TraceSearch.of(one).closestTo(TraceSearch.of(other));

        Line line = new Line(vector(one.positionAt(0)), vector(one.positionAt(1)), 1e-10);
        Line otherLine = new Line(vector(other.positionAt(0)), vector(other.positionAt(1)), 1e-10);
        boolean inside = found.depth() > 0
                && found.depth() < one.reach()
                && found.otherDepth() > 0
                && found.otherDepth() < other.reach();
        if (inside) {
            assertEquals(line.distance(otherLine), found.distance(), 1e-7);
        } else {
            assertTrue(found.distance() >= line.distance(otherLine) - 1e-7);
        }
    }

    /** A grid over both holes, then finer grids about its twenty best places. */
    private static double leastOnGrids(HoleTrace one, double end, HoleTrace other, double otherEnd) {
        int count = 150;
        List<double[]> cells = new ArrayList<>(grid(one, 0, end, other, 0, otherEnd, count));
        double least = Double.POSITIVE_INFINITY;
        for (double[] cell : cells.subList(0, 20)) {
            double[] best = cell;
            double width = end / count;
            double otherWidth = otherEnd / count;
            for (int zoom = 0; zoom < 20; zoom++) {
                best = grid(
                                one,
                                Math.max(0, best[1] - width),
                                Math.min(end, best[1] + width),
                                other,
                                Math.max(0, best[2] - otherWidth),
                                Math.min(otherEnd, best[2] + otherWidth),
                                8)
                        .get(0);
                width /= 2.5;
                otherWidth /= 2.5;
            }
            least = Math.min(least, best[0]);
        }
        return least;
    }

    private static List<double[]> grid(
            HoleTrace one, double from, double to, HoleTrace other, double otherFrom, double otherTo, int count) {
        List<Vector3D> places = new ArrayList<>();
        for (int j = 0; j <= count; j++) {
            places.add(vector(other.positionAt(otherFrom + (otherTo - otherFrom) * j / count)));
        }
        List<double[]> cells = new ArrayList<>();
        for (int i = 0; i <= count; i++) {
            double depth = from + (to - from) * i / count;
            Vector3D place = vector(one.positionAt(depth));
            for (int j = 0; j <= count; j++) {
                cells.add(new double[] {
                    place.distance(places.get(j)), depth, otherFrom + (otherTo - otherFrom) * j / count
                });
            }
        }
        cells.sort((a, b) -> Double.compare(a[0], b[0]));
        return cells;
    }

    @Property(tries = 40)
    void noPairOfDepthsIsCloser(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.wandering(random, 6);
        List<SurveyStation> others = Traces.wandering(random, 6);
        DesurveyMethod[] methods = DesurveyMethod.values();
        HoleTrace one = at(Displacement.ZERO, stations, methods[random.nextInt(methods.length)]);
        HoleTrace other = at(
                new Displacement(50 * random.nextGaussian(), 50 * random.nextGaussian(), 50 * random.nextGaussian()),
                others,
                methods[random.nextInt(methods.length)]);
        double end = Traces.lastDepth(stations);
        double otherEnd = Traces.lastDepth(others);

        TraceSearch here = TraceSearch.of(one).between(0, end);
        TraceSearch there = TraceSearch.of(other).between(0, otherEnd);
        Approach found = here.closestTo(there);
        Approach back = there.closestTo(here);

        double least = leastOnGrids(one, end, other, otherEnd);
        assertTrue(found.distance() <= least + 1e-6, found + " and " + least);
        assertEquals(least, found.distance(), 1e-2 * (end + otherEnd) / 150);
        assertEquals(found.distance(), back.distance(), 2e-6);
        assertEquals(
                found.distance(),
                vector(other.positionAt(found.otherDepth())).distance(vector(one.positionAt(found.depth()))),
                1e-8);
    }

    @Test
    void tenThousandStationsAnswerFast() {
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            stations.add(SurveyStation.ofInclination(
                    0.3 * i, 20 + 15 * Math.sin(i / 900.0), (i / 40.0 + 5 * Math.sin(i / 70.0) + 10) % 360));
        }
        TraceSearch one = TraceSearch.of(at(Displacement.ZERO, stations));
        TraceSearch other = TraceSearch.of(at(new Displacement(40, 30, 0), stations.subList(0, 8_000)));
        Position place = one.trace().positionAt(1234.5).plus(new Displacement(3, 1, 0));

        assertTimeout(Duration.ofSeconds(20), () -> {
            for (int i = 0; i < 50; i++) {
                assertFalse(one.atVerticalDepth(20.0 * i).isEmpty());
                assertTrue(one.nearestTo(place).distance() < 4);
            }
            assertTrue(one.closestTo(other).distance() < 50);
        });
    }
}
