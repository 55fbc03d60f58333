package io.github.kernlot.survey.north;

import java.time.LocalDate;

/** Dates as the publishers of geomagnetic models write them. */
final class DecimalYear {

    private DecimalYear() {}

    /** The beginning of a day: the year, and the days that went by as a share of the year's 365 or 366. */
    static double of(LocalDate date) {
        return date.getYear() + (date.getDayOfYear() - 1.0) / date.lengthOfYear();
    }
}
