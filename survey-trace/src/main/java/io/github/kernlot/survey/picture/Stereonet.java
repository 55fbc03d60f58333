package io.github.kernlot.survey.picture;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.hole.OrientedHole;
import io.github.kernlot.survey.hole.OrientedStructure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Poles of planes by kind, lines and the directions of holes on the lower hemisphere, in equal area. Of more structures than
 * a picture can hold one in so many is drawn, which keeps how dense they lie; the legend counts all.
 */
public final class Stereonet {

    /** No more symbols are drawn, however many structures there are. */
    static final int MOST_SYMBOLS = 2000;

    private static final int MOST_TOLD = 400;
    private static final int MOST_HOLES_NAMED = 8;
    private static final double WIDTH = 860;
    private static final Net NET = new Net(new Point(320, 338), 250);
    private static final double LEGEND = 622;

    private record Pole(String kind, LineOrientation line, String told) {}

    private record Course(String hole, List<HoleDirection> directions) {}

    private final String title;
    private final North north;
    private final KindKey key;
    private final int most;
    private final List<Pole> poles = new ArrayList<>();
    private final List<Pole> lineations = new ArrayList<>();
    private final List<Course> courses = new ArrayList<>();
    private boolean hasCoreLine;
    private long linesAlone;
    private long unoriented;

    private Stereonet(String title, North north, KindKey key, int most) {
        this.title = title;
        this.north = north;
        this.key = key;
        this.most = most;
    }

    /**
     * The structures of holes.
     *
     * @param holes at least one, all with azimuths from one north
     * @return the picture
     * @throws IllegalArgumentException if there is no hole, or their azimuths are counted from different norths
     */
    public static Picture of(List<OrientedHole> holes) {
        return of(Holes.title("Stereonet", holes), holes, Holes.kinds(holes), MOST_SYMBOLS);
    }

    /** With a key that other pictures share. */
    static Picture of(String title, List<OrientedHole> holes, KindKey key, int most) {
        Stereonet net = new Stereonet(title, Holes.north(holes), key, most);
        holes.forEach(net::add);
        return net.draw();
    }

    /**
     * Planes from anywhere.
     *
     * @param title what the picture shows
     * @param north the north of the planes' azimuths
     * @param planes the planes of each kind
     * @return the picture
     */
    public static Picture of(String title, North north, Map<String, List<PlaneOrientation>> planes) {
        KindKey key = KindKey.of(planes.entrySet().stream()
                .flatMap(kind -> kind.getValue().stream().map(plane -> kind.getKey())));
        Stereonet net = new Stereonet(title, north, key, MOST_SYMBOLS);
        planes.forEach((kind, list) -> list.forEach(plane -> net.add(kind, plane, kind + " " + plane)));
        return net.draw();
    }

    private void add(OrientedHole hole) {
        for (OrientedStructure structure : hole.structures()) {
            String kind = structure.structure().kind();
            String place = String.format(
                    Locale.ROOT,
                    ", %s at %.2f m",
                    hole.log().id(),
                    structure.structure().depth());
            structure.plane().ifPresent(plane -> add(kind, plane, kind + " " + plane + place));
            structure
                    .lineation()
                    .ifPresent(line -> lineations.add(new Pole(kind, line, told(structure) + line + place)));
            hasCoreLine |= structure.structure().coreLine().isPresent()
                    && structure.lineation().isPresent();
            linesAlone += structure.isOriented() && structure.plane().isEmpty() ? 1 : 0;
            unoriented += structure.isOriented() ? 0 : 1;
        }
        courses.add(new Course(hole.log().id(), directions(hole)));
    }

    private static String told(OrientedStructure structure) {
        String kind = structure.structure().kind();
        return structure.structure().coreLine().isPresent() ? kind + ", line " : "line in " + kind + " ";
    }

    private String nameOfLines() {
        return hasCoreLine ? "lines" : "lines in planes";
    }

