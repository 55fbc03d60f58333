package io.github.kernlot.survey.picture;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.survey.hole.OrientedHole;
import io.github.kernlot.survey.hole.OrientedStructure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The traces of holes in plan and on one vertical section along their mean direction, each with one scale for both axes. A short
 * tick at its place shows a structure: in plan its strike and the side to which it dips, on the section its apparent dip.
 */
public final class PlanAndSection {

    private static final int MOST_TICKS = 240;
    private static final int MOST_NAMES = 40;
    private static final int MOST_ENDS_TOLD = 12;
    private static final double TOP = 98;
    private static final double LEFT = 92;
    private static final double SECTION_LEFT = LEFT + MapPanel.WIDTH + 84;
    private static final double WIDTH = SECTION_LEFT + MapPanel.WIDTH + Ink.MARGIN;

    private record Tick(OrientedHole hole, PlaneOrientation plane, Position position, String told) {}

    private record Way(OrientedHole hole, List<Position> places) {
        Position collar() {
            return places.get(0);
        }

        Position end() {
            return places.get(places.size() - 1);
        }
    }

    private final String title;
    private final List<Way> ways;
    private final List<Tick> ticks;
    private final double azimuth;
    private final Position origin;

    private PlanAndSection(String title, List<OrientedHole> holes) {
        this.title = title;
        Holes.north(holes);
        int samples = Math.max(8, Math.min(120, 6000 / holes.size()));
        ways = holes.stream().map(hole -> way(hole, samples)).toList();
        ticks = holes.stream().flatMap(hole -> ticks(hole).stream()).toList();
        azimuth = sectionAzimuth();
        origin = ways.get(0).collar();
    }

    /**
     * The traces of holes.
     *
     * @param holes at least one, all with azimuths from one north
     * @return the picture
     * @throws IllegalArgumentException if there is no hole, or their azimuths are counted from different norths
     */
    public static Picture of(List<OrientedHole> holes) {
        return new PlanAndSection(Holes.title("Plan and section", holes), holes).draw();
    }

    private static Way way(OrientedHole hole, int samples) {
        double end = Holes.end(hole);
        List<Position> places = new ArrayList<>();
        for (int i = 0; i <= samples; i++) {
            places.add(hole.trace().positionAt(end * i / samples));
        }
        return new Way(hole, places);
    }

    private static List<Tick> ticks(OrientedHole hole) {
        // the map is on the grid, whatever north the results are told from
        double toOutput = hole.trace().survey().north().toAdd(hole.settings().output());
        List<Tick> ticks = new ArrayList<>();
        for (OrientedStructure structure : hole.structures()) {
            structure
                    .plane()
                    .ifPresent(plane -> ticks.add(new Tick(
                            hole,
                            plane.withAzimuthTurned(-toOutput),
                            structure.position(),
                            String.format(
                                    Locale.ROOT,
                                    "%s %s, %s at %.2f m",
                                    structure.structure().kind(),
                                    plane,
                                    hole.log().id(),
                                    structure.structure().depth()))));
        }
        return ticks;
    }

    /** The mean of the horizontal ways as axes, so that two holes drilled towards each other share their section. */
    private double sectionAzimuth() {
        double north = 0;
        double east = 0;
        double cosine = 0;
        double sine = 0;
        for (Way way : ways) {
            Displacement across = way.end().minus(way.collar());
            double length = Math.hypot(across.north(), across.east());
            double twice = 2 * Degrees.atan2(across.east(), across.north());
            north += across.north();
            east += across.east();
            cosine += length * Degrees.cos(twice);
            sine += length * Degrees.sin(twice);
        }
        if (Math.hypot(cosine, sine) < 0.1) {
            return 90;
        }
        double axis = Math.rint(Degrees.atan2(sine, cosine) / 2);
        boolean backwards = Degrees.cos(axis) * north + Degrees.sin(axis) * east < 0;
        return Degrees.wrap360(backwards ? axis + 180 : axis);
    }

    private Picture draw() {
        MapPanel plan = new MapPanel(LEFT, TOP, extent(false));
        MapPanel section = new MapPanel(SECTION_LEFT, TOP, extent(true));
        List<Tick> planTicks = spaced(plan, false);
        List<Tick> sectionTicks = spaced(section, true);
        List<String> caption = caption(Math.min(planTicks.size(), sectionTicks.size()));
        List<String> lines = Svg.lines(caption, WIDTH);
        Svg svg = new Svg(
                WIDTH, TOP + MapPanel.HEIGHT + 68 + Svg.LEADING * lines.size(), title, String.join(" ", caption));
        plan.grid(svg, "easting, m", "northing, m");
        section.grid(svg, "metres along " + text(azimuth), "elevation, m");
        ends(svg);
        drawTraces(svg, plan, false);
        drawTraces(svg, section, true);
        svg.open("g", "class", "plan", "stroke", Ink.RUST, "stroke-width", "1.3", "fill", "none");
        planTicks.forEach(tick -> drawStrike(svg, plan, tick));
        svg.close();
        svg.open("g", "class", "section", "stroke", Ink.RUST, "stroke-width", "1.3");
        sectionTicks.forEach(tick -> drawApparentDip(svg, section, tick));
        svg.close();
        names(svg, plan, false, planTicks);
        names(svg, section, true, sectionTicks);
        svg.caption(TOP + MapPanel.HEIGHT + 70, lines);
        return svg.finish();
    }

