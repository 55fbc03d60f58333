package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Conversions of a survey to another north: once, from what was measured, and told. */
class SurveyNorthsTest {

    private static final SurveyStation COLLAR = SurveyStation.ofDip(0, -60, 90);
    private static final SurveyStation UPPER = SurveyStation.ofDip(30, -60.5, 86);
    private static final SurveyStation LOWER = SurveyStation.ofDip(60, -61, 87);
    private static final NorthReference MAGNETIC = NorthReference.magnetic(3.2, -0.8);

    private static String refusal(Runnable call) {
        return assertThrows(IllegalArgumentException.class, call::run).getMessage();
    }

    private static List<Double> azimuths(Survey survey) {
        return survey.stations().stream()
                .map(station -> station.direction().azimuth())
                .toList();
    }

    @Property
    void conversionsThereAndBackGiveTheMeasuredNumbersToTheLastBit(
            @ForAll @Size(min = 1, max = 6) List<@DoubleRange(min = 0, max = 360) Double> azimuths,
            @ForAll @Size(max = 6) List<North> way,
            @ForAll North from,
            @ForAll @DoubleRange(min = -180, max = 180) double declination,
            @ForAll @DoubleRange(min = -180, max = 180) double convergence) {
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i < azimuths.size(); i++) {
            stations.add(SurveyStation.ofDip(30.0 * i, -80, azimuths.get(i)));
        }
        Survey measured = Survey.of(
                stations, NorthReference.magnetic(declination, convergence).with(from));

        Survey survey = measured;
        for (North north : way) {
            survey = survey.to(north);
            assertEquals(measured.to(north).stations(), survey.stations());
            assertEquals(north == from ? 0 : 1, survey.conversions().size());
        }