    private void add(String kind, PlaneOrientation plane, String told) {
        // opposite the dip direction as it is given, also where the plane is vertical and the other side would do as
        // well
        LineOrientation pole =
                LineOrientation.ofPlungeAndTrend(90 - plane.dip(), Degrees.wrap360(plane.dipDirection() + 180));
        poles.add(new Pole(key.nameOf(kind), pole, told));
    }

    private static List<HoleDirection> directions(OrientedHole hole) {
        HoleTrace trace = hole.trace();
        double added = trace.survey().north().toAdd(hole.settings().output());
        double end = Holes.end(hole);
        List<HoleDirection> directions = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            directions.add(trace.directionAt(end * i / 20).withAzimuthTurned(added));
        }
        return directions;
    }

    private Picture draw() {
        List<String> caption = new ArrayList<>();
        caption.add(
                "Lower hemisphere, equal area: poles to planes" + (lineations.isEmpty() ? "" : " and " + nameOfLines())
                        + ". Azimuths from " + Holes.text(north) + " north.");
        int every = (poles.size() + most - 1) / most;
        List<Pole> drawn = Thinning.everyNth(poles, Pole::kind, every);
        long oriented = poles.size() + linesAlone;
        caption.add(oriented
                + (oriented == 1 ? " oriented structure" : " oriented structures")
                + (every > 1 ? ", of which one in " + every + " of each kind is drawn" : "")
                + (unoriented > 0 ? "; " + unoriented + " unoriented, which have no pole and are not shown." : "."));
        if (!courses.isEmpty()) {
            caption.add(
                    "Grey: the direction of the hole along its length, ringed at half its depth; a broken ring: the hole goes upward.");
        }
        List<String> lines = Svg.lines(caption, WIDTH);
        Svg svg = new Svg(WIDTH, 646 + Svg.LEADING * lines.size(), title, String.join(" ", caption));
        List<Point> symbols = Stream.concat(drawn.stream(), lineations.stream())
                .map(pole -> NET.at(pole.line()))
                .toList();
        NET.draw(
                svg,
                Stream.concat(symbols.stream(), courses.stream().map(Stereonet::middle))
                        .toList());
        courses.forEach(course -> drawCourse(svg, course));
        drawPoles(svg, drawn);
        drawLineations(svg);
        nameCourses(svg, symbols);
        drawLegend(svg);
        svg.caption(646, lines);
        return svg.finish();
    }

    /** Kinds without a symbol of their own and then frequent ones first, so that rare ones lie on top. */
    private void drawPoles(Svg svg, List<Pole> drawn) {
        Map<String, List<Pole>> byKind = new LinkedHashMap<>();
        byKind.put(KindKey.OTHERS, new ArrayList<>());
        key.names().forEach(name -> byKind.putIfAbsent(name, new ArrayList<>()));
        drawn.forEach(pole -> byKind.getOrDefault(pole.kind(), List.of()).add(pole));
        double size = drawn.size() > 800 ? 2.6 : drawn.size() > 200 ? 3.6 : 4.6;
        byKind.forEach((kind, of) -> {
            KindKey.Symbol symbol = key.symbol(kind);
            drawSymbols(svg, "poles", symbol.glyph(), symbol.colour(), size, of);
        });
    }

    private void drawLineations(Svg svg) {
        List<Pole> drawn = Thinning.everyNth(lineations, pole -> "", (lineations.size() + most - 1) / most);
        drawSymbols(svg, "lines", Glyph.STAR, Ink.INK, 4.2, drawn);
    }

    private static void drawSymbols(Svg svg, String name, Glyph glyph, String colour, double size, List<Pole> symbols) {
        if (symbols.isEmpty()) {
            return;
        }
        svg.open("g", "class", name);
        svg.open("g", glyph.attributes(colour));
        for (Pole pole : symbols) {
            Point place = NET.at(pole.line());
            String path = glyph.path(place.x(), place.y(), size);
            if (symbols.size() <= MOST_TOLD) {
                svg.told("path", pole.told(), "d", path);
            } else {
                svg.element("path", "d", path);
            }
        }
        svg.close();
        svg.close();
    }

    /** An upward direction is shown by its lower end. */
    private static Point place(HoleDirection direction) {
        return NET.at(
                Math.abs(direction.plunge()), direction.plunge() < 0 ? direction.azimuth() + 180 : direction.azimuth());
    }

    private static Point middle(Course course) {
        return place(course.directions().get(10));
    }

    private static void drawCourse(Svg svg, Course course) {
        List<Point> part = new ArrayList<>();
        for (HoleDirection direction : course.directions()) {
            Point next = place(direction);
            Point last = part.isEmpty() ? next : part.get(part.size() - 1);
            if (Math.hypot(next.x() - last.x(), next.y() - last.y()) > NET.radius()) {
                svg.polyline(part, "stroke", Ink.PENCIL, "fill", "none", "stroke-width", "1.4");
                part = new ArrayList<>();
            }
            part.add(next);
        }
        svg.polyline(part, "stroke", Ink.PENCIL, "fill", "none", "stroke-width", "1.4");
        boolean upward = course.directions().get(10).plunge() < 0;
        Point middle = middle(course);
        svg.told(
                "circle",
                course.hole() + " at half depth: " + course.directions().get(10),
                "cx",
                Svg.number(middle.x()),
                "cy",
                Svg.number(middle.y()),
                "r",
                "7",
                "fill",
                "none",
                "stroke",
                Ink.PENCIL,
                "stroke-width",
                "1.6",
                "stroke-dasharray",
                upward ? "3 2.4" : "none");
    }

    private void nameCourses(Svg svg, List<Point> symbols) {
        if (courses.size() > MOST_HOLES_NAMED) {
            return;
        }
        double radius = NET.radius();
        Labels labels = new Labels(
                NET.centre().x() - radius,
                NET.centre().y() - radius,
                NET.centre().x() + radius,
                NET.centre().y() + radius);
        symbols.stream().limit(1000).forEach(symbol -> labels.avoid(symbol, 4));
        courses.forEach(course -> {
            labels.avoid(middle(course), 8);
            course.directions().forEach(direction -> labels.avoid(place(direction), 2));
        });
        svg.open("g", "fill", Ink.SOFT, "font-style", "italic");
        courses.forEach(course -> labels.write(svg, middle(course), course.hole(), 12));
        svg.close();
    }

    private void drawLegend(Svg svg) {
        Map<String, Long> counts = new LinkedHashMap<>();
        key.names().forEach(name -> counts.put(name, 0L));
        poles.forEach(pole -> counts.merge(pole.kind(), 1L, Long::sum));
        double y = 104;
        for (Map.Entry<String, Long> row : counts.entrySet()) {
            if (row.getValue() > 0) {
                KindKey.Symbol symbol = key.symbol(row.getKey());
                legendRow(svg, y, symbol.glyph(), symbol.colour(), row.getKey(), row.getValue());
                y += 23;
            }
        }
        if (!lineations.isEmpty()) {
            y += 10;
            legendRow(svg, y, Glyph.STAR, Ink.INK, nameOfLines(), lineations.size());
            y += 23;
        }
        if (poles.isEmpty() && linesAlone == 0) {
            svg.text(LEGEND, y, "no oriented structures", "fill", Ink.SOFT);
            y += 23;
        }
        if (unoriented > 0) {
            svg.text(LEGEND + 20, y + 10, "unoriented, not shown " + unoriented, "fill", Ink.SOFT);
        }
    }

    private static void legendRow(Svg svg, double y, Glyph glyph, String colour, String name, long count) {
        svg.open("g", glyph.attributes(colour));
        svg.element("path", "d", glyph.path(LEGEND + 5, y - 4, 5));
        svg.close();
        String text = Svg.shortened(name, 13, 140) + " " + count;
        svg.text(LEGEND + 20, y, text);
    }
}
