package io.github.kernlot.survey.picture;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.hole.HoleLog;
import io.github.kernlot.survey.hole.OrientationSettings;
import io.github.kernlot.survey.hole.OrientedHole;
import io.github.kernlot.survey.hole.Structure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Invented holes to draw. */
final class SampleHoles {

    private static final CoreDiameter CORE = CoreDiameter.ofMillimetres(63.5);

    private SampleHoles() {}

    static List<OrientedHole> three() {
        return List.of(inclined(), wandering(), upward());
    }

    static OrientedHole inclined() {
        HoleTrace trace = trace(
                Position.ofEastingNorthingElevation(41200, 76350, 402),
                SurveyStation.ofDip(0, -60, 84),
                SurveyStation.ofDip(60, -58.4, 86),
                SurveyStation.ofDip(120, -56, 87.5),
                SurveyStation.ofDip(180, -53.5, 90),
                SurveyStation.ofDip(240, -51, 93));
        Random random = new Random(3);
        List<Join> joins = List.of(
                new Join(31, JoinFit.LOCKED),
                new Join(72.4, JoinFit.DOUBTFUL),
                new Join(118.2, JoinFit.BROKEN),
                new Join(131.7, JoinFit.BROKEN),
                new Join(190, JoinFit.DOUBTFUL));
        List<OrientationMark> marks = new ArrayList<>(marks(trace, random, 9, 118, 40));
        marks.addAll(marks(trace, random, 135, 246, 255));
        marks.set(4, OrientationMark.of(marks.get(4).depth(), (marks.get(4).offset() + 180) % 360, CORE));
        marks.set(9, OrientationMark.of(marks.get(9).depth(), (marks.get(9).offset() + 57) % 360, CORE));
        marks.set(14, marks.get(14).leftOutFor("core <spun> in the tube"));
        marks.add(OrientationMark.of(125, 31, CORE));
        return orient("TW-1", trace, marks, Optional.of(joins), structures(trace, random, 70, 248));
    }

