package io.github.kernlot.orientation.bulk;

/** Short loops without a branch over columns from 0, each of which C2 makes vector instructions of. */
final class Loops {

    private Loops() {}

    static void add(double[] sum, double summand, int count) {
        for (int i = 0; i < count; i++) {
            sum[i] = sum[i] + summand;
        }
    }

    static void product(double[] a, double[] b, double[] out, int count) {
        for (int i = 0; i < count; i++) {
            out[i] = a[i] * b[i];
        }
    }

    static void productNegated(double[] a, double[] b, double[] out, int count) {
        for (int i = 0; i < count; i++) {
            out[i] = -a[i] * b[i];
        }
    }

    static void addProduct(double[] sum, double[] a, double[] b, double sign, int count) {
        for (int i = 0; i < count; i++) {
            sum[i] = sum[i] + sign * a[i] * b[i];
        }
    }

    /** (a b) c. */
    static void longAxis(double[] a, double[] b, double[] c, double[] out, int count) {
        for (int i = 0; i < count; i++) {
            out[i] = a[i] * b[i] * c[i];
        }
    }

    static void sumOfProducts(
            double[] a, double[] x, double[] b, double[] y, double[] c, double[] z, double[] out, int count) {
        for (int i = 0; i < count; i++) {
            out[i] = a[i] * x[i] + b[i] * y[i] + c[i] * z[i];
        }
    }

    /** One component of a vector product, a z - b y. */
    static void cross(double[] a, double[] b, double[] y, double[] z, double[] out, int count) {
        for (int i = 0; i < count; i++) {
            out[i] = a[i] * z[i] - b[i] * y[i];
        }
    }

    /** The component towards north of u(x). */
    static void lineNorth(
            double[] cosI, double[] sinA, double[] cosA, double[] sinX, double[] cosX, double[] out, int count) {
        for (int i = 0; i < count; i++) {
            out[i] = -cosI[i] * cosA[i] * cosX[i] + sinA[i] * sinX[i];
        }
    }

    /** The component towards east of u(x). */
    static void lineEast(
            double[] cosI, double[] sinA, double[] cosA, double[] sinX, double[] cosX, double[] out, int count) {
        for (int i = 0; i < count; i++) {
            out[i] = -cosI[i] * sinA[i] * cosX[i] - cosA[i] * sinX[i];
        }
    }

    /** Above 0 where both sizes are above the least and the angle is below the full turn. */
    static void margins(
            double[] size, double[] other, double least, double[] angle, double turn, double[] out, int count) {
        for (int i = 0; i < count; i++) {
            out[i] = Math.min(Math.min(size[i], other[i]) - least, turn - angle[i]);
        }
    }
}
