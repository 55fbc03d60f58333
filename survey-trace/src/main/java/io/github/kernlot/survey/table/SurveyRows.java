package io.github.kernlot.survey.table;

import io.github.kernlot.survey.North;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyPart;
import io.github.kernlot.survey.SurveyStation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The stations of one survey of a hole.
 *
 * @param name the survey; blank where the hole has one without a name
 * @param recorded its stations in the order of their rows
 */
record SurveyRows(String name, List<StationRow> recorded) {

    /** The surveys of a hole in the order in which they are first named. */
    static List<SurveyRows> of(List<StationRow> stations) {
        Map<String, SurveyRows> surveys = new LinkedHashMap<>();
        for (StationRow station : stations) {
            surveys.computeIfAbsent(station.survey(), name -> new SurveyRows(name, new ArrayList<>()))
                    .recorded
                    .add(station);
        }
        return List.copyOf(surveys.values());
    }

    List<StationRow> byDepth() {
        return recorded.stream()
                .sorted(Comparator.comparingDouble(StationRow::depth))
                .toList();
    }

    /** Adds faults to rows that cannot stand in one survey. */
    void check() {
        List<StationRow> stations = byDepth();
        for (int i = 1; i < stations.size(); i++) {
            StationRow upper = stations.get(i - 1);
            StationRow lower = stations.get(i);
            if (upper.depth() == lower.depth()) {
                boolean inOrder = upper.row().line() < lower.row().line();
                Row first = inOrder ? upper.row() : lower.row();
                Row second = inOrder ? lower.row() : upper.row();
                second.fault(
                        "depth_m",
                        "a station of the " + (name.isEmpty() ? "hole" : "survey") + " at this depth stands in line "
                                + first.line() + " already");
            } else {
                checkDogleg(
                        upper.station(), "the station in line " + upper.row().line(), lower.row(), lower.station());
            }
        }
    }

    static void checkDogleg(SurveyStation upper, String whose, Row row, SurveyStation lower) {
        try {
            Survey.of(List.of(upper, lower), NorthReference.grid());
        } catch (IllegalArgumentException refused) {
            row.fault("dip_deg", "with " + whose + ": " + refused.getMessage());
        }
    }

    /** Adds a fault to each row whose own north cannot be converted. */
    void checkNorths(NorthReference hole) {
        for (StationRow station : recorded) {
            try {
                station.north().ifPresent(north -> hole.with(north).toAdd(North.GRID));
            } catch (IllegalArgumentException refused) {
                station.row().fault("north", "" + refused.getMessage());
            }
        }
    }

    /** The survey from grid north. */
    Survey onGrid(NorthReference hole) {
        Map<North, List<SurveyStation>> byNorth = new EnumMap<>(North.class);
        recorded.forEach(
                station -> byNorth.computeIfAbsent(station.north().orElse(hole.north()), north -> new ArrayList<>())
                        .add(station.station()));
        List<SurveyPart> parts = new ArrayList<>();
        byNorth.forEach((north, stations) -> parts.add(SurveyPart.of(stations, hole.with(north))));
        return Survey.ofParts(parts);
    }

    /** The name, or words in its place. */
    String title() {
        return name.isEmpty() ? "without a name" : name;
    }

    /** The same survey without its stations down to a depth. */
    SurveyRows below(double depth) {
        return new SurveyRows(
                name,
                recorded.stream().filter(station -> station.depth() > depth).toList());
    }
}
