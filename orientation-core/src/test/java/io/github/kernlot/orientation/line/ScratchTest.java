package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.*;
import java.util.*;
import java.util.stream.*;
import org.junit.jupiter.api.Test;

class ScratchTest {
    @Test
    void compare() {
        HolePath path = HolePath.straight(HoleDirection.ofInclination(20, 40));
        LineModel model = LineModel.assumed();
        List<Double> md = new ArrayList<>(), q = new ArrayList<>();
        List<Join> joins = new ArrayList<>();
        for (int i = 1; i <= 20; i++) {
            md.add(3.0 * i);
            q.add(3.0 * i - 1.3);
            joins.add(new Join(3.0 * i, i % 4 == 0 ? JoinFit.DOUBTFUL : JoinFit.LOCKED));
        }
        double worstMean = 0, worstSigma = 0, se = 0, n = 0;
        for (long seed = 0; seed < 6; seed++) {
            SimulatedLine line =
                    new LineSimulation(model, path, CoreDiameter.ofMillimetres(63.5), md, joins, q).run(seed);
            long t = System.nanoTime();
            ReferenceLine got = model.reconcile(path, line.marks(), joins);
            long t1 = System.nanoTime();
            List<DenseLine.Seen> seen = Sighting.all(line.marks(), path, model.side(), model.noise()).stream()
                    .map(s -> new DenseLine.Seen(s.depth(), s.angle(), s.sigma()))
                    .toList();
            DenseLine dense = new DenseLine(3600, model.drift(), model.blunders());
            for (double d : q) {
                double[] p = dense.at(d, seen, joins);
                double c = 0, s = 0;
                for (int i = 0; i < p.length; i++) {
                    c += p[i] * Math.cos(2 * Math.PI * i / p.length) / 10;
                    s += p[i] * Math.sin(2 * Math.PI * i / p.length) / 10;
                }
                double b = Math.exp(-Math.pow(Math.toRadians(1), 2) / 2);
                double R = Math.hypot(c, s) * b;
                double mean = Math.toDegrees(Math.atan2(s, c));
                LinePosterior lp = got.at(d).orElseThrow();
                double m = lp.frame().turnFrom(path.carriedFrameAt(d));
                double sg = Math.toDegrees(Math.sqrt(-2 * Math.log(R)));
                double err = Math.IEEEremainder(m - line.frameAt(d).turnFrom(path.carriedFrameAt(d)), 360);
                se += err * err;
                n++;
                double dm = Math.abs(Math.IEEEremainder(m - mean, 360)), ds = Math.abs(lp.sigma() / sg - 1);
                if (dm > worstMean || ds > worstSigma)
                    System.out.println(seed + " " + d + " " + lp + " dense " + sg + " dm " + dm + " r95 "
                            + lp.radius95() + " true err " + err);
                worstMean = Math.max(worstMean, dm);
                worstSigma = Math.max(worstSigma, ds);
            }
            System.out.println("time " + (t1 - t) / 1e6 + " "
                    + got.marks().stream().map(Object::toString).collect(Collectors.joining("; ")));
            System.out.println(line.kinds() + " " + got.joins());
        }
        System.out.println("worst " + worstMean + " " + worstSigma + " rms " + Math.sqrt(se / n));
    }
}
