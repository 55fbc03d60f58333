package io.github.kernlot.survey.check;

import io.github.kernlot.survey.check.Limit.Standing;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The limits that a survey is held against. Printed, they are a table with the standing of each. */
public final class SurveyLimits {

    private final Map<SurveyLimit, Limit> limits;

    private SurveyLimits(Map<SurveyLimit, Limit> limits) {
        this.limits = limits;
    }

    /**
     * The limits to begin with, those of {@link SurveyLimit#assumed}.
     *
     * @return the limits
     */
    public static SurveyLimits assumed() {
        Map<SurveyLimit, Limit> limits = new EnumMap<>(SurveyLimit.class);
        for (SurveyLimit which : SurveyLimit.values()) {
            which.assumed().ifPresent(limit -> limits.put(which, limit));
        }
        return new SurveyLimits(limits);
    }

    /**
     * The same limits with a value of the caller's own.
     *
     * @param which the limit
     * @param value its value, in {@link SurveyLimit#unit}, 0 or more
     * @return the limits
     * @throws IllegalArgumentException if the value is negative or not finite
     */
    public SurveyLimits with(SurveyLimit which, double value) {
        Map<SurveyLimit, Limit> changed = new EnumMap<>(limits);
        changed.put(which, new Limit(value, which.unit(), Standing.GIVEN, ""));
        return new SurveyLimits(changed);
    }

    /**
     * The same limits without one: what it holds back is not told.
     *
     * @param which the limit
     * @return the limits
     */
    public SurveyLimits without(SurveyLimit which) {
        Map<SurveyLimit, Limit> changed = new EnumMap<>(limits);
        changed.remove(which);
        return new SurveyLimits(changed);
    }

    /**
     * A limit.
     *
     * @param which which one
     * @return the limit; empty where there is none
     */
    public Optional<Limit> of(SurveyLimit which) {
        return Optional.ofNullable(limits.get(which));
    }

    /**
     * Holds a number against a limit.
     *
     * @param which the limit
     * @param quantity what the number is
     * @param value the number, in the unit of the limit, of either sign
     * @return both, if the number exceeds the limit by more than rounding; empty where it does not or there is no limit
     * @throws IllegalArgumentException if the limit is exceeded and the number is not finite
     */
    public Optional<Measurement> exceeded(SurveyLimit which, String quantity, double value) {
        return of(which)
                .filter(limit -> Math.abs(value) > limit.value() * (1 + 1e-9))
                .map(limit -> new Measurement(quantity, value, limit));
    }

    double value(SurveyLimit which, double otherwise) {
        return of(which).map(Limit::value).orElse(otherwise);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SurveyLimits that && limits.equals(that.limits);
    }

    @Override
    public int hashCode() {
        return limits.hashCode();
    }

    /** One line for each limit. */
    @Override
    public String toString() {
        return Arrays.stream(SurveyLimit.values())
                .map(which -> String.format(
                        Locale.ROOT,
                        "%-17s %s",
                        which.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                        of(which).map(Limit::toString).orElse("none")))
                .collect(Collectors.joining("\n"));
    }
}