    private List<String> caption(int drawn) {
        List<String> caption = new ArrayList<>();
        caption.add("Plan: grid north is up. Section along azimuth " + text(azimuth)
                + " from grid north, 0 m where "
                + ways.get(0).hole().log().id()
                + " begins, without vertical exaggeration. Each panel has its own scale.");
        if (!ticks.isEmpty()) {
            caption.add("Ticks: strike and dip side of a structure in plan, its apparent dip on the section"
                    + (drawn < ticks.size() ? "; where they crowd, not all are drawn." : "."));
        }
        return caption;
    }

    private static String text(double azimuth) {
        return Degrees.azimuthText(azimuth).substring(0, 3);
    }

    private Point project(MapPanel panel, Position place, boolean section) {
        return section ? panel.at(along(place), place.elevation()) : panel.at(place.easting(), place.northing());
    }

    /** Metres from the first collar in the direction of the section. */
    private double along(Position place) {
        Displacement from = place.minus(origin);
        return from.north() * Degrees.cos(azimuth) + from.east() * Degrees.sin(azimuth);
    }

    private MapPanel.Extent extent(boolean section) {
        double longest =
                ways.stream().mapToDouble(way -> Holes.end(way.hole())).max().orElse(0);
        MapPanel.Extent extent = new MapPanel.Extent(Math.max(1, 0.1 * longest));
        for (Way way : ways) {
            for (Position place : way.places()) {
                if (section) {
                    extent.add(along(place), place.elevation());
                } else {
                    extent.add(place.easting(), place.northing());
                }
            }
        }
        return extent;
    }

    private List<Tick> spaced(MapPanel panel, boolean section) {
        List<Tick> apart = Thinning.onePerCell(ticks, tick -> project(panel, tick.position(), section), Tick::hole, 6);
        return Thinning.thinned(apart, tick -> project(panel, tick.position(), section), Tick::hole, MOST_TICKS);
    }

    /** The azimuths in which the section's ends lie. */
    private void ends(Svg svg) {
        svg.open("g", "font-size", "12", "fill", Ink.SOFT, "text-anchor", "end");
        svg.text(
                SECTION_LEFT + MapPanel.WIDTH,
                TOP - 8,
                text(Degrees.wrap360(azimuth + 180)) + " \u2190 section \u2192 " + text(azimuth));
        svg.text(LEFT + MapPanel.WIDTH, TOP - 8, "N \u2191");
        svg.close();
    }

    private void drawTraces(Svg svg, MapPanel panel, boolean section) {
        svg.open("g", "fill", "none", "stroke", Ink.INK, "stroke-width", "1.8", "stroke-linejoin", "round");
        for (Way way : ways) {
            svg.polyline(way.places().stream()
                    .map(place -> project(panel, place, section))
                    .toList());
        }
        svg.close();
        svg.open("g", "fill", Ink.PAPER, "stroke", Ink.INK, "stroke-width", "1.6");
        for (Way way : ways) {
            Point collar = project(panel, way.collar(), section);
            svg.told(
                    "rect",
                    way.hole().log().id() + ", collar at " + way.collar(),
                    "x",
                    Svg.number(collar.x() - 3.5),
                    "y",
                    Svg.number(collar.y() - 3.5),
                    "width",
                    "7",
                    "height",
                    "7");
        }
        svg.close();
    }

    private static void drawStrike(Svg svg, MapPanel panel, Tick tick) {
        Point place = panel.at(tick.position().easting(), tick.position().northing());
        double along = 5.5;
        double dx = along * Degrees.sin(tick.plane().strike());
        double dy = -along * Degrees.cos(tick.plane().strike());
        double dip = 4 * Degrees.cos(tick.plane().dip());
        double sx = dip * Degrees.sin(tick.plane().dipDirection());
        double sy = -dip * Degrees.cos(tick.plane().dipDirection());
        svg.told(
                "path",
                tick.told(),
                "d",
                "M" + Svg.pair(place.x() - dx, place.y() - dy) + "L" + Svg.pair(place.x() + dx, place.y() + dy) + "M"
                        + Svg.pair(place.x(), place.y()) + "L" + Svg.pair(place.x() + sx, place.y() + sy));
    }

    private void drawApparentDip(Svg svg, MapPanel panel, Tick tick) {
        Point place = project(panel, tick.position(), true);
        double fall = Degrees.sin(tick.plane().dip()) * Degrees.cos(tick.plane().dipDirection() - azimuth);
        double flat = Degrees.cos(tick.plane().dip());
        double length = Math.hypot(fall, flat);
        if (length < 0.01) {
            // within half a degree the plane is the section's own, and where it cuts it means nothing
            return;
        }
        double dx = 6 * flat / length;
        double dy = 6 * fall / length;
        svg.told(
                "path",
                tick.told(),
                "d",
                "M" + Svg.pair(place.x() - dx, place.y() - dy) + "L" + Svg.pair(place.x() + dx, place.y() + dy));
    }

    private void names(Svg svg, MapPanel panel, boolean section, List<Tick> drawn) {
        Labels labels = panel.labels();
        for (Way way : ways) {
            way.places().forEach(place -> labels.avoid(project(panel, place, section), 3));
            labels.avoid(project(panel, way.collar(), section), 5);
        }
        drawn.forEach(tick -> labels.avoid(project(panel, tick.position(), section), 5));
        svg.open("g", "font-size", "12");
        ways.stream()
                .limit(MOST_NAMES)
                .forEach(way -> labels.write(
                        svg,
                        project(panel, way.collar(), section),
                        way.hole().log().id(),
                        12));
        svg.close();
        if (ways.size() <= MOST_ENDS_TOLD) {
            svg.open("g", "fill", Ink.SOFT, "font-style", "italic");
            ways.forEach(way -> labels.write(
                    svg,
                    project(panel, way.end(), section),
                    String.format(Locale.ROOT, "%.0f m", Holes.end(way.hole())),
                    11));
            svg.close();
        }
    }
}
