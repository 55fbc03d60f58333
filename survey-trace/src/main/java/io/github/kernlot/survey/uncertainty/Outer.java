package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Vector;

/** Sums of outer products. */
final class Outer {

    private Outer() {}

    /** Writes two vectors behind each other. */
    static void put(double[] target, Vector place, Vector direction) {
        target[0] = place.north();
        target[1] = place.east();
        target[2] = place.down();
        target[3] = direction.north();
        target[4] = direction.east();
        target[5] = direction.down();
    }

    /** Adds a vector to three numbers. */
    static void sum(double[] target, int at, Vector v) {
        target[at] += v.north();
        target[at + 1] += v.east();
        target[at + 2] += v.down();
    }

    /** Adds v v' to a full matrix. */
    static void add(double[][] matrix, double[] v) {
        for (int i = 0; i < v.length; i++) {
            for (int j = 0; j < v.length; j++) {
                matrix[i][j] += v[i] * v[j];
            }
        }
    }

    /** Adds v v' to nn, ee, dd, ne, nd, ed. */
    static void square(double[] packed, int at, Vector v) {
        packed[at] += v.north() * v.north();
        packed[at + 1] += v.east() * v.east();
        packed[at + 2] += v.down() * v.down();
        packed[at + 3] += v.north() * v.east();
        packed[at + 4] += v.north() * v.down();
        packed[at + 5] += v.east() * v.down();
    }

    /** Adds nn, ee, dd, ne, nd, ed to the upper left of a full matrix. */
    static void addPacked(double[][] matrix, double[] packed, int at) {
        matrix[0][0] += packed[at];
        matrix[1][1] += packed[at + 1];
        matrix[2][2] += packed[at + 2];
        matrix[0][1] += packed[at + 3];
        matrix[1][0] += packed[at + 3];
        matrix[0][2] += packed[at + 4];
        matrix[2][0] += packed[at + 4];
        matrix[1][2] += packed[at + 5];
        matrix[2][1] += packed[at + 5];
    }
}
