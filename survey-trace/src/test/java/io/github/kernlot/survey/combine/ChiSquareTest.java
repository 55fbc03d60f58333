package io.github.kernlot.survey.combine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.uncertainty.Covariance;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ChiSquareTest {

    private static final Position PLACE = Position.ofEastingNorthingElevation(100, 200, 300);
    private static final HoleDirection DOWN = HoleDirection.ofDip(-90, 0);

    private static Covariance diagonal(double north, double east, double down) {
        return new Covariance(north, east, down, 0, 0, 0);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "chi-square.csv", numLinesToSkip = 1)
    void theLimitIsThatOfTheTables(int degreesOfFreedom, double confidence, double limit, String source) {
        ChiSquare test = new ChiSquare(limit, degreesOfFreedom);
        assertEquals(limit, test.limit(confidence), 0.0006, source);
        assertEquals(1 - confidence, test.probability(), 0.0001, source);
    }

    @Test
    void aTestPrintsWhatItSays() {
        assertEquals(
                "chi-square 7.81 with 3 degrees of freedom, probability 0.050", new ChiSquare(7.814728, 3).toString());
        assertEquals(0, new ChiSquare(Double.POSITIVE_INFINITY, 2).probability());
    }

    @Test
    void whatIsNoTestIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new ChiSquare(-1, 3));
        assertThrows(IllegalArgumentException.class, () -> new ChiSquare(Double.NaN, 3));
        assertThrows(IllegalArgumentException.class, () -> new ChiSquare(1, 0));
        assertThrows(IllegalArgumentException.class, () -> new ChiSquare(1, 3).limit(1));
    }

    /** C1 diag(4, 9, 1) and C2 diag(1, 1, 4) merge to diag(0.8, 0.9, 0.8): computed, and checked by simulation, apart from this library. */
    @Test
    void twoSurveysMergeToTheWorkedExample() {
        PlaceEstimate one = new PlaceEstimate(PLACE, diagonal(4, 9, 1));
        PlaceEstimate other = new PlaceEstimate(PLACE.plus(new Displacement(1, 1, 1)), diagonal(1, 1, 4));
        PlaceEstimate merged = one.mergedWith(other);
        double[][] expected = {{0.8, 0, 0}, {0, 0.9, 0}, {0, 0, 0.8}};
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                assertEquals(expected[i][j], merged.covariance().toArray()[i][j], 1e-14);
            }
        }
        // weights 1 / variance: 4/5, 9/10 and 1/5 of the way
        Displacement moved = merged.place().minus(PLACE);
        assertEquals(0.8, moved.north(), 1e-12);
        assertEquals(0.9, moved.east(), 1e-12);
        assertEquals(0.2, moved.down(), 1e-12);
        PlaceEstimate turned = other.mergedWith(one);
        assertEquals(0, merged.place().minus(turned.place()).length(), 1e-12);
    }

    @Test
    void whatOneSurveyKnowsExactlyStays() {
        PlaceEstimate exact = new PlaceEstimate(PLACE, Covariance.ZERO);
        PlaceEstimate vague = new PlaceEstimate(PLACE.plus(new Displacement(3, 0, 0)), diagonal(1, 1, 1));
        assertEquals(PLACE, exact.mergedWith(vague).place());
        assertEquals(Covariance.ZERO, exact.mergedWith(vague).covariance());
        assertEquals(0, vague.mergedWith(exact).place().minus(PLACE).length(), 1e-12);
        assertEquals(Optional.empty(), exact.test(exact));
        assertEquals(9, exact.test(vague).orElseThrow().statistic(), 1e-12);
    }

    @Test
    void aDistanceIsHeldAgainstTheSumOfBoth() {
        PlaceEstimate one = new PlaceEstimate(PLACE, diagonal(4, 9, 1));
        PlaceEstimate other = new PlaceEstimate(PLACE.plus(new Displacement(5, -10, 5)), diagonal(1, 1, 4));
        ChiSquare test = one.test(other).orElseThrow();
        assertEquals(5 + 10 + 5, test.statistic(), 1e-12);
        assertEquals(3, test.degreesOfFreedom());
    }

    @Test
    void aCovarianceWithoutRoomAllowsNoDifferenceThere() {
        Covariance flat = diagonal(2, 2, 0);
        Misclose within = new Misclose(10, new Displacement(2, 0, 0), DOWN, DOWN);
        assertEquals(new ChiSquare(1, 2), within.test(flat, flat).orElseThrow());
        Misclose beside = new Misclose(10, new Displacement(2, 0, 0.1), DOWN, DOWN);
        assertEquals(
                Double.POSITIVE_INFINITY, beside.test(flat, flat).orElseThrow().statistic());
        assertEquals(Optional.empty(), within.test(Covariance.ZERO, Covariance.ZERO));
    }

    /** One degree apart across the vertical, with sigma 0.5 degrees in each: (1 / 0.5)^2 / 2. */
    @Test
    void directionsAreHeldAgainstTwoDimensions() {
        HoleDirection one = HoleDirection.ofDip(0, 359.5);
        HoleDirection other = HoleDirection.ofDip(0, 0.5);
        double variance = Math.pow(Math.toRadians(0.5), 2);
        ChiSquare test = new Misclose(10, Displacement.ZERO, one, other)
                .testDirection(diagonal(0, variance, variance), diagonal(0, variance, variance))
                .orElseThrow();
        assertEquals(2, test.degreesOfFreedom());
        assertEquals(2, test.statistic(), 1e-3);
        assertEquals(
                Double.POSITIVE_INFINITY,
                new Misclose(10, Displacement.ZERO, DOWN, HoleDirection.ofDip(90, 0))
                        .testDirection(flat(), flat())
                        .orElseThrow()
                        .statistic());
        assertEquals(
                0,
                new Misclose(10, Displacement.ZERO, one, one)
                        .testDirection(flat(), flat())
                        .orElseThrow()
                        .statistic(),
                1e-12);
    }

    private static Covariance flat() {
        return diagonal(1, 1, 0);
    }
}
