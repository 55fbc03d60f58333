package io.github.kernlot.orientation.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.BetaConvention.Apex;
import io.github.kernlot.orientation.BetaConvention.Sense;
import io.github.kernlot.orientation.BetaConvention.View;
import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.orientation.line.Fabric;
import io.github.kernlot.orientation.solve.ReadingConvention.DipSign;
import io.github.kernlot.orientation.solve.ReadingConvention.LineSide;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ConventionSearchTest {

    private static final Fabric FABRIC = new Fabric(PlaneOrientation.ofDipAndDirection(40, 20), 5, 0.05);
    private static final HoleDirection HOLE = HoleDirection.ofDip(-60, 90);

    /** A log of structures of a fabric in holes near a direction, written by a convention. */
    private static List<FabricObservation> log(
            ReadingConvention convention, Fabric fabric, HoleDirection near, int count, Random random) {
        List<FabricObservation> log = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            HoleDirection hole = HoleDirection.ofInclination(
                    near.inclination() + 4 * random.nextDouble() - 2,
                    Degrees.wrap360(near.azimuth() + 8 * random.nextDouble() - 4));
            Vector pole = Poles.normal(fabric.mean())
                    .plus(Poles.withDip(fabric.mean()).times(Math.toRadians(fabric.sigma()) * random.nextGaussian()))
                    .plus(Poles.withDipDirection(fabric.mean())
                            .times(Math.toRadians(fabric.sigma()) * random.nextGaussian()));
            double lineAngle = 360 * random.nextDouble();
            // the line as it lies in the ground: its angle counted from the side that the marks stand for
            double fromLow = lineAngle + (convention.side() == LineSide.HIGH ? 180 : 0);
            CorePlane shown = CoreFrame.at(hole, fromLow).toCore(Poles.plane(pole));
            double beta = Degrees.wrap360(shown.beta() + 5 * random.nextGaussian());
            HoleDirection written =
                    convention.dipSign() == DipSign.AS_GIVEN ? hole : HoleDirection.ofDip(-hole.dip(), hole.azimuth());
            log.add(new FabricObservation(
                    written,
                    lineAngle,
                    CorePlane.of(shown.alpha(), convention.beta().fromHouse(beta)),
                    fabric,
                    2,
                    5));
        }
        return log;
    }

    private static List<ReadingConvention> all() {
        List<ReadingConvention> all = new ArrayList<>();
        for (Sense sense : Sense.values()) {
            for (View view : View.values()) {
                for (Apex apex : Apex.values()) {
                    for (LineSide side : LineSide.values()) {
                        for (DipSign sign : DipSign.values()) {
                            all.add(new ReadingConvention(new BetaConvention(sense, view, apex), side, sign));
                        }
                    }
                }
            }
        }
        return all;
    }

    @Test
    void everyConventionIsFoundFromALogThatIsWrittenByIt() {
        Random random = new Random(7);
        for (ReadingConvention convention : all()) {
            ConventionSearch search = ConventionSearch.of(log(convention, FABRIC, HOLE, 12, random));
            assertTrue(search.best().conventions().contains(convention), () -> convention + "\n" + search);
            assertTrue(search.best().probability() > 0.99);
            assertTrue(search.best().meanMisfit() < 12);
            assertTrue(search.ties().isEmpty(), search::toString);
            assertEquals(search.best(), search.evidenceFor(convention));
        }
    }

    @Test
    void thirtyTwoWaysAreEightThatCanBeTold() {
        ConventionSearch search = ConventionSearch.of(log(ReadingConvention.HOUSE, FABRIC, HOLE, 3, new Random(1)));
        assertEquals(8, search.evidence().size());
        assertEquals(
                32,
                search.evidence().stream()
                        .mapToInt(each -> each.conventions().size())
                        .sum());
        assertEquals(
                1,
                search.evidence().stream()
                        .mapToDouble(ConventionEvidence::probability)
                        .sum(),
                1e-12);
        search.evidence()
                .forEach(each -> assertEquals(LineSide.LOW, each.convention().side()));
    }

    @Test
    void aWrongConventionIsFarLessProbable() {
        ReadingConvention written = new ReadingConvention(
                new BetaConvention(Sense.ANTICLOCKWISE, View.DOWN_HOLE, Apex.DOWN_HOLE),
                LineSide.LOW,
                DipSign.AS_GIVEN);
        ConventionSearch search = ConventionSearch.of(log(written, FABRIC, HOLE, 20, new Random(2)));
        ConventionEvidence taken = search.evidenceFor(ReadingConvention.HOUSE);
        assertTrue(taken.probability() < 1e-6);
        assertTrue(taken.meanMisfit() > 30);
        assertTrue(search.best().logLikelihood() > taken.logLikelihood() + 20);
    }

    @Test
    void theSenseDoesNotShowWhereBetaIsNearZero() {
        // the fabric strikes at right angles to the hole: its down-hole end lies at the low side
        Fabric across = new Fabric(PlaneOrientation.ofDipAndDirection(75, 270), 3, 0.05);
        List<FabricObservation> log = new ArrayList<>();
        CorePlane shown = CoreFrame.at(HOLE, 0).toCore(across.mean());
        for (int i = 0; i < 4; i++) {
            log.add(new FabricObservation(
                    HOLE, 0, CorePlane.of(shown.alpha(), Degrees.wrap360(shown.beta() + i % 2)), across, 2, 5));
        }
        ConventionSearch search = ConventionSearch.of(log);
        assertEquals(1, search.ties().size(), search::toString);
        assertTrue(search.ties().get(0).reason().contains("0 or 180"), search::toString);
        assertTrue(search.ties().get(0).other().isMirrored()
                != search.best().convention().isMirrored());
    }

    @Test
    void nearAlphaNinetyAndNearAlphaZeroLittleIsTold() {
        Fabric blunt = new Fabric(PlaneOrientation.ofDipAndDirection(33, 268), 4, 0.05);
        CorePlane shown = CoreFrame.at(HOLE, 0).toCore(blunt.mean());
        ConventionSearch search = ConventionSearch.of(
                List.of(new FabricObservation(HOLE, 0, CorePlane.of(shown.alpha(), shown.beta()), blunt, 2, 5)));
        assertEquals(3, search.ties().size(), search::toString);
        search.ties().forEach(tie -> assertTrue(tie.reason().contains("near 90,"), tie::toString));
        Fabric along = new Fabric(PlaneOrientation.ofDipAndDirection(65, 170), 3, 0.05);
        CorePlane flat = CoreFrame.at(HOLE, 0).toCore(along.mean());
        assertTrue(flat.alpha() < 20);
        ConventionSearch second = ConventionSearch.of(List.of(
                new FabricObservation(HOLE, 0, CorePlane.of(0, flat.beta()), new Fabric(along.mean(), 8, 0), 2, 5)));
        assertTrue(second.ties().stream().anyMatch(tie -> tie.reason().contains("alpha is near 0")), second::toString);
    }

    @Test
    void senseAndEndTogetherDoNotShowAtNinety() {
        Fabric fabric = new Fabric(PlaneOrientation.ofDipAndDirection(40, 20), 3, 0);
        for (double direction = 0; direction < 360; direction += 0.25) {
            PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(52, direction);
            CorePlane shown = CoreFrame.at(HOLE, 0).toCore(plane);
            if (Math.abs(shown.beta() - 90) < 0.3 && shown.alpha() < 70) {
                fabric = new Fabric(plane, 3, 0);
            }
        }
        CorePlane shown = CoreFrame.at(HOLE, 0).toCore(fabric.mean());
        assertEquals(90, shown.beta(), 0.5);
        ConventionSearch search = ConventionSearch.of(List.of(new FabricObservation(HOLE, 0, shown, fabric, 2, 5)));
        assertTrue(search.ties().stream().anyMatch(tie -> tie.reason().contains("90 or 270")), search::toString);
    }

    @Test
    void inAHorizontalHoleTheSignOfTheDipDoesNotShow() {
        HoleDirection level = HoleDirection.ofDip(-1, 90);
        ConventionSearch search = ConventionSearch.of(log(ReadingConvention.HOUSE, FABRIC, level, 2, new Random(3)));
        assertTrue(search.ties().stream().anyMatch(tie -> tie.reason().contains("horizontal")), search::toString);
    }

    @Test
    void anUprightFabricAlongTheHoleShowsTheSameInAHoleTurnedOver() {
        Fabric upright = new Fabric(PlaneOrientation.ofDipAndDirection(90, 10), 3, 0);
        CorePlane shown = CoreFrame.at(HOLE, 0).toCore(upright.mean());
        ConventionSearch search = ConventionSearch.of(List.of(new FabricObservation(HOLE, 0, shown, upright, 2, 5)));
        assertTrue(search.ties().stream().anyMatch(tie -> tie.reason().contains("turned over")), search::toString);
        assertTrue(search.ties().stream().noneMatch(tie -> tie.reason().contains("horizontal")), search::toString);
    }

    @Test
    void aReadingThatFitsNoWaySaysSo() {
        CorePlane shown = CoreFrame.at(HOLE, 0).toCore(FABRIC.mean());
        CorePlane elsewhere = CorePlane.of(shown.alpha() > 45 ? 5 : 80, Degrees.wrap360(shown.beta() + 45));
        ConventionSearch search = ConventionSearch.of(List.of(new FabricObservation(HOLE, 0, elsewhere, FABRIC, 2, 1)));
        assertEquals(7, search.ties().size(), search::toString);
        assertTrue(
                search.ties().stream().anyMatch(tie -> tie.reason().equals("the readings are too few, or fit neither")),
                search::toString);
    }

    @Test
    void theSideOfTheLineTurnsBetaByHalfATurn() {
        BetaConvention beta = BetaConvention.HOUSE;
        assertEquals(40, new ReadingConvention(beta, LineSide.LOW, DipSign.AS_GIVEN).betaFromLowSide(30, 10));
        assertEquals(220, new ReadingConvention(beta, LineSide.HIGH, DipSign.AS_GIVEN).betaFromLowSide(30, 10));
    }

    @Test
    void whatShowsNoConventionIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> ConventionSearch.of(List.of()));
        HoleDirection vertical = HoleDirection.ofDip(-90, 0);
        CorePlane plane = CorePlane.of(40, 30);
        assertThrows(IllegalArgumentException.class, () -> new FabricObservation(vertical, 0, plane, FABRIC, 2, 5));
        assertThrows(
                IllegalArgumentException.class,
                () -> new FabricObservation(HOLE, 0, CorePlane.perpendicular(), FABRIC, 2, 5));
        assertThrows(IllegalArgumentException.class, () -> new FabricObservation(HOLE, 361, plane, FABRIC, 2, 5));
        assertThrows(IllegalArgumentException.class, () -> new FabricObservation(HOLE, 0, plane, FABRIC, -2, 5));
    }

    @Test
    void readsInWords() {
        assertEquals(
                "beta clockwise looking down-hole to the down-hole end, line low, dip as given",
                ReadingConvention.HOUSE.toString());
        ConventionEvidence evidence = new ConventionEvidence(List.of(ReadingConvention.HOUSE), -12.34, 5.67, 0.98765);
        assertEquals(
                ReadingConvention.HOUSE + ": misfit 5.7, log likelihood -12.3, probability 0.988", evidence.toString());
        assertEquals(
                "or " + ReadingConvention.HOUSE + ": the reason",
                new ConventionTie(ReadingConvention.HOUSE, ReadingConvention.HOUSE, "the reason").toString());
        ConventionSearch search = ConventionSearch.of(log(ReadingConvention.HOUSE, FABRIC, HOLE, 12, new Random(1)));
        assertEquals(search.best().toString(), search.toString());
        assertEquals(
                "alpha 40.0, beta 030.0 in -60.0/090.0 (dip/azimuth), line 010.0",
                new FabricObservation(HOLE, 10, CorePlane.of(40, 30), FABRIC, 2, 5).toString());
    }
}
