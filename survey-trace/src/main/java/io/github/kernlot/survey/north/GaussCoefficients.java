package io.github.kernlot.survey.north;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The coefficients of a magnetic potential in spherical harmonics with Schmidt's semi-normalisation, and their change. */
final class GaussCoefficients {

    private final int degree;
    /** By {@link #index}: g and h in nT, their change in nT a year. */
    private final double[] g;

    private final double[] h;
    private final double[] gChange;
    private final double[] hChange;

    private GaussCoefficients(int degree) {
        this.degree = degree;
        int size = index(degree, degree) + 1;
        g = new double[size];
        h = new double[size];
        gChange = new double[size];
        hChange = new double[size];
    }

    /** A table with columns n, m, g_nT, h_nT, gdot_nT_per_year, hdot_nT_per_year in the resources of this package. */
    static GaussCoefficients ofResource(String name, int degree) {
        GaussCoefficients coefficients = new GaussCoefficients(degree);
        try (InputStream table = GaussCoefficients.class.getResourceAsStream(name)) {
            if (table == null) {
                throw new IllegalStateException("the coefficients " + name + " are missing in this build");
            }
            CsvReader.builder()
                    .commentStrategy(CommentStrategy.SKIP)
                    .ofNamedCsvRecord(new InputStreamReader(table, StandardCharsets.UTF_8))
                    .forEach(coefficients::take);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return coefficients;
    }

    private void take(NamedCsvRecord row) {
        int at = index(Integer.parseInt(row.getField("n")), Integer.parseInt(row.getField("m")));
        g[at] = Double.parseDouble(row.getField("g_nT"));
        h[at] = Double.parseDouble(row.getField("h_nT"));
        gChange[at] = Double.parseDouble(row.getField("gdot_nT_per_year"));
        hChange[at] = Double.parseDouble(row.getField("hdot_nT_per_year"));
    }

    /** Where degree n and order m stand: by degree, and by order within it. */
    static int index(int n, int m) {
        return n * (n + 1) / 2 + m;
    }

    int degree() {
        return degree;
    }

    double g(int index, double years) {
        return g[index] + years * gChange[index];
    }

    double h(int index, double years) {
        return h[index] + years * hChange[index];
    }

    double gChange(int index) {
        return gChange[index];
    }

    double hChange(int index) {
        return hChange[index];
    }
}