        assertEquals(measured.stations(), survey.to(from).stations());
        assertEquals(List.of(), survey.to(from).conversions());
        assertEquals(from, survey.measuredFrom());
    }

    @Property
    void aConstantOnTheDeclinationIsAddedToEveryAzimuthAndToNothingElse(
            @ForAll @DoubleRange(min = -20, max = 20) double declination,
            @ForAll @DoubleRange(min = -20, max = 20) double constant) {
        List<SurveyStation> stations = List.of(COLLAR, UPPER, LOWER);
        Survey one =
                Survey.of(stations, NorthReference.magnetic(declination, 1)).toGrid();
        Survey other = Survey.of(stations, NorthReference.magnetic(declination + constant, 1))
                .toGrid();

        for (int i = 0; i < stations.size(); i++) {
            SurveyStation before = one.stations().get(i);
            SurveyStation after = other.stations().get(i);
            assertEquals(
                    0,
                    Traces.apart(
                            before.direction().azimuth() + constant,
                            after.direction().azimuth()),
                    1e-12);
            assertEquals(before.depth(), after.depth());
            assertEquals(before.direction().inclination(), after.direction().inclination());
        }
    }

    @Test
    void aConversionIsToldWithItsTermsAndTheirSources() {
        Survey grid = Survey.of(
                        List.of(UPPER, LOWER),
                        MAGNETIC.withDeclinationFrom("a model").withConvergenceFrom("a grid"))
                .toGrid();

        NorthConversion conversion = grid.conversions().get(0);
        assertEquals(North.MAGNETIC, conversion.from());
        assertEquals(North.GRID, conversion.to());
        assertEquals(4.0, conversion.added(), 1e-12);
        assertEquals("declination 3.2000 (a model) - convergence -0.8000 (a grid)", conversion.why());
        assertEquals(
                "2 stations, 30.00 to 60.00 m: magnetic to grid north, +4.0000 degrees = "
                        + "declination 3.2000 (a model) - convergence -0.8000 (a grid)",
                conversion.toString());
        assertEquals(
                "convergence -0.8000 (given)",
                Survey.of(List.of(UPPER), MAGNETIC.with(North.GRID))
                        .to(North.TRUE)
                        .conversions()
                        .get(0)
                        .why());
    }

    @Test
    void aConversionFromMagneticToMagneticIsNothing() {
        NorthConversion none = new NorthConversion(1, 0, 0, MAGNETIC, North.MAGNETIC);

        assertEquals("nothing", none.why());
        assertEquals(
                "1 station, 0.00 to 0.00 m: magnetic to magnetic north, +0.0000 degrees = nothing", none.toString());
    }

    @Test
    void aCollarOnTheGridAndMagneticShotsBelowAreEachConvertedOnce() {
        Survey survey = Survey.ofParts(List.of(
                SurveyPart.of(List.of(LOWER, UPPER), MAGNETIC), SurveyPart.of(List.of(COLLAR), NorthReference.grid())));

        assertEquals(List.of(90.0, 90.0, 91.0), azimuths(survey));
        assertEquals(North.GRID, survey.measuredFrom());
        assertEquals(MAGNETIC.with(North.GRID), survey.north());
        assertEquals(1, survey.conversions().size());
        assertEquals(2, survey.conversions().get(0).stations());
        assertEquals(survey.stations(), survey.toGrid().stations());
    }

    @Test
    void mixedPartsGoToTrueAndMagneticNorthFromWhatWasMeasured() {
        Survey survey = Survey.ofParts(List.of(
                SurveyPart.of(List.of(COLLAR), NorthReference.grid()), SurveyPart.of(List.of(UPPER), MAGNETIC)));

        assertEquals(List.of(89.2, 89.2), azimuths(survey.to(North.TRUE)));
        assertEquals(2, survey.to(North.TRUE).conversions().size());
        assertEquals(List.of(86.0, 86.0), azimuths(survey.to(North.MAGNETIC)));
        assertEquals(1, survey.to(North.MAGNETIC).conversions().size());
        assertEquals(azimuths(survey), azimuths(survey.to(North.MAGNETIC).toGrid()));
    }

    @Test
    void eachDateHasItsOwnDeclination() {
        Survey survey = Survey.ofParts(List.of(
                SurveyPart.of(List.of(UPPER), MAGNETIC),
                SurveyPart.of(List.of(LOWER), NorthReference.magnetic(3.7, -0.8))));

        assertEquals(List.of(90.0, 91.5), azimuths(survey));
        assertEquals(North.MAGNETIC, survey.measuredFrom());
        assertEquals(OptionalDouble.empty(), survey.north().declination());
        assertEquals(2, survey.conversions().size());
        String message = refusal(() -> survey.to(North.MAGNETIC));
        assertTrue(message.contains("[3.2, 3.7]"), message);
    }

    @Test
    void anUnknownDeclinationIsNotTakenFromOneOfSeveral() {
        String message = refusal(() -> Survey.ofParts(List.of(
                SurveyPart.of(List.of(UPPER), MAGNETIC),
                SurveyPart.of(List.of(LOWER), NorthReference.magnetic(3.7, -0.8)),
                SurveyPart.of(
                        List.of(COLLAR),
                        new NorthReference(North.MAGNETIC, OptionalDouble.empty(), OptionalDouble.empty())))));

        assertTrue(message.contains("no declination was given"), message);
    }

    @Test
    void oneHoleHasOneConvergence() {
        String message = refusal(() -> Survey.ofParts(List.of(
                SurveyPart.of(List.of(UPPER), MAGNETIC),
                SurveyPart.of(List.of(LOWER), NorthReference.trueNorth(0.8)))));

        assertTrue(message.contains("[-0.8, 0.8]"), message);
    }

    @Test
    void faultsBetweenPartsAreSeen() {
        SurveyPart collar = SurveyPart.of(List.of(COLLAR), NorthReference.grid());

        assertTrue(refusal(() -> Survey.ofParts(List.of(collar, collar))).contains("two stations at one depth"));
        assertTrue(refusal(() -> Survey.ofParts(List.of())).contains("at least one station"));
        assertTrue(refusal(() -> Survey.ofParts(List.of(SurveyPart.of(List.of(), MAGNETIC))))
                .contains("at least one"));
    }

    @Test
    void whatWasMeasuredIsKept() {
        SurveyPart part = SurveyPart.of(List.of(LOWER, UPPER), MAGNETIC);
        Survey grid = Survey.ofParts(List.of(part));

        assertEquals(List.of(part), grid.measured());
        assertEquals(List.of(UPPER, LOWER), part.stations());
        assertEquals("2 stations, azimuths from magnetic north (declination 3.2, convergence -0.8)", part.toString());
    }
}
