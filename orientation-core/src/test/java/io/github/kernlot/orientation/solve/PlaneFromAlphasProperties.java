package io.github.kernlot.orientation.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Domain(SolveDomain.class)
@Domain(DomainContext.Global.class)
class PlaneFromAlphasProperties {

    private static double alpha(PlaneOrientation plane, HoleDirection hole) {
        return Poles.alpha(Poles.normal(plane), Poles.axis(hole));
    }

    private static boolean diverge(List<HoleDirection> holes) {
        return holes.stream().anyMatch(hole -> {
            double apart = hole.angleTo(holes.get(0));
            return apart > 1 && apart < 179;
        });
    }

    private static List<AlphaReading> readings(PlaneOrientation plane, List<HoleDirection> holes) {
        return holes.stream()
                .map(hole -> AlphaReading.of(hole, alpha(plane, hole), 1))
                .toList();
    }

    @Property(tries = 100)
    void thePlaneIsAlwaysAmongThoseThatAreTied(
            @ForAll PlaneOrientation plane, @ForAll @Size(min = 2, max = 6) List<HoleDirection> holes) {
        Assume.that(diverge(holes));
        PlaneFromAlphas found = PlaneFromAlphas.of(readings(plane, holes));
        // where cones touch, a misfit of 1e-14 is spread over the square root of it
        assertTrue(
                found.tied().stream().anyMatch(each -> each.plane().angleTo(plane) < 1e-4),
                () -> plane + " in " + found);
        assertEquals(0, found.best().chiSquare(), 1e-9);
        assertEquals(
                1,
                found.candidates().stream().mapToDouble(AlphaCandidate::weight).sum(),
                1e-9);
        for (AlphaCandidate candidate : found.candidates()) {
            candidate.residuals().forEach(residual -> assertFalse(residual.isNaN()));
            candidate.estimate().ifPresent(each -> assertTrue(each.greatestSigma() >= each.leastSigma()));
        }
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void turningTheNorthTurnsTheBest(
            @ForAll PlaneOrientation plane,
            @ForAll @Size(value = 4) List<HoleDirection> holes,
            @ForAll @DoubleRange(min = -6, max = 6) double noise,
            @ForAll @DoubleRange(min = 0, max = 360) double turn) {
        Assume.that(diverge(holes));
        List<AlphaReading> readings = new ArrayList<>();
        List<AlphaReading> turned = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            double alpha = Math.max(0, Math.min(90, alpha(plane, holes.get(i)) + noise * (i - 1)));
            readings.add(AlphaReading.of(holes.get(i), alpha, 1 + i));
            turned.add(AlphaReading.of(holes.get(i).withAzimuthTurned(turn), alpha, 1 + i));
        }
        PlaneFromAlphas first = PlaneFromAlphas.of(readings);
        PlaneFromAlphas second = PlaneFromAlphas.of(turned);
        assertEquals(first.best().chiSquare(), second.best().chiSquare(), 1e-5);
        Assume.that(first.isDecided());
        assertTrue(Degrees.wrap180(turn) == 0
                || first.best()
                                .plane()
                                .withAzimuthTurned(turn)
                                .angleTo(second.best().plane())
                        < 0.01);
    }
}
