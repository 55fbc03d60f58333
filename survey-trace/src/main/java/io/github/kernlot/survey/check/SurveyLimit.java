package io.github.kernlot.survey.check;

import io.github.kernlot.survey.check.Limit.Standing;
import java.util.Optional;

/** What a survey can be held against. docs/checks.md says of each what it means and what to do. */
public enum SurveyLimit {
    /** Total gravity read by the tool, from what is expected there; g. */
    GRAVITY_TOTAL(0.003, "g", Standing.COMMON_PRACTICE, ""),
    /** Total magnetic field read by the tool, from what is expected there; nT. */
    FIELD_TOTAL(300, "nT", Standing.PUBLISHED, Sources.E_BOOK),
    /** Dip of the magnetic field read by the tool, from what is expected there; degrees. */
    FIELD_DIP(0.25, "degrees", Standing.PUBLISHED, Sources.E_BOOK),
    /** Dip of the magnetic field from one shot to the next; degrees. */
    FIELD_DIP_STEP(0.3, "degrees", Standing.PUBLISHED, "netwasgroup.com, Gtotal Btotal (training text)"),
    /** The dogleg severity from which a bend is a warning; degrees per 10 m. */
    DOGLEG_WARNING(1, "degrees per 10 m", Standing.COMMON_PRACTICE, ""),
    /** The dogleg severity from which a bend is an error; degrees per 10 m. */
    DOGLEG_ERROR(3, "degrees per 10 m", Standing.COMMON_PRACTICE, ""),
    /** The dogleg below which a severity says nothing, since two shots at one depth differ by as much; degrees. */
    DOGLEG_LEAST(0.5, "degrees", Standing.ASSUMED, ""),
    /** The dogleg between neighbours that no hole makes; degrees. */
    DOGLEG_GREATEST(90, "degrees", Standing.ASSUMED, ""),
    /** The azimuth's share of a dogleg, {@code 2 asin(sqrt(sin I1 sin I2) sin(dA/2))}; degrees. */
    AZIMUTH_JUMP(5, "degrees", Standing.ASSUMED, ""),
    /** The distance between stations that the caller allows; metres. There is none to begin with. */
    SPACING(0, "m", Standing.GIVEN, ""),
    /** The distance between stations of an inclined hole: 500 ft; metres. */
    SPACING_INCLINED(152.4, "m", Standing.PUBLISHED, Sources.SPACING),
    /** The distance between stations where the hole bends: 180 ft; metres. */
    SPACING_BENDING(54.864, "m", Standing.PUBLISHED, Sources.SPACING),
    /** The distance between stations of a vertical hole, one whose mean inclination is at most 3 degrees: 1,000 ft; metres. */
    SPACING_VERTICAL(304.8, "m", Standing.PUBLISHED, Sources.SPACING),
    /** The dogleg severity above which an interval counts as bending, for its spacing; degrees per 10 m. */
    BENDING(0.3, "degrees per 10 m", Standing.ASSUMED, ""),
    /** The distance between stations below which they are told to be close; metres. */
    INTERVAL_LEAST(0.1, "m", Standing.ASSUMED, ""),
    /** How far the dips of two shots at one depth may lie apart; degrees. */
    REPEAT_DIP(0.5, "degrees", Standing.COMMON_PRACTICE, ""),
    /** How far the azimuths of two shots at one depth may lie apart, times sin I; degrees. */
    REPEAT_AZIMUTH(1, "degrees", Standing.COMMON_PRACTICE, ""),
    /** How far the hole may go on above its first and below its last station; metres. */
    EXTRAPOLATION(30, "m", Standing.ASSUMED, ""),
    /** The step of the dip through horizontal from which the signs may be mixed; degrees. */
    SIGN_CHANGE(10, "degrees", Standing.ASSUMED, ""),
    /** How many sigmas from what its neighbours say a station stands out. */
    OUTLIER(5, "sigmas", Standing.ASSUMED, ""),
    /** The least sigma of one station in the search for outlying ones, what an instrument repeats to; degrees. */
    OUTLIER_FLOOR(0.3, "degrees", Standing.ASSUMED, ""),
    /** The constant difference of azimuth between two surveys of a hole that is too small to tell; degrees. */
    AZIMUTH_OFFSET(0.5, "degrees", Standing.ASSUMED, ""),
    /** How far the inclinations of the two passes of a gyro lie apart at a common station; degrees. */
    PASS_INCLINATION(0.23, "degrees", Standing.PUBLISHED, Sources.GYRO),
    /** How far the azimuths of the two passes of a gyro lie apart, 10 degrees or more from vertical; degrees. */
    PASS_AZIMUTH(1, "degrees", Standing.PUBLISHED, Sources.GYRO),
    /** How far the azimuths of the two passes of a gyro lie apart within 10 degrees of vertical; degrees. */
    PASS_AZIMUTH_STEEP(5, "degrees", Standing.PUBLISHED, Sources.GYRO),
    /** The slip of the wireline over two passes, {@code total slip x 1000 / (2 x hold-up depth)}: 1 ft in 1,000 ft. */
    WIRELINE_SLIP(1, "m per 1,000 m", Standing.PUBLISHED, Sources.GYRO),
    /** How far apart two surveys of a hole end, of the length that both describe; percent. */
    MISCLOSE(2, "% of length", Standing.COMMON_PRACTICE, ""),
    /** How many times what their sigmas allow surveys that are combined may differ by. */
    DISAGREEMENT(2, "times", Standing.ASSUMED, "");

    private final double value;
    private final String unit;
    private final Standing standing;
    private final String source;

    SurveyLimit(double value, String unit, Standing standing, String source) {
        this.value = value;
        this.unit = unit;
        this.standing = standing;
        this.source = source;
    }

    /**
     * The unit in which a value is given.
     *
     * @return the unit
     */
    public String unit() {
        return unit;
    }

    /**
     * The value to begin with.
     *
     * @return the limit with its standing; empty where the check is not made unless the caller gives a value
     */
    public Optional<Limit> assumed() {
        return standing == Standing.GIVEN ? Optional.empty() : Optional.of(new Limit(value, unit, standing, source));
    }

    private static final class Sources {
        static final String E_BOOK = "ISCWSA, Introduction to Wellbore Positioning (e-book), topic 22.1";
        static final String GYRO = "gyro quality control on drillingforgas.com and oillinkkw.com";
        static final String SPACING = "30 CFR 250.461 (oil and gas wells of the US outer continental shelf)";
    }
}
