package io.github.kernlot.orientation.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ConeMeetingTest {

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "two-holes.csv", useHeadersInDisplayName = true)
    void twoHolesLeaveThePlanesOfTheWorkedExample(
            String id,
            double firstAzimuth,
            double firstPlunge,
            double firstAlpha,
            double secondAzimuth,
            double secondPlunge,
            double secondAlpha,
            String planes,
            double tolerance) {
        ConeMeeting meeting = PoleCone.of(HoleDirection.ofPlunge(firstPlunge, firstAzimuth), firstAlpha)
                .meeting(PoleCone.of(HoleDirection.ofPlunge(secondPlunge, secondAzimuth), secondAlpha));
        List<PlaneOrientation> expected = List.of(planes.split(" ")).stream()
                .map(text -> text.split("/"))
                .map(parts ->
                        PlaneOrientation.ofDipAndDirection(Double.parseDouble(parts[0]), Double.parseDouble(parts[1])))
                .toList();
        assertEquals(expected.size(), meeting.planes().size());
        assertEquals(ConeMeeting.Kind.CROSSING, meeting.kind());
        for (PlaneOrientation plane : expected) {
            assertTrue(
                    meeting.planes().stream().anyMatch(found -> found.angleTo(plane) < tolerance),
                    () -> plane + " in " + meeting);
        }
    }

    @Test
    void bruteForceFindsTheSamePlanes() {
        // every pole of a grid of half a degree that fits both alphas within half a degree lies at a solution, and each
        // solution has one
        List<PlaneOrientation> grid = Grid.planes(0.5);
        Random random = new Random(4);
        for (int run = 0; run < 12; run++) {
            HoleDirection first = HoleDirection.ofPlunge(-80 + 160 * random.nextDouble(), 360 * random.nextDouble());
            HoleDirection second = HoleDirection.ofPlunge(-80 + 160 * random.nextDouble(), 360 * random.nextDouble());
            double firstAlpha = 90 * random.nextDouble();
            double secondAlpha = 90 * random.nextDouble();
            ConeMeeting meeting = PoleCone.of(first, firstAlpha).meeting(PoleCone.of(second, secondAlpha));
            List<PlaneOrientation> near = grid.stream()
                    .filter(plane ->
                            Math.hypot(Grid.alpha(plane, first) - firstAlpha, Grid.alpha(plane, second) - secondAlpha)
                                    < 0.5)
                    .toList();
            for (PlaneOrientation found : meeting.planes()) {
                assertTrue(near.stream().anyMatch(plane -> plane.angleTo(found) < 0.5), meeting::toString);
            }
            if (meeting.kind() == ConeMeeting.Kind.APART && meeting.gap() > 1.5) {
                assertTrue(near.isEmpty(), () -> near + " " + meeting);
            }
            if (meeting.kind() == ConeMeeting.Kind.CROSSING) {
                for (PlaneOrientation plane : near) {
                    // cones that cut at a small angle are near each other far from where they cut
                    assertTrue(
                            meeting.planes().stream().anyMatch(found -> found.angleTo(plane) < 12),
                            () -> plane + " " + meeting);
                }
            }
        }
    }

    @Test
    void conesOfParallelHolesAreToldAsSuch() {
        HoleDirection down = HoleDirection.ofPlunge(60, 90);
        HoleDirection up = HoleDirection.ofPlunge(-60, 270);
        ConeMeeting meeting = PoleCone.of(down, 40).meeting(PoleCone.of(up, 43));
        assertEquals(ConeMeeting.Kind.PARALLEL, meeting.kind());
        assertEquals(3, meeting.gap(), 1e-12);
        assertTrue(meeting.planes().isEmpty());
        ConeMeeting across = PoleCone.of(down, 90).meeting(PoleCone.of(up, 90));
        assertEquals(1, across.planes().size());
        assertEquals(30, across.planes().get(0).dip(), 1e-9);
    }

    @Test
    void twoHolesAlongThePlaneFixIt() {
        // both alphas 0: the plane holds both holes
        ConeMeeting meeting =
                PoleCone.of(HoleDirection.ofPlunge(30, 0), 0).meeting(PoleCone.of(HoleDirection.ofPlunge(0, 90), 0));
        assertEquals(1, meeting.planes().size());
        assertEquals(0, meeting.planes().get(0).angleTo(PlaneOrientation.ofDipAndDirection(30, 0)), 1e-9);
    }

    @Test
    void conesThatMeetOnOneSideOnlyHaveTwoPlanes() {
        // holes 40 apart, poles 30 from both
        ConeMeeting meeting =
                PoleCone.of(HoleDirection.ofPlunge(70, 0), 60).meeting(PoleCone.of(HoleDirection.ofPlunge(30, 0), 60));
        assertEquals(ConeMeeting.Kind.CROSSING, meeting.kind());
        assertEquals(2, meeting.planes().size());
    }

    @Test
    void conesOfHolesThatFallAndRiseMayLieApart() {
        // a hole straight down and one that rises 30 from the vertical: poles 80 from the one, 30 from the other
        ConeMeeting meeting =
                PoleCone.of(HoleDirection.ofPlunge(90, 0), 10).meeting(PoleCone.of(HoleDirection.ofPlunge(-60, 0), 60));
        assertEquals(ConeMeeting.Kind.APART, meeting.kind());
        assertEquals(20, meeting.gap(), 1e-9);
        assertTrue(meeting.planes().isEmpty());
    }

    @Test
    void conesThatTouchHaveOnePlaneBetweenTheHoles() {
        // holes 40 apart in one vertical plane, poles 15 and 25 from them: they touch in that plane
        ConeMeeting meeting =
                PoleCone.of(HoleDirection.ofPlunge(70, 0), 75).meeting(PoleCone.of(HoleDirection.ofPlunge(30, 0), 65));
        assertEquals(ConeMeeting.Kind.TOUCHING, meeting.kind());
        assertEquals(1, meeting.planes().size());
        assertEquals(55, 90 - meeting.planes().get(0).dip(), 1e-9);
        assertEquals(0, meeting.gap());
    }
}
