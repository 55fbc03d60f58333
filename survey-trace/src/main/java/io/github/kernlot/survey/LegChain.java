package io.github.kernlot.survey;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import java.util.ArrayList;
import java.util.List;

/** Strings legs together down a hole: where one ends the next begins, and what is carried goes on. */
final class LegChain {

    /** An azimuth that turns by so nearly half a turn turns by half a turn, degrees. */
    private static final double ROUNDING = 1e-9;
    /** How far an arc is followed below the last station, degrees. */
    private static final double GREATEST_TURN = 90;

    private final TraceSettings settings;
    private final List<Leg> legs = new ArrayList<>();
    private final List<TraceNote> notes = new ArrayList<>();
    private Leg.Station last;
    private double reach;

    private LegChain(TraceSettings settings, Leg.Station first) {
        this.settings = settings;
        this.last = first;
    }

    /** The legs from the collar. */
    static LegChain fromCollar(Survey survey, TraceSettings settings) {
        List<SurveyStation> stations = survey.stations();
        SurveyStation first = stations.get(0);
        Heading heading = Heading.start(first.direction());
        LegChain chain = new LegChain(settings, new Leg.Station(0, Displacement.ZERO, heading));
        if (first.depth() > 0) {
            chain.add(new StraightLeg(chain.last, heading, false), first.depth(), heading);
        }
        chain.addAll(first, stations.subList(1, stations.size()));
        return chain;
    }

    /** The legs of a parent down to the kick-off, and those of the branch. */
    static LegChain fromParent(List<Leg> parent, double kickOff, Survey survey, TraceSettings settings) {
        List<Leg> above = parent.stream().filter(leg -> leg.from < kickOff).toList();
        Leg from = parent.stream()
                .filter(leg -> leg.from <= kickOff)
                .reduce((earlier, later) -> later)
                .orElseThrow();
        Heading heading = from.headingAt(kickOff - from.from);
        LegChain chain = new LegChain(settings, new Leg.Station(kickOff, from.place(kickOff - from.from), heading));
        chain.legs.addAll(above);
        chain.addAll(new SurveyStation(kickOff, heading.direction()), survey.stations());
        return chain;
    }

    List<Leg> legs() {
        return legs;
    }

    List<TraceNote> notes() {
        return notes;
    }

    double reach() {
        return reach;
    }

    private void addAll(SurveyStation first, List<SurveyStation> stations) {
        SurveyStation before = first;
        SurveyStation upper = first;
        for (SurveyStation lower : stations) {
            addInterval(upper, lower);
            before = upper;
            upper = lower;
        }
        addBeyond(before);
    }

    private void addInterval(SurveyStation upper, SurveyStation lower) {
        switch (settings.method()) {
            case MINIMUM_CURVATURE -> addArc(lower);
            case RADIUS_OF_CURVATURE -> addCylinder(upper, lower);
            case AVERAGE_ANGLE -> addAverage(upper, lower);
            case BALANCED_TANGENTIAL -> {
                addStraight(last.heading(), (upper.depth() + lower.depth()) / 2, lower.direction());
                addStraight(last.heading(), lower.depth(), lower.direction());
            }
            case TANGENTIAL ->
                addStraight(last.heading().turnedTo(lower.direction()), lower.depth(), lower.direction());
        }
    }

    private void addArc(SurveyStation lower) {
        HoleDirection from = last.heading().direction();
        if (ArcLeg.joins(from, lower.direction())) {
            ArcLeg arc = new ArcLeg(last, lower.direction(), lower.depth() - last.depth());
            add(arc, lower.depth(), last.heading().turnedTo(lower.direction()));
        } else {
            addStraight(last.heading(), lower.depth(), lower.direction());
        }
    }

    private void addStraight(Heading begin, double to, HoleDirection end) {
        add(new StraightLeg(last, begin, false), to, begin.turnedTo(end));
    }

    private void addAverage(SurveyStation upper, SurveyStation lower) {
        double turn = azimuthTurn(upper, lower);
        double inclination =
                (upper.direction().inclination() + lower.direction().inclination()) / 2;
        HoleDirection mean = new HoleDirection(inclination, Degrees.wrap360(startAzimuth(upper, lower) + turn / 2));
        addStraight(last.heading().turnedTo(mean), lower.depth(), lower.direction());
    }

    private void addCylinder(SurveyStation upper, SurveyStation lower) {
        double turn = azimuthTurn(upper, lower);
        double inclination = lower.direction().inclination();
        if (turn == 0 && inclination == upper.direction().inclination()) {
            addStraight(last.heading(), lower.depth(), lower.direction());
            return;
        }
        double length = lower.depth() - upper.depth();
        Heading begin =
                last.heading().turnedTo(new HoleDirection(upper.direction().inclination(), startAzimuth(upper, lower)));
        CylinderLeg cylinder = new CylinderLeg(last, begin, inclination, turn, length);
        add(cylinder, lower.depth(), cylinder.heading(length).turnedTo(lower.direction()));
    }

    /** The azimuth with which the angles of an interval begin. */
    private static double startAzimuth(SurveyStation upper, SurveyStation lower) {
        boolean isBorrowed =
                upper.direction().isVertical() && !lower.direction().isVertical();
        return (isBorrowed ? lower : upper).direction().azimuth();
    }

    /** How far the azimuth turns over an interval; what had to be settled for it is noted. */
    private double azimuthTurn(SurveyStation upper, SurveyStation lower) {
        boolean isFromVertical = upper.direction().isVertical();
        boolean isToVertical = lower.direction().isVertical();
        if (isFromVertical || isToVertical) {
            if (!isToVertical) {
                noteBorrowed(upper);
            } else if (!isFromVertical) {
                noteBorrowed(lower);
            }
            return 0;
        }
        double turn =
                Degrees.wrap180(lower.direction().azimuth() - upper.direction().azimuth());
        if (Math.abs(turn) < 180 - ROUNDING) {
            return turn;
        }
        notes.add(new TraceNote(
                lower.depth(),
                "the azimuth is half a turn from that of the station above: " + settings.method()
                        + " cannot tell which way it went, and takes it as falling"));
        return -180;
    }

    private void noteBorrowed(SurveyStation vertical) {
        TraceNote note = new TraceNote(
                vertical.depth(),
                "the hole is vertical: " + settings.method() + " takes its azimuth from the neighbouring stations");
        // the interval above may have told it already
        if (notes.isEmpty() || !notes.get(notes.size() - 1).equals(note)) {
            notes.add(note);
        }
    }

    private void addBeyond(SurveyStation before) {
        double limit = settings.extrapolationLimit();
        HoleDirection direction = last.heading().direction();
        boolean isArc = settings.beyondLast() == BeyondLast.CONSTANT_CURVATURE;
        if (isArc && before.depth() == last.depth()) {
            throw new IllegalArgumentException(
                    "one station tells no curvature to go on with; expected two or more, or a straight hole below it");
        }
        if (isArc && limit > 0 && ArcLeg.joins(before.direction(), direction)) {
            double length = last.depth() - before.depth();
            double toGreatest = GREATEST_TURN / before.direction().angleTo(direction) * length;
            double followed = Math.min(limit, toGreatest);
            reach = last.depth() + followed;
            legs.add(ArcLeg.beyond(last, before.direction(), length, followed));
        } else {
            reach = last.depth() + limit;
            legs.add(new StraightLeg(last, last.heading(), true));
        }
    }

    private void add(Leg leg, double to, Heading end) {
        legs.add(leg);
        last = new Leg.Station(to, leg.place(to - leg.from), end);
    }
}
