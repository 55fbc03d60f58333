package io.github.kernlot.survey.north;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.analysis.polynomials.PolynomialsUtils;
import org.apache.commons.math3.util.CombinatoricsUtils;

/**
 * The potential of the model in Cartesian coordinates and its gradient by differences: Legendre polynomials of Commons Math,
 * differentiated as polynomials, Schmidt's factors by factorials. It shares the table of coefficients with the model, and nothing
 * else.
 */
final class Potential {

    private static final double RADIUS = 6_371_200;
    private static final double STEP = 10_000;

    private record Term(int n, int m, double g, double h, double gChange, double hChange, PolynomialFunction shape) {}

    private final List<Term> terms;

    Potential() throws IOException {
        try (InputStream table = Potential.class.getResourceAsStream("wmm2025.csv")) {
            terms = new String(table.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> Character.isDigit(line.charAt(0)))
                    .map(Potential::term)
                    .toList();
        }
    }

    private static Term term(String line) {
        double[] cells = List.of(line.split(",")).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
        int n = (int) cells[0];
        int m = (int) cells[1];
        PolynomialFunction shape = PolynomialsUtils.createLegendrePolynomial(n);
        for (int i = 0; i < m; i++) {
            shape = shape.polynomialDerivative();
        }
        double schmidt = Math.sqrt((m == 0 ? 1.0 : 2.0)
                * CombinatoricsUtils.factorialDouble(n - m)
                / CombinatoricsUtils.factorialDouble(n + m));
        return new Term(
                n, m, cells[2], cells[3], cells[4], cells[5], shape.multiply(new PolynomialFunction(new double[] {
                    schmidt
                })));
    }

    int size() {
        return terms.size();
    }

    private double at(double[] xyz, double years) {
        double radius = Math.sqrt(xyz[0] * xyz[0] + xyz[1] * xyz[1] + xyz[2] * xyz[2]);
        double across = Math.hypot(xyz[0], xyz[1]) / radius;
        double longitude = Math.atan2(xyz[1], xyz[0]);
        double sum = 0;
        for (Term term : terms) {
            sum += RADIUS
                    * Math.pow(RADIUS / radius, term.n + 1)
                    * ((term.g + years * term.gChange) * Math.cos(term.m * longitude)
                            + (term.h + years * term.hChange) * Math.sin(term.m * longitude))
                    * Math.pow(across, term.m)
                    * term.shape.value(xyz[2] / radius);
        }
        return sum;
    }

    /** North, east and down at a place on WGS84, less the gradient of the potential. */
    double[] field(GeographicPlace place, double years) {
        double latitude = Math.toRadians(place.latitude());
        double longitude = Math.toRadians(place.longitude());
        double flattening = 1 / 298.257223563;
        double square = flattening * (2 - flattening);
        double curvature = 6_378_137 / Math.sqrt(1 - square * Math.pow(Math.sin(latitude), 2));
        double[] xyz = {
            (curvature + place.height()) * Math.cos(latitude) * Math.cos(longitude),
            (curvature + place.height()) * Math.cos(latitude) * Math.sin(longitude),
            (curvature * (1 - square) + place.height()) * Math.sin(latitude)
        };
        double[] north = {
            -Math.sin(latitude) * Math.cos(longitude), -Math.sin(latitude) * Math.sin(longitude), Math.cos(latitude)
        };
        double[] east = {-Math.sin(longitude), Math.cos(longitude), 0};
        double[] down = {
            -Math.cos(latitude) * Math.cos(longitude), -Math.cos(latitude) * Math.sin(longitude), -Math.sin(latitude)
        };
        return new double[] {slope(xyz, north, years), slope(xyz, east, years), slope(xyz, down, years)};
    }

    /** Central differences of the sixth order. */
    private double slope(double[] xyz, double[] way, double years) {
        double[] weights = {45, -9, 1};
        double sum = 0;
        for (int i = 1; i <= 3; i++) {
            sum += weights[i - 1] * (at(moved(xyz, way, i), years) - at(moved(xyz, way, -i), years));
        }
        return -sum / (60 * STEP);
    }

    private static double[] moved(double[] xyz, double[] way, int steps) {
        return new double[] {
            xyz[0] + steps * STEP * way[0], xyz[1] + steps * STEP * way[1], xyz[2] + steps * STEP * way[2]
        };
    }
}
