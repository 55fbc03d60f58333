package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.line.DrawnLine;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.JoinPosterior;
import io.github.kernlot.orientation.line.MarkPosterior;
import io.github.kernlot.orientation.line.MirroredMark;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.audit.MarkAudit;
import io.github.kernlot.orientation.line.runs.RunReview;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.Finding.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** What the records of runs and of drawn lines say, and which marks were probably read the other way. */
final class RecordFindings {

    /** From such odds on it is told that a mark was read the other way. */
    private static final double MIRRORED = 100;

    private final OrientedHole hole;
    private final List<Finding> found = new ArrayList<>();

    RecordFindings(OrientedHole hole) {
        this.hole = hole;
    }

    List<Finding> all() {
        hole.runReview().ifPresent(this::runs);
        hole.log().drawn().recorded().ifPresent(this::lines);
        mirrored();
        return found;
    }

    private void runs(RunReview review) {
        review.findings().forEach(finding -> found.add(Finding.at(finding.depth(), Level.WARNING, finding.text())));
        review.changes().forEach(change -> found.add(Finding.at(change.mark().depth(), Level.INFO, change.toString())));
    }

    private void lines(List<DrawnLine> lines) {
        boolean hasCoreLines = hole.log().structures().stream()
                .anyMatch(structure -> structure.coreLine().isPresent());
        for (DrawnLine line : lines) {
            if (line.arrow() == DrawnLine.Arrow.UP_HOLE) {
                found.add(Finding.at(
                        line.from(),
                        Level.INFO,
                        line
                                + ": beta, gamma and offsets on it are taken as read looking up-hole, beta to the end of the"
                                + " ellipse that the arrow points to"
                                + (hasCoreLines ? ", delta likewise to that end of its line" : "")));
            }
        }
        for (OrientationMark mark : hole.log().marks()) {
            if (!hole.log().drawn().isDrawnAt(mark.depth())) {
                found.add(Finding.at(
                        mark.depth(),
                        Level.WARNING,
                        "no line was drawn at this mark; its offset is taken as one to the line that goes on"));
            }
        }
        List<Join> recorded = hole.log().joins().orElse(List.of());
        for (DrawnLine line : lines) {
            hole.line().joins().stream()
                    .map(JoinPosterior::join)
                    .filter(join -> join.depth() == line.to() && join.fit() == JoinFit.DOUBTFUL)
                    .filter(join -> !recorded.contains(join))
                    .findFirst()
                    .ifPresent(
                            join -> found.add(
                                    Finding.at(
                                            join.depth(),
                                            Level.INFO,
                                            "the line stops here and goes on below, on core that is not broken: taken as a doubtful join")));
        }
    }

    private void mirrored() {
        Set<OrientationMark> doubted = hole.line().marks().stream()
                .filter(mark -> mark.verdict() != MarkPosterior.Verdict.SOUND)
                .map(MarkPosterior::mark)
                .collect(Collectors.toSet());
        for (MirroredMark mark : MarkAudit.of(List.of(hole.line())).mirrored(MIRRORED)) {
            if (doubted.contains(mark.mark())) {
                found.add(Finding.at(
                        mark.mark().depth(),
                        Level.WARNING,
                        String.format(
                                Locale.ROOT,
                                "the mark agrees with the others if it was read by one who looked the other way (odds %.0f:1)",
                                Math.exp(mark.logOdds()))));
            }
        }
    }
}
