package io.github.kernlot.survey.north;

/**
 * The field of a potential in spherical harmonics, docs/north.md section 2. Orders above 0 are kept divided by the cosine of the
 * geocentric latitude, so that nothing is divided at the poles.
 */
final class SphericalHarmonics {

    /** The radius of the sphere that geomagnetic coefficients refer to, metres. */
    private static final double REFERENCE_RADIUS = 6_371_200;

    private final GaussCoefficients coefficients;
    /** sqrt(n^2 - m^2) by {@link GaussCoefficients#index}. */
    private final double[] roots;
    /** sqrt((2n - 1) / 2n), by which the sectoral functions grow; by n. */
    private final double[] sectoral;

    SphericalHarmonics(GaussCoefficients coefficients) {
        this.coefficients = coefficients;
        int degree = coefficients.degree();
        roots = new double[GaussCoefficients.index(degree, degree) + 1];
        sectoral = new double[degree + 1];
        for (int n = 1; n <= degree; n++) {
            sectoral[n] = n == 1 ? 1 : Math.sqrt((2 * n - 1.0) / (2 * n));
            for (int m = 0; m <= n; m++) {
                roots[GaussCoefficients.index(n, m)] = Math.sqrt((double) n * n - (double) m * m);
            }
        }
    }

    /** Where the field is asked: radius in metres, sine and cosine of the geocentric latitude, and of the longitude. */
    record GeocentricPlace(double radius, double sine, double cosine, double sineEast, double cosineEast) {}

    /**
     * The field and its change in the frame of the geocentric vertical.
     *
     * @param years since the epoch of the coefficients
     * @return north, east and down in nT, then their changes in nT a year
     */
    double[] at(GeocentricPlace place, double years) {
        double[] field = new double[6];
        double[] legendre = legendre(place.sine(), place.cosine());
        double ratio = REFERENCE_RADIUS / place.radius();
        double cosine = 1;
        double sine = 0;
        for (int m = 0; m <= coefficients.degree(); m++) {
            double power = ratio * ratio;
            for (int n = 1; n < m; n++) {
                power *= ratio;
            }
            for (int n = Math.max(1, m); n <= coefficients.degree(); n++) {
                power *= ratio;
                addTerm(field, n, m, power, legendre, place, cosine, sine, years);
            }
            double next = cosine * place.cosineEast() - sine * place.sineEast();
            sine = sine * place.cosineEast() + cosine * place.sineEast();
            cosine = next;
        }
        return field;
    }

    private void addTerm(
            double[] field,
            int n,
            int m,
            double power,
            double[] legendre,
            GeocentricPlace place,
            double cosine,
            double sine,
            double years) {
        int at = GaussCoefficients.index(n, m);
        double below = m < n ? legendre[GaussCoefficients.index(n - 1, m)] : 0;
        double value = m == 0 ? legendre[at] : legendre[at] * place.cosine();
        // dP/d(colatitude): for m = 0 -sqrt(n (n + 1) / 2) P_n^1, else (n cos P_n^m - sqrt(n^2 - m^2) P_(n-1)^m) / sin
        double slope = m == 0
                ? -Math.sqrt(n * (n + 1) / 2.0) * legendre[at + 1] * place.cosine()
                : n * place.sine() * legendre[at] - roots[at] * below;
        double g = coefficients.g(at, years);
        double h = coefficients.h(at, years);
        double gChange = coefficients.gChange(at);
        double hChange = coefficients.hChange(at);
        double even = g * cosine + h * sine;
        double evenChange = gChange * cosine + hChange * sine;
        field[0] += power * slope * even;
        field[2] -= power * (n + 1) * value * even;
        field[3] += power * slope * evenChange;
        field[5] -= power * (n + 1) * value * evenChange;
        if (m > 0) {
            field[1] += power * m * legendre[at] * (g * sine - h * cosine);
            field[4] += power * m * legendre[at] * (gChange * sine - hChange * cosine);
        }
    }

    /** The Legendre functions of degree n and order m, those of m above 0 divided by the cosine of the latitude. */
    private double[] legendre(double sine, double cosine) {
        double[] values = new double[roots.length];
        values[0] = 1;
        for (int n = 1; n <= coefficients.degree(); n++) {
            for (int m = 0; m < n; m++) {
                int at = GaussCoefficients.index(n, m);
                double previous = values[GaussCoefficients.index(n - 1, m)];
                double last = m < n - 1
                        ? roots[GaussCoefficients.index(n - 1, m)] * values[GaussCoefficients.index(n - 2, m)]
                        : 0;
                values[at] = ((2 * n - 1) * sine * previous - last) / roots[at];
            }
            values[GaussCoefficients.index(n, n)] =
                    n == 1 ? 1 : sectoral[n] * cosine * values[GaussCoefficients.index(n - 1, n - 1)];
        }
        return values;
    }
}
