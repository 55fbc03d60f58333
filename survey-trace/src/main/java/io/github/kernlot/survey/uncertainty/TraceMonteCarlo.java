package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.commons.rng.JumpableUniformRandomProvider;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Many drawn holes: the survey is shifted by random errors of the same sources and traced again, with nothing made linear but the
 * weights. It tells how far the first order can be trusted.
 *
 * @param uncertainty what is tried
 * @param draws how many holes, 100 or more
 * @param seed any number; the same seed gives the same bits on one platform, whatever the number of threads
 * @param threads how many threads draw, 1 or more
 */
public record TraceMonteCarlo(TraceUncertainty uncertainty, int draws, long seed, int threads) {

    private static final int BLOCK = 250;
    private static final int FEWEST = 100;

    /**
     * Checks the counts.
     *
     * @throws IllegalArgumentException if there are fewer than 100 draws or no thread
     */
    public TraceMonteCarlo {
        Require.inRange("number of draws", draws, FEWEST, Integer.MAX_VALUE, "");
        Require.inRange("number of threads", threads, 1, Integer.MAX_VALUE, "");
    }

    /**
     * A trial with 10,000 draws, seed 1 and one thread.
     *
     * @param uncertainty what is tried
     * @return the trial
     */
    public static TraceMonteCarlo of(TraceUncertainty uncertainty) {
        return new TraceMonteCarlo(uncertainty, 10_000, 1, 1);
    }

    /**
     * This trial with another number of draws.
     *
     * @param other how many holes, 100 or more
     * @return the trial
     * @throws IllegalArgumentException if there are fewer than 100
     */
    public TraceMonteCarlo withDraws(int other) {
        return new TraceMonteCarlo(uncertainty, other, seed, threads);
    }

    /**
     * This trial with another seed.
     *
     * @param other any number
     * @return the trial
     */
    public TraceMonteCarlo withSeed(long other) {
        return new TraceMonteCarlo(uncertainty, draws, other, threads);
    }

    /**
     * This trial on several threads.
     *
     * @param other how many, 1 or more
     * @return the trial, which gives the same bits
     * @throws IllegalArgumentException if there is none
     */
    public TraceMonteCarlo withThreads(int other) {
        return new TraceMonteCarlo(uncertainty, draws, seed, other);
    }

    /**
     * Draws the holes and compares them with the first order at a depth.
     *
     * @param depth metres along the hole
     * @return both covariances
     * @throws IllegalArgumentException if the trace does not reach the depth
     * @throws IllegalStateException if fewer than 100 draws were holes at all: errors larger than the survey's intervals
     */
    public MonteCarloReport at(double depth) {
        PointUncertainty firstOrder = uncertainty.at(depth);
        List<Callable<DrawnHoles>> blocks = new ArrayList<>();
        JumpableUniformRandomProvider random =
                (JumpableUniformRandomProvider) RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
        for (int done = 0; done < draws; done += BLOCK) {
            int count = Math.min(BLOCK, draws - done);
            UniformRandomProvider stream = random.jump();
            blocks.add(() -> DrawnHoles.of(uncertainty, depth, stream, count));
        }
        DrawnHoles all = new DrawnHoles();
        results(blocks).forEach(all::add);
        if (all.count() < FEWEST) {
            throw new IllegalStateException(
                    "only " + all.count() + " of " + draws + " draws keep the depths of their stations in order");
        }
        return all.report(firstOrder);
    }

    private List<DrawnHoles> results(List<Callable<DrawnHoles>> blocks) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<DrawnHoles> results = new ArrayList<>();
            for (Future<DrawnHoles> future : pool.invokeAll(blocks)) {
                results.add(future.get());
            }
            return results;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while holes were drawn", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a hole could not be drawn", e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
