package io.github.kernlot.survey;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.StringJoiner;

/**
 * The north of a set of azimuths, with what is known of the way to the other norths: {@code true = magnetic + declination},
 * {@code grid = true - convergence}. What was not given is never taken as 0.
 *
 * @param north the north that azimuths are counted from
 * @param declination where magnetic north lies from true north, degrees, east positive; empty where it was not given
 * @param convergence where grid north lies from true north, degrees, east positive; empty where it was not given
 * @param declinationSource in words, where the declination comes from
 * @param convergenceSource in words, where the convergence comes from
 */
public record NorthReference(
        North north,
        OptionalDouble declination,
        OptionalDouble convergence,
        String declinationSource,
        String convergenceSource) {

    private static final String GIVEN = "given";

    /**
     * Checks the angles.
     *
     * @throws IllegalArgumentException if one lies outside [-180, 180], or a source is blank
     */
    public NorthReference {
        declination = checked("declination", declination);
        convergence = checked("grid convergence", convergence);
        checkSource(declinationSource);
        checkSource(convergenceSource);
    }

    /**
     * A reference whose angles the caller gives.
     *
     * @param north the north that azimuths are counted from
     * @param declination where magnetic north lies from true north, degrees, east positive; empty where it is not known
     * @param convergence where grid north lies from true north, degrees, east positive; empty where it is not known
     * @throws IllegalArgumentException if an angle lies outside [-180, 180]
     */
    public NorthReference(North north, OptionalDouble declination, OptionalDouble convergence) {
        this(north, declination, convergence, GIVEN, GIVEN);
    }

    private static void checkSource(String source) {
        if (source.isBlank()) {
            throw new IllegalArgumentException("the source of an angle is blank; expected a few words");
        }
    }

    private static OptionalDouble checked(String name, OptionalDouble angle) {
        return angle.isPresent()
                ? OptionalDouble.of(Require.inRange(name, angle.getAsDouble(), -180, 180, "degrees"))
                : angle;
    }

    /**
     * Azimuths from grid north, with no way known to another north.
     *
     * @return the reference
     */
    public static NorthReference grid() {
        return new NorthReference(North.GRID, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * Azimuths from true north.
     *
     * @param convergence where grid north lies from true north, degrees, east positive
     * @return the reference
     * @throws IllegalArgumentException if the angle lies outside [-180, 180]
     */
    public static NorthReference trueNorth(double convergence) {
        return new NorthReference(North.TRUE, OptionalDouble.empty(), OptionalDouble.of(convergence));
    }

    /**
     * Azimuths from magnetic north.
     *
     * @param declination where magnetic north lies from true north, degrees, east positive
     * @param convergence where grid north lies from true north, degrees, east positive
     * @return the reference
     * @throws IllegalArgumentException if an angle lies outside [-180, 180]
     */
    public static NorthReference magnetic(double declination, double convergence) {
        return new NorthReference(North.MAGNETIC, OptionalDouble.of(declination), OptionalDouble.of(convergence));
    }

    /**
     * The same place with azimuths counted from another north.
     *
     * @param other the other north
     * @return the reference
     */
    public NorthReference with(North other) {
        return new NorthReference(other, declination, convergence, declinationSource, convergenceSource);
    }

    /**
     * The same reference with where its declination comes from, for the record of conversions.
     *
     * @param source in words: a model with place and date, a map, a measurement
     * @return the reference
     * @throws IllegalArgumentException if there is no declination, or the source is blank
     */
    public NorthReference withDeclinationFrom(String source) {
        fromTrue(North.MAGNETIC);
        return new NorthReference(north, declination, convergence, source, convergenceSource);
    }

    /**
     * The same reference with where its convergence comes from, for the record of conversions.
     *
     * @param source in words: a grid and a place, a survey plan
     * @return the reference
     * @throws IllegalArgumentException if there is no convergence, or the source is blank
     */
    public NorthReference withConvergenceFrom(String source) {
        fromTrue(North.GRID);
        return new NorthReference(north, declination, convergence, declinationSource, source);
    }

    NorthReference withoutDeclination() {
        return new NorthReference(north, OptionalDouble.empty(), convergence, GIVEN, convergenceSource);
    }

    /** This reference with the angles that it lacks taken from another one. */
    NorthReference completedFrom(NorthReference other) {
        return new NorthReference(
                north,
                declination.isPresent() ? declination : other.declination,
                convergence.isPresent() ? convergence : other.convergence,
                declination.isPresent() ? declinationSource : other.declinationSource,
                convergence.isPresent() ? convergenceSource : other.convergenceSource);
    }

    /**
     * What is added to an azimuth of this reference to count it from another north.
     *
     * @param other the north to count from
     * @return degrees, any finite number
     * @throws IllegalArgumentException if the conversion needs a declination or a convergence that was not given
     */
    public double toAdd(North other) {
        return other == north ? 0 : fromTrue(north) - fromTrue(other);
    }

    /** Where a north lies from true north, east positive. */
    private double fromTrue(North which) {
        return switch (which) {
            case TRUE -> 0;
            case MAGNETIC -> given(declination, "declination", which);
            case GRID -> given(convergence, "grid convergence", which);
        };
    }

    private double given(OptionalDouble angle, String name, North which) {
        return angle.orElseThrow(() -> new IllegalArgumentException("azimuths from " + text(north)
                + " north cannot be converted: no " + name + " was given, and " + text(which)
                + " north cannot be found without it"));
    }

    /** The terms of {@link #toAdd}, with their sources. */
    String termsTo(North other) {
        if (other == north) {
            return "nothing";
        }
        StringJoiner terms = new StringJoiner(" ");
        addTerm(terms, north, true);
        addTerm(terms, other, false);
        return terms.toString();
    }

    private void addTerm(StringJoiner terms, North which, boolean plus) {
        if (which != North.TRUE) {
            boolean magnetic = which == North.MAGNETIC;
            terms.add((plus ? "" : "- ")
                    + String.format(
                            Locale.ROOT,
                            "%s %.4f (%s)",
                            magnetic ? "declination" : "convergence",
                            fromTrue(which),
                            magnetic ? declinationSource : convergenceSource));
        }
    }

    static String text(North which) {
        return which.name().toLowerCase(Locale.ROOT);
    }

    /**
     * The north and the angles: {@code magnetic north (declination 3.2, convergence -1.1)}, with the sources of those that the
     * caller did not merely give.
     */
    @Override
    public String toString() {
        return text(from(declinationSource), from(convergenceSource));
    }

    /** The north and the angles without their sources. */
    String withoutSources() {
        return text("", "");
    }

    private String text(String afterDeclination, String afterConvergence) {
        StringJoiner known =
                new StringJoiner(", ", text(north) + " north (", ")").setEmptyValue(text(north) + " north");
        declination.ifPresent(angle -> known.add("declination " + Degrees.text(angle) + afterDeclination));
        convergence.ifPresent(angle -> known.add("convergence " + Degrees.text(angle) + afterConvergence));
        return known.toString();
    }

    private static String from(String source) {
        return source.equals(GIVEN) ? "" : " from " + source;
    }
}
