package io.github.kernlot.survey.hole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.BetaConvention.Apex;
import io.github.kernlot.orientation.BetaConvention.Sense;
import io.github.kernlot.orientation.BetaConvention.View;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.MarkPosterior.Verdict;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Holes with a known truth come out as they are, whatever the marks stand for and however beta was read. */
class OrientedHoleProperties {

    /** What the grid of angles leaves of a line that marks without error define, degrees. */
    private static final double ON_THE_GRID = 1e-3;

    /** Next to vertical all marks of the low side together may say next to nothing of the line: no truth to be found there. */
    private static final double TELLING = 90;

    /** A side that marks can stand for, with the direction in the ground that it lies nearest to. */
    enum Side {
        LOW(WallReference.lowSide(), Vector3D.PLUS_K),
        HIGH(WallReference.highSide(), Vector3D.MINUS_K),
        NORTH(WallReference.north(), Vector3D.PLUS_I),
        EAST(WallReference.azimuth(90), Vector3D.PLUS_J);

        private final WallReference reference;
        private final Vector3D towards;

        Side(WallReference reference, Vector3D towards) {
            this.reference = reference;
            this.towards = towards;
        }

        /** Turned so that its azimuth counts from a north that lies so far from the grid's. */
        Vector3D towards(double fromGrid) {
            double cosine = Math.cos(Math.toRadians(fromGrid));
            double sine = Math.sin(Math.toRadians(fromGrid));
            return new Vector3D(
                    towards.getX() * cosine - towards.getY() * sine,
                    towards.getX() * sine + towards.getY() * cosine,
                    towards.getZ());
        }
    }

    private static OrientationSettings settings(WallReference side, BetaConvention beta, North output) {
        return OrientationSettings.assumed()
                .withBeta(beta)
                .withModel(LineModel.assumed().withSide(side))
                .withLineSigmaLimit(1e6)
                .withOutput(output);
    }