    static OrientedHole wandering() {
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            stations.add(SurveyStation.ofDip(30.0 * i, -86.5 + 2.2 * Math.sin(i * 0.7), (200 + 23.0 * i) % 360));
        }
        HoleTrace trace =
                trace(Position.ofEastingNorthingElevation(41340, 76310, 398), stations.toArray(SurveyStation[]::new));
        Random random = new Random(5);
        List<OrientationMark> marks = marks(trace, random, 20, 600, 120);
        return orient("TW-2 long", trace, marks, Optional.empty(), structures(trace, random, 90, 600));
    }

    static OrientedHole upward() {
        HoleTrace trace = trace(
                Position.ofEastingNorthingElevation(41290, 76370, 150),
                SurveyStation.ofDip(0, 35, 300),
                SurveyStation.ofDip(80, 38, 304));
        Random random = new Random(8);
        return orient(
                "TW-3U",
                trace,
                marks(trace, random, 5, 80, 10),
                Optional.of(List.of()),
                structures(trace, random, 22, 80));
    }

    /** A hole that is vertical between 40 and 80 m. */
    static OrientedHole partlyVertical() {
        HoleTrace trace = trace(
                Position.ofEastingNorthingElevation(41290, 76370, 150),
                SurveyStation.ofDip(0, -80, 30),
                SurveyStation.ofDip(40, -90, 30),
                SurveyStation.ofDip(80, -90, 30),
                SurveyStation.ofDip(120, -82, 75));
        Random random = new Random(9);
        List<OrientationMark> marks = new ArrayList<>(marks(trace, random, 4, 37, 200));
        marks.addAll(marks(trace, random, 84, 120, 200));
        marks.add(OrientationMark.of(60, 12, CORE).leftOutFor("no side to mark"));
        return orient("TW-4", trace, marks, Optional.of(List.of()), structures(trace, random, 30, 120));
    }

    /** A vertical hole marked by its north side. */
    static OrientedHole vertical() {
        HoleTrace trace = trace(
                Position.ofEastingNorthingElevation(0, 0, 0),
                SurveyStation.ofDip(0, -90, 0),
                SurveyStation.ofDip(90, -90, 0));
        List<OrientationMark> marks = new ArrayList<>();
        for (int i = 1; i < 12; i++) {
            marks.add(OrientationMark.of(7.0 * i, (i % 3 + 358) % 360, CORE));
        }
        OrientationSettings assumed = OrientationSettings.assumed();
        HoleLog log = new HoleLog("TW-5", trace, marks, Optional.empty(), List.of(Structure.of(20, "joint", 30, 45)));
        return OrientedHole.orient(log, assumed.withModel(assumed.model().withSide(WallReference.north())));
    }

    /** A vertical hole with one station and nothing else. */
    static OrientedHole empty() {
        HoleTrace trace = trace(Position.ofEastingNorthingElevation(10, 20, 30), SurveyStation.ofDip(0, -90, 0));
        return orient("TW-6", trace, List.of(), Optional.empty(), List.of());
    }

    /** A hole with as many structures as are asked for, of so many kinds. */
    static OrientedHole crowded(int count, int kinds) {
        HoleTrace trace = trace(
                Position.ofEastingNorthingElevation(500000, 6900000, 100),
                SurveyStation.ofDip(0, -55, 350),
                SurveyStation.ofDip(900, -40, 20));
        Random random = new Random(11);
        List<Structure> structures = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            structures.add(Structure.of(
                    900 * random.nextDouble(),
                    "kind <" + i % kinds + "> & \"more\" with a rather long name",
                    90 * random.nextDouble(),
                    360 * random.nextDouble()));
        }
        return orient("TW-7 <&>", trace, marks(trace, random, 3, 900, 77), Optional.empty(), structures);
    }

    /** A horizontal hole along magnetic azimuth 90, declination 10, convergence -2, with a joint straight across it. */
    static HoleLog magneticLog() {
        Survey survey = Survey.of(List.of(SurveyStation.ofDip(0, 0, 90)), NorthReference.magnetic(10, -2));
        HoleTrace trace = HoleTrace.minimumCurvature(Position.ofEastingNorthingElevation(0, 0, 0), survey.toGrid());
        return new HoleLog("TW-8", trace, List.of(), Optional.empty(), List.of(Structure.of(20, "joint", 90, 0)));
    }

    static HoleTrace trace(Position collar, SurveyStation... stations) {
        return HoleTrace.minimumCurvature(collar, Survey.of(List.of(stations), NorthReference.grid()));
    }

    static OrientedHole orient(
            String id,
            HoleTrace trace,
            List<OrientationMark> marks,
            Optional<List<Join>> joins,
            List<Structure> structures) {
        return OrientedHole.orient(new HoleLog(id, trace, marks, joins, structures), OrientationSettings.assumed());
    }

    /** Marks of the low side every 9 m on a straight line, each missing by some 4 degrees. */
    private static List<OrientationMark> marks(HoleTrace trace, Random random, double from, double to, double start) {
        List<OrientationMark> marks = new ArrayList<>();
        for (double depth = from; depth <= to; depth += 9) {
            double lineAngle = start + trace.scribeTurn(from, depth) + 4 * random.nextGaussian();
            marks.add(OrientationMark.of(depth, ((-lineAngle % 360) + 360) % 360, CORE));
        }
        return marks;
    }

    private static List<Structure> structures(HoleTrace trace, Random random, int count, double end) {
        List<Structure> structures = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double depth = end * (i + random.nextDouble()) / count;
            int kind = i % 7;
            double spread = 6;
            PlaneOrientation plane =
                    switch (kind) {
                        case 0, 1, 2 -> near(random, 58, 238, spread);
                        case 3, 4 -> near(random, 74, 20, spread);
                        case 5 -> near(random, 12, 120, 5);
                        default -> near(random, 70, 310, 12);
                    };
            String name = List.of("bedding", "bedding", "bedding", "joint", "joint", "vein", "fault")
                    .get(kind);
            HoleDirection direction = trace.directionAt(depth);
            double lineAngle = direction.isVertical() ? 0 : 40 + trace.scribeTurn(9, depth);
            CoreFrame frame = direction.isVertical() ? trace.carriedFrameAt(depth) : CoreFrame.at(direction, lineAngle);
            CorePlane core = frame.toCore(plane);
            structures.add(new Structure(
                    depth,
                    name,
                    core.alpha(),
                    i % 19 == 18 ? OptionalDouble.empty() : OptionalDouble.of(core.beta()),
                    kind == 0 && i % 19 != 18
                            ? OptionalDouble.of((20 + 8 * random.nextGaussian() + 360) % 360)
                            : OptionalDouble.empty(),
                    Map.of()));
        }
        return structures;
    }

    private static PlaneOrientation near(Random random, double dip, double direction, double spread) {
        double steep = dip + spread * random.nextGaussian();
        double turned = direction + spread * random.nextGaussian() / Math.max(0.2, Math.sin(Math.toRadians(dip)));
        return PlaneOrientation.ofDipAndDirection(Math.min(90, Math.abs(steep)), ((turned % 360) + 360) % 360);
    }
}
