package io.github.kernlot.orientation.solve;

import static io.github.kernlot.orientation.solve.Places.at;
import static io.github.kernlot.orientation.solve.Places.on;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlanarityTest {

    /**
     * By hand, on a grid of three by three: the bend (1, -2, 1) along it, c times, has squares of 18 c^2; the product of both bends, which no
     * surface of second order follows, 36. F = c^2 / 2 with 3 and 3 degrees of freedom is 9.277 at 0.05 (tables of F).
     */
    @Test
    void aBendIsHeldAgainstWhatNoBentSurfaceFollows() {
        double[] bend = {1, -2, 1};
        double times = Math.sqrt(2 * 9.277);
        List<Position> grid = IntStream.range(0, 9)
                .mapToObj(i ->
                        at(50.0 * (i % 3), 50.0 * (i / 3), 0.01 * (times * bend[i % 3] + bend[i % 3] * bend[i / 3])))
                .toList();
        assertEquals(
                0.05,
                PlaneThroughPoints.ofPositions(grid).planarityProbability().orElseThrow(),
                1e-5);
    }

    @Test
    void placesOnTwoLinesDoNotTellWhetherTheSurfaceBends() {
        double[][] places = {{0, 0}, {0, 10}, {0, 20}, {0, 50}, {30, 0}, {30, 20}, {30, 40}, {30, 90}};
        PlaneThroughPoints found =
                PlaneThroughPoints.ofPositions(on(PlaneOrientation.ofDipAndDirection(20, 75), places));
        assertTrue(found.planarityProbability().isEmpty());
    }

    @Test
    void curvedBedsFailTheTestOfPlanarity() {
        PlaneOrientation truth = PlaneOrientation.ofDipAndDirection(20, 75);
        Random random = new Random(8);
        int rejected = 0;
        int curvedRejected = 0;
        int runs = 2000;
        double[][] places = new double[14][];
        for (int i = 0; i < places.length; i++) {
            places[i] = new double[] {200 * random.nextDouble() - 100, 200 * random.nextDouble() - 100};
        }
        List<Position> positions = on(truth, places);
        for (int run = 0; run < runs; run++) {
            List<Position> flat = new ArrayList<>();
            List<Position> curved = new ArrayList<>();
            for (int i = 0; i < places.length; i++) {
                double noise = random.nextGaussian();
                double sag = 10 * Math.pow(places[i][0] / 100, 2);
                Position place = positions.get(i);
                flat.add(at(place.easting(), place.northing(), place.elevation() + noise));
                curved.add(at(place.easting(), place.northing(), place.elevation() + noise - sag));
            }
            rejected +=
                    PlaneThroughPoints.ofPositions(flat).planarityProbability().orElseThrow() < 0.05 ? 1 : 0;
            curvedRejected += PlaneThroughPoints.ofPositions(curved)
                                    .planarityProbability()
                                    .orElseThrow()
                            < 0.05
                    ? 1
                    : 0;
        }
        assertEquals(0.05, rejected / (double) runs, 0.02);
        assertTrue(curvedRejected > 0.95 * runs, curvedRejected + " of " + runs);
    }

    @Test
    void exactSurfacesAreToldWithoutRounding() {
        double[][] grid = new double[9][];
        List<Position> bowl = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            grid[i] = new double[] {10.0 * (i % 3), 10.0 * (i / 3)};
            bowl.add(at(grid[i][0], grid[i][1], Math.pow(grid[i][0] - 10, 2) / 100));
        }
        PlaneOrientation flat = PlaneOrientation.ofDipAndDirection(20, 75);
        assertEquals(
                1,
                PlaneThroughPoints.ofPositions(on(flat, grid))
                        .planarityProbability()
                        .orElseThrow());
        assertTrue(PlaneThroughPoints.ofPositions(bowl).planarityProbability().orElseThrow() < 1e-6);
    }
}