    private static List<SurveyStation> stations(Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> Traces.drifting(random, 12, 0.5);
            case 1 -> steep(random);
            default -> Traces.drifting(random, 12, 60);
        };
    }

    /** A steep hole that wanders all round the compass. */
    private static List<SurveyStation> steep(Random random) {
        double[] azimuth = {360 * random.nextDouble()};
        return IntStream.range(0, 12)
                .mapToObj(i -> {
                    azimuth[0] = (azimuth[0] + 60 * random.nextDouble()) % 360;
                    return SurveyStation.ofInclination(30.0 * i, 1 + 6 * random.nextDouble(), azimuth[0]);
                })
                .toList();
    }

    private static double depth(Random random, List<SurveyStation> stations) {
        return Traces.lastDepth(stations) * random.nextDouble();
    }

    private static List<OrientationMark> marks(
            TrueHole truth, Vector3D towards, Random random, List<SurveyStation> stations) {
        return IntStream.range(0, 8)
                .mapToObj(i -> truth.mark(depth(random, stations), towards))
                .toList();
    }

    private static List<TrueHole.Reading> readings(
            TrueHole truth, BetaConvention beta, Random random, List<SurveyStation> stations) {
        return IntStream.range(0, 8)
                .mapToObj(i -> truth.reading(depth(random, stations), beta, random))
                .toList();
    }

    private static OrientedHole orient(
            HoleTrace trace,
            List<OrientationMark> marks,
            List<TrueHole.Reading> readings,
            OrientationSettings settings) {
        List<Structure> structures =
                readings.stream().map(TrueHole.Reading::structure).toList();
        return OrientedHole.orient(new HoleLog("KL-01", trace, marks, Optional.of(List.of()), structures), settings);
    }

    private static void assertTruth(List<TrueHole.Reading> readings, OrientedHole hole, double outputFromGrid) {
        assertEquals(readings.size(), hole.structures().size());
        for (int i = 0; i < readings.size(); i++) {
            TrueHole.Reading truth = readings.get(i);
            OrientedStructure found = hole.structures().get(i);
            assertEquals("", found.note());
            if (found.line().orElseThrow().sigma() > TELLING) {
                continue;
            }
            assertEquals(
                    0,
                    truth.plane()
                            .withAzimuthTurned(outputFromGrid)
                            .angleTo(found.plane().orElseThrow()),
                    ON_THE_GRID);
            assertEquals(
                    0,
                    truth.lineation()
                            .withAzimuthTurned(outputFromGrid)
                            .angleTo(found.lineation().orElseThrow()),
                    ON_THE_GRID);
            assertEquals(hole.trace().positionAt(truth.structure().depth()), found.position());
        }
    }

    @Property
    void theTruthIsRecoveredFromMarksOfAnySideAndBetasOfAnyConvention(
            @ForAll long seed, @ForAll Side side, @ForAll Sense sense, @ForAll View view, @ForAll Apex apex) {
        Random random = new Random(seed);
        BetaConvention beta = new BetaConvention(sense, view, apex);
        List<SurveyStation> stations = stations(random);
        TrueHole truth = new TrueHole(stations, random);
        List<TrueHole.Reading> readings = readings(truth, beta, random, stations);

        OrientedHole hole = orient(
                Traces.of(stations),
                marks(truth, side.towards, random, stations),
                readings,
                settings(side.reference, beta, North.GRID));

        assertTruth(readings, hole, 0);
        hole.line().marks().forEach(mark -> {
            assertEquals(Verdict.SOUND, mark.verdict());
            assertEquals(0, mark.residual().orElse(0), 0.1);
        });
        assertTrue(hole.findings().isEmpty());
    }

    @Property
    void aMagneticSurveyGivesTheSameHoleAsTheGridAndAnyNorthInTheOutput(
            @ForAll long seed, @ForAll Side side, @ForAll North measured, @ForAll North output) {
        Random random = new Random(seed);
        List<SurveyStation> onGrid = stations(random);
        TrueHole truth = new TrueHole(onGrid, random);
        NorthReference reference = NorthReference.magnetic(60 * random.nextDouble() - 30, 6 * random.nextDouble() - 3);
        NorthReference grid = reference.with(North.GRID);
        Survey survey = Survey.of(
                onGrid.stream()
                        .map(station -> new SurveyStation(
                                station.depth(), station.direction().withAzimuthTurned(grid.toAdd(measured))))
                        .toList(),
                reference.with(measured));
        HoleTrace trace = HoleTrace.minimumCurvature(Traces.COLLAR, survey.toGrid());
        List<TrueHole.Reading> readings = readings(truth, BetaConvention.HOUSE, random, onGrid);
        // an azimuth of 0 from the north of the survey, counted on the grid
        Vector3D towards = side.towards(reference.with(measured).toAdd(North.GRID));

        OrientedHole hole = orient(
                trace,
                marks(truth, towards, random, onGrid),
                readings,
                settings(side.reference, BetaConvention.HOUSE, output));

        assertTruth(readings, hole, grid.toAdd(output));
    }

    @Property
    void marksOfNorthAndOfTheLowSideGiveOneHole(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = stations(random);
        TrueHole truth = new TrueHole(stations, random);
        List<TrueHole.Reading> readings = readings(truth, BetaConvention.HOUSE, random, stations);
        HoleTrace trace = Traces.of(stations);

        OrientedHole north = orient(
                trace,
                marks(truth, Side.NORTH.towards, random, stations),
                readings,
                settings(WallReference.north(), BetaConvention.HOUSE, North.GRID));
        OrientedHole low = orient(
                trace,
                marks(truth, Side.LOW.towards, random, stations),
                readings,
                settings(WallReference.lowSide(), BetaConvention.HOUSE, North.GRID));

        for (int i = 0; i < readings.size(); i++) {
            if (low.structures().get(i).line().orElseThrow().sigma() > TELLING) {
                continue;
            }
            double apart = north.structures()
                    .get(i)
                    .plane()
                    .orElseThrow()
                    .angleTo(low.structures().get(i).plane().orElseThrow());
            assertEquals(0, apart, ON_THE_GRID);
        }
    }
}
