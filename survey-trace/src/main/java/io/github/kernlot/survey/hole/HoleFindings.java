package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.HandLine;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.JoinPosterior;
import io.github.kernlot.orientation.line.LineAngle;
import io.github.kernlot.orientation.line.MarkPosterior;
import io.github.kernlot.orientation.line.ReferenceLine;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.Finding.Level;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a user of an oriented hole should know before its results are used. */
final class HoleFindings {

    private final HoleLog log;
    private final OrientationSettings settings;
    private final ReferenceLine line;
    private final HandLine handLine;
    private final List<OrientedStructure> structures;
    private final List<Finding> recorded;
    private final List<Finding> found = new ArrayList<>();

    HoleFindings(OrientedHole hole) {
        this.log = hole.log();
        this.settings = hole.settings();
        this.line = hole.line();
        this.handLine = hole.handLine();
        this.structures = hole.structures();
        this.recorded = new RecordFindings(hole).all();
    }

    List<Finding> all() {
        if (log.marks().isEmpty()) {
            found.add(Finding.ofHole(Level.WARNING, "the hole has no marks: its core is not oriented"));
        } else if (log.joins().isEmpty()) {
            found.add(Finding.ofHole(
                    Level.INFO, "no joins were recorded: the depth of every mark in use is taken as a doubtful join"));
        }
        found.addAll(recorded);
        line.marks().forEach(this::mark);
        line.joins().forEach(this::join);
        structures.forEach(this::structure);
        byHand();
        return List.copyOf(found);
    }

    private void mark(MarkPosterior mark) {
        double depth = mark.mark().depth();
        mark.mark()
                .leftOut()
                .ifPresent(reason -> found.add(Finding.at(
                        depth, Level.INFO, "the mark was left out by hand" + (reason.isEmpty() ? "" : ": " + reason))));
        mark.chances().ifPresent(chances -> {
            String away = mark.residual().isPresent()
                    ? String.format(
                            Locale.ROOT,
                            "; it stands %.1f degrees from what the others predict",
                            Degrees.wrap180(Math.rint(mark.residual().getAsDouble() * 10) / 10))
                    : "";
            switch (mark.verdict()) {
                case FLIPPED ->
                    found.add(Finding.at(
                            depth,
                            Level.WARNING,
                            "the mark is most probably flipped" + percent(chances.flipped()) + away));
                case WRONG ->
                    found.add(Finding.at(
                            depth, Level.WARNING, "the mark is most probably wrong" + percent(chances.wrong()) + away));
                case SOUND, LEFT_OUT -> {}
            }
        });
    }

    private void join(JoinPosterior join) {
        if (join.join().fit() == JoinFit.DOUBTFUL && join.slipped() > 0.5) {
            found.add(Finding.at(
                    join.join().depth(),
                    Level.WARNING,
                    "the core most probably slipped at this doubtful join" + percent(join.slipped())));
        }
    }

    private static String percent(double probability) {
        return String.format(Locale.ROOT, " (%.0f %%)", 100 * probability);
    }

    private void structure(OrientedStructure structure) {
        String kind = structure.structure().kind();
        if (!structure.isOriented()) {
            found.add(Finding.at(
                    structure.structure().depth(), Level.WARNING, kind + " is unoriented: " + structure.note()));
        } else if (!structure.note().isEmpty()) {
            boolean lacksItsLine =
                    structure.structure().hasLine() && structure.lineation().isEmpty();
            found.add(Finding.at(
                    structure.structure().depth(),
                    lacksItsLine ? Level.WARNING : Level.INFO,
                    kind + ": " + structure.note()));
        }
    }

    /** Where the hand method would orient structures otherwise: one finding for neighbours of which the same is to be said. */
    private void byHand() {
        String before = "";
        double from = 0;
        double to = 0;
        List<OrientedStructure> byDepth = structures.stream()
                .filter(structure -> structure.structure().hasPlaneByLine()
                        || structure.structure().hasCoreLineByLine())
                .sorted(Comparator.comparingDouble(
                        structure -> structure.structure().depth()))
                .toList();
        for (OrientedStructure structure : byDepth) {
            double depth = structure.structure().depth();
            String now = difference(structure);
            if (!now.equals(before)) {
                tell(before, from, to);
                before = now;
                from = depth;
            }
            to = depth;
        }
        tell(before, from, to);
    }

    private void tell(String difference, double from, double to) {
        if (!difference.isEmpty()) {
            String until = to > from ? String.format(Locale.ROOT, " (structures to %.2f m)", to) : "";
            found.add(Finding.at(from, Level.INFO, difference + until));
        }
    }

    private String difference(OrientedStructure structure) {
        Optional<LineAngle> hand = handLine.angleAt(structure.structure().depth());
        if (hand.isEmpty() || hand.get().sigma() > settings.lineSigmaLimit()) {
            return structure.isOrientedByLine() ? "by hand there is no line here" : "";
        }
        if (!structure.isOrientedByLine()) {
            return "by hand there is a line here, and the structures would be oriented";
        }
        double apart = Degrees.wrap180(
                hand.get().frame().turnFrom(structure.line().orElseThrow().frame()));
        return Math.abs(apart) > settings.handTolerance() ? "by hand the line stands elsewhere" : "";
    }
}
