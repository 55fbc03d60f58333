package io.github.kernlot.survey.picture;

import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import java.util.List;

/**
 * The lower hemisphere in equal area: a line with plunge p lies {@code R sqrt(2) sin((90 - p)/2)} from the centre towards its
 * trend (Lambert's azimuthal projection; from memory).
 */
record Net(Point centre, double radius) {

    Point at(LineOrientation line) {
        return at(line.plunge(), line.trend());
    }

    Point at(double plunge, double trend) {
        double out = radius * Math.sqrt(2) * Degrees.sin((90 - plunge) / 2);
        return new Point(centre.x() + out * Degrees.sin(trend), centre.y() - out * Degrees.cos(trend));
    }

    /** Rim, rings of plunge 30 and 60, spokes every 30 degrees, the azimuths at the rim; numbers keep away from symbols. */
    void draw(Svg svg, List<Point> symbols) {
        svg.circle(centre.x(), centre.y(), radius, "fill", "#FFFFFF", "stroke", "none");
        svg.open("g", "stroke", Ink.GRID, "fill", "none");
        for (double plunge = 30; plunge < 90; plunge += 30) {
            svg.circle(centre.x(), centre.y(), centre.y() - at(plunge, 0).y());
        }
        for (double trend = 0; trend < 180; trend += 30) {
            spoke(svg, trend);
        }
        svg.close();
        svg.circle(centre.x(), centre.y(), radius, "fill", "none", "stroke", Ink.INK, "stroke-width", "1.4");
        svg.open("g", "fill", Ink.SOFT, "font-size", "11", "text-anchor", "middle");
        for (double trend = 0; trend < 360; trend += 30) {
            rimLabel(svg, trend);
        }
        double free = freeTrend(symbols);
        for (double plunge = 30; plunge < 90; plunge += 30) {
            Point place = at(plunge, free);
            svg.text(place.x(), place.y() + 4, Svg.number(plunge), "fill", Ink.PENCIL);
        }
        svg.close();
    }

    /** The trend between two spokes along which the rings are furthest from symbols. */
    private double freeTrend(List<Point> symbols) {
        double best = 195;
        double most = clearance(best, symbols);
        for (double trend = 15; trend < 360; trend += 30) {
            double clearance = clearance(trend, symbols);
            if (clearance > most + 1) {
                best = trend;
                most = clearance;
            }
        }
        return best;
    }

    /** How far symbols keep from the rings' numbers; what is further than 25 does not matter. */
    private double clearance(double trend, List<Point> symbols) {
        double clearance = 25;
        for (double plunge = 30; plunge < 90; plunge += 30) {
            Point place = at(plunge, trend);
            for (Point symbol : symbols) {
                clearance = Math.min(clearance, Math.hypot(symbol.x() - place.x(), symbol.y() - place.y()));
            }
        }
        return clearance;
    }

    private void spoke(Svg svg, double trend) {
        Point from = at(0, trend);
        Point to = at(0, trend + 180);
        svg.line(from.x(), from.y(), to.x(), to.y());
    }

    private void rimLabel(Svg svg, double trend) {
        double tick = trend % 90 == 0 ? 7 : 4;
        double sine = Degrees.sin(trend);
        double cosine = Degrees.cos(trend);
        Point rim = at(0, trend);
        svg.line(
                rim.x(),
                rim.y(),
                rim.x() + tick * sine,
                rim.y() - tick * cosine,
                "stroke",
                Ink.INK,
                "stroke-width",
                trend == 0 ? "2.4" : "1");
        double away = radius + 19;
        Point label = new Point(centre.x() + away * sine, centre.y() - away * cosine + 4);
        if (trend == 0) {
            svg.text(label.x(), label.y(), "N", "font-size", "15", "font-weight", "bold", "fill", Ink.INK);
        } else {
            svg.text(label.x(), label.y(), Degrees.azimuthText(trend).substring(0, 3));
        }
    }
}
