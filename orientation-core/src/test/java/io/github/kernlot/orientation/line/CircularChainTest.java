package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.internal.circle.CircleGrid;
import io.github.kernlot.orientation.internal.circle.Transition;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CircularChainTest {

    private static final Map<Integer, double[]> FIVE_NODES = fiveNodes();

    /** Five nodes, 24 states, von Mises edges and observations, each sound, flipped or uniform by fixed weights. */
    private static Map<Integer, double[]> fiveNodes() {
        CircleGrid grid = new CircleGrid(24);
        double[][] observed = new double[5][];
        java.util.Arrays.setAll(observed, i -> ones(24));
        observed[0] = mixture(grid, 0, 20, 0.8, 0.1, 0.1);
        observed[2] = mixture(grid, 0, 20, 0.8, 0.1, 0.1);
        observed[3] = mixture(grid, 30, 20, 0.8, 0.1, 0.1);
        observed[4] = mixture(grid, 30, 20, 0.8, 0.1, 0.1);
        List<Transition> edges = new ArrayList<>();
        for (double turn : new double[] {15, -30, 45, 180}) {
            edges.add(turn(mixture(grid, turn, 50, 0.85, 0.10, 0.05)));
        }
        CircularChain chain = new CircularChain(grid, List.of(observed), edges);
        Map<Integer, double[]> marginals = new HashMap<>();
        for (int i = 0; i < 5; i++) {
            marginals.put(i, chain.marginal(i));
        }
        return marginals;
    }

    /** Any turn, from the probability of each step of the grid. */
    private static Transition turn(double[] kernel) {
        return new Transition() {
            @Override
            public double[] down(double[] message) {
                double[] down = new double[message.length];
                for (int i = 0; i < message.length; i++) {
                    for (int k = 0; k < message.length; k++) {
                        down[(i + k) % message.length] += message[i] * kernel[k];
                    }
                }
                return down;
            }

            @Override
            public double[] up(double[] message) {
                double[] up = new double[message.length];
                for (int i = 0; i < message.length; i++) {
                    for (int k = 0; k < message.length; k++) {
                        up[i] += message[(i + k) % message.length] * kernel[k];
                    }
                }
                return up;
            }
        };
    }

    private static double[] ones(int size) {
        double[] ones = new double[size];
        java.util.Arrays.fill(ones, 1);
        return ones;
    }

    private static double[] mixture(
            CircleGrid grid, double mean, double kappa, double sound, double flip, double rest) {
        double[] density = new double[grid.size()];
        double norm = 0;
        int fine = 3600;
        for (int i = 0; i < fine; i++) {
            norm += Math.exp(kappa * (Math.cos(2 * Math.PI * i / fine) - 1)) * 2 * Math.PI / fine;
        }
        for (int i = 0; i < density.length; i++) {
            double away = Math.toRadians(grid.angle(i) - mean);
            density[i] = sound * Math.exp(kappa * (Math.cos(away) - 1)) / norm
                    + flip * Math.exp(kappa * (-Math.cos(away) - 1)) / norm
                    + rest / (2 * Math.PI);
        }
        return density;
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/line/chain-with-flips.csv", useHeadersInDisplayName = true)
    void theMarginalsOfAChainWithFlipsAreThoseOfEnumeration(int node, double state, double marginal, String source) {
        double probability = FIVE_NODES.get(node)[(int) Math.round(state / 15)] * 15;
        assertEquals(marginal, probability, 1e-9, source);
    }

    @Test
    void aDenseForwardBackwardGivesTheSame() {
        int size = 64;
        CircleGrid grid = new CircleGrid(size);
        Random random = new Random(5);
        int length = 7;
        double[][] seen = new double[length][size];
        double[][] kernels = new double[length - 1][size];
        List<Transition> transitions = new ArrayList<>();
        for (int i = 0; i < length; i++) {
            for (int j = 0; j < size; j++) {
                seen[i][j] = random.nextDouble();
            }
            if (i > 0) {
                double sum = 0;
                for (int j = 0; j < size; j++) {
                    kernels[i - 1][j] = Math.pow(random.nextDouble(), 3);
                    sum += kernels[i - 1][j];
                }
                for (int j = 0; j < size; j++) {
                    kernels[i - 1][j] /= sum;
                }
                transitions.add(turn(kernels[i - 1]));
            }
        }
        CircularChain chain = new CircularChain(grid, List.of(seen), transitions);
        double[][] forward = new double[length][size];
        double[][] backward = new double[length][size];
        double evidence = 0;
        for (int i = 0; i < length; i++) {
            for (int j = 0; j < size; j++) {
                double prior = i == 0 ? 1.0 / 360 : 0;
                for (int k = 0; i > 0 && k < size; k++) {
                    prior += forward[i - 1][k] * kernels[i - 1][(j - k + size) % size];
                }
                forward[i][j] = prior * seen[i][j];
            }
        }
        for (int i = length - 1; i >= 0; i--) {
            for (int j = 0; j < size; j++) {
                backward[i][j] = i == length - 1 ? 1 : 0;
                for (int k = 0; i < length - 1 && k < size; k++) {
                    backward[i][j] += kernels[i][(k - j + size) % size] * seen[i + 1][k] * backward[i + 1][k];
                }
            }
        }
        for (int j = 0; j < size; j++) {
            evidence += forward[length - 1][j] * grid.step();
        }
        assertEquals(Math.log(evidence), chain.logEvidence(), 1e-11);
        for (int i = 0; i < length; i++) {
            double[] marginal = chain.marginal(i);
            for (int j = 0; j < size; j++) {
                assertEquals(forward[i][j] * backward[i][j] / evidence, marginal[j], 1e-13);
            }
        }
        assertTrue(evidence > 0);
    }
}
