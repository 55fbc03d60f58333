package io.github.kernlot.survey.north;

/**
 * The transverse Mercator projection of an ellipsoid by Krueger's series in the third flattening n, to the sixth order.
 *
 * <p>Source: C. F. F. Karney, Transverse Mercator with an accuracy of a few nanometers, 2011; coefficients of its equations (35)
 * and (36), from memory, which the tests hold against the length of the meridian.
 */
final class KruegerSeries {

    private static final int ORDER = 6;
    /** Above any tangent of a latitude that a double can tell from 90 degrees. */
    private static final double STEEPEST = 1e100;

    private final double eccentricity;
    private final double eccentricitySquared;
    /** The length of a quarter meridian is this times pi / 2. */
    private final double rectifyingRadius;

    private final double radiusRatio;
    private final double[] alpha;
    private final double[] beta;

    KruegerSeries(Ellipsoid ellipsoid) {
        eccentricitySquared = ellipsoid.eccentricitySquared();
        eccentricity = Math.sqrt(eccentricitySquared);
        double n = ellipsoid.thirdFlattening();
        double square = n * n;
        radiusRatio = (1 + square * (1 / 4.0 + square * (1 / 64.0 + square / 256))) / (1 + n);
        rectifyingRadius = ellipsoid.equatorialRadius() * radiusRatio;
        alpha = powers(n, new double[][] {
            {1 / 2.0, -2 / 3.0, 5 / 16.0, 41 / 180.0, -127 / 288.0, 7891 / 37800.0},
            {13 / 48.0, -3 / 5.0, 557 / 1440.0, 281 / 630.0, -1983433 / 1935360.0},
            {61 / 240.0, -103 / 140.0, 15061 / 26880.0, 167603 / 181440.0},
            {49561 / 161280.0, -179 / 168.0, 6601661 / 7257600.0},
            {34729 / 80640.0, -3418889 / 1995840.0},
            {212378941 / 319334400.0}
        });
        beta = powers(n, new double[][] {
            {1 / 2.0, -2 / 3.0, 37 / 96.0, -1 / 360.0, -81 / 512.0, 96199 / 604800.0},
            {1 / 48.0, 1 / 15.0, -437 / 1440.0, 46 / 105.0, -1118711 / 3870720.0},
            {17 / 480.0, -37 / 840.0, -209 / 4480.0, 5569 / 90720.0},
            {4397 / 161280.0, -11 / 504.0, -830251 / 7257600.0},
            {4583 / 161280.0, -108847 / 3991680.0},
            {20648693 / 638668800.0}
        });
    }

    /** Row j, counted from 1, begins with the coefficient of n to the power j. */
    private static double[] powers(double n, double[][] rows) {
        double[] sums = new double[ORDER + 1];
        for (int j = 1; j <= ORDER; j++) {
            double[] row = rows[j - 1];
            for (int i = row.length - 1; i >= 0; i--) {
                sums[j] = sums[j] * n + row[i];
            }
            sums[j] *= Math.pow(n, j);
        }
        return sums;
    }

    /**
     * A place on the plane.
     *
     * @param north metres from the equator at scale 1
     * @param east metres from the central meridian at scale 1
     * @param convergence radians, positive where grid north lies east of true north
     * @param scale the point scale, 1 on the central meridian
     */
    record PlanePoint(double north, double east, double convergence, double scale) {}

    /** A place on the ellipsoid: latitude, and longitude from the central meridian, radians. */
    record GlobePoint(double latitude, double longitude) {}

    PlanePoint forward(double sineLatitude, double cosineLatitude, double sineEast, double cosineEast) {
        // beyond any latitude of doubles the tangent is kept finite: the pole is then the limit along its meridian
        double tangent = cosineLatitude == 0 ? Math.copySign(STEEPEST, sineLatitude) : sineLatitude / cosineLatitude;
        double conformal = conformal(tangent);
        double reach = Math.hypot(conformal, cosineEast);
        double xi = Math.atan2(conformal, cosineEast);
        double eta = asinh(sineEast / reach);
        double north = xi;
        double east = eta;
        double real = 1;
        double imaginary = 0;
        for (int j = 1; j <= ORDER; j++) {
            double sine = Math.sin(2 * j * xi);
            double cosine = Math.cos(2 * j * xi);
            double hyperbolicSine = Math.sinh(2 * j * eta);
            double hyperbolicCosine = Math.cosh(2 * j * eta);
            north += alpha[j] * sine * hyperbolicCosine;
            east += alpha[j] * cosine * hyperbolicSine;
            real += 2 * j * alpha[j] * cosine * hyperbolicCosine;
            imaginary += 2 * j * alpha[j] * sine * hyperbolicSine;
        }
        // the convergence of the sphere of conformal latitudes, and what the series turns on
        double convergence =
                Math.atan2(conformal * sineEast, cosineEast * Math.hypot(1, conformal)) + Math.atan2(imaginary, real);
        double sine = tangent / Math.hypot(1, tangent);
        double scale = Math.sqrt(1 - eccentricitySquared * sine * sine)
                * (Math.hypot(1, tangent) / reach)
                * radiusRatio
                * Math.hypot(real, imaginary);
        return new PlanePoint(rectifyingRadius * north, rectifyingRadius * east, convergence, scale);
    }

    GlobePoint inverse(double north, double east) {
        double xi = north / rectifyingRadius;
        double eta = east / rectifyingRadius;
        double conformalXi = xi;
        double conformalEta = eta;
        for (int j = 1; j <= ORDER; j++) {
            conformalXi -= beta[j] * Math.sin(2 * j * xi) * Math.cosh(2 * j * eta);
            conformalEta -= beta[j] * Math.cos(2 * j * xi) * Math.sinh(2 * j * eta);
        }
        double across = Math.sinh(conformalEta);
        double along = Math.cos(conformalXi);
        double conformal = Math.sin(conformalXi) / Math.hypot(across, along);
        return new GlobePoint(Math.atan(geodetic(conformal)), Math.atan2(across, along));
    }

    /** The tangent of the conformal latitude, equations (7) to (9). */
    private double conformal(double tangent) {
        double hypotenuse = Math.hypot(1, tangent);
        double sigma = Math.sinh(eccentricity * atanh(eccentricity * tangent / hypotenuse));
        return tangent * Math.hypot(1, sigma) - sigma * hypotenuse;
    }

    /** The tangent of the latitude by Newton's method, equations (19) to (21). */
    private double geodetic(double conformal) {
        double tangent = conformal / (1 - eccentricitySquared);
        for (int i = 0; i < 6; i++) {
            double reached = conformal(tangent);
            double flat = 1 - eccentricitySquared;
            tangent += (conformal - reached)
                    / Math.hypot(1, reached)
                    * (1 + flat * tangent * tangent)
                    / (flat * Math.hypot(1, tangent));
        }
        return tangent;
    }

    private static double asinh(double x) {
        double size = Math.abs(x);
        return Math.copySign(Math.log1p(size + size * size / (1 + Math.hypot(1, size))), x);
    }

    private static double atanh(double x) {
        return Math.log1p(2 * x / (1 - x)) / 2;
    }
}
