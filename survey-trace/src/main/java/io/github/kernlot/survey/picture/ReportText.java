package io.github.kernlot.survey.picture;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.LinePosterior;
import io.github.kernlot.orientation.line.MarkJudgement;
import io.github.kernlot.orientation.line.MarkPosterior;
import io.github.kernlot.orientation.line.MarkPosterior.Verdict;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.hole.AuditEntry;
import io.github.kernlot.survey.hole.OrientedHole;
import io.github.kernlot.survey.hole.OrientedStructure;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The text of a report page. */
final class ReportText {

    /** So many holes are shown one by one. */
    static final int MOST_HOLES = 30;

    private static final String ASSUMED =
            "Sigmas are assumed values unless your tables give their own. A qualified person checks these results and signs them"
                    + " off before anyone relies on them.";

    private static final String STYLE = """
            :root{color-scheme:light}
            body{margin:0;background:#F4EFE3;color:#33313D;font:16px/1.5 Palatino,'Palatino Linotype',Georgia,'Liberation Serif',serif}
            main{max-width:1000px;margin:0 auto;padding:2.5rem clamp(1rem,4vw,3.5rem) 4rem;background:#FCFAF4}
            h1{font-weight:normal;font-size:2rem;line-height:1.2;margin:0 0 .6rem;overflow-wrap:anywhere}
            h2{font-weight:normal;font-size:1.5rem;margin:3.2rem 0 .4rem;padding-top:1.2rem;border-top:3px double #8C8678;overflow-wrap:anywhere}
            h3{font-weight:normal;font-style:italic;font-size:1.1rem;margin:1.8rem 0 .4rem}
            p{margin:.4rem 0;max-width:46rem}
            .caution{border-left:4px solid #B08D1E;padding-left:.8rem}
            a{color:#2B3C94}
            nav a{margin-right:1rem}
            figure{margin:1.4rem 0;overflow-x:auto}
            figure svg{display:block;width:100%;min-width:40rem;height:auto}
            .box{margin:.8rem 0;overflow:auto;max-height:26rem;border:1px solid #E3DCCB;background:#FFF}
            table{border-collapse:collapse;width:100%;font-size:.86rem;font-variant-numeric:tabular-nums}
            th,td{padding:.22rem .7rem;text-align:right;vertical-align:top;border-bottom:1px solid #E3DCCB;white-space:nowrap}
            th{position:sticky;top:0;background:#F4EFE3;font-weight:normal;font-style:italic}
            th.w,td.w{text-align:left;white-space:normal;min-width:7rem;overflow-wrap:anywhere}
            .cut,footer{font-size:.86rem;color:#5F5B66}
            footer{margin-top:3rem}
            @media print{body,main{background:#FFF}main{max-width:none;padding:0}.box{max-height:none;overflow:visible;border:0}
            figure{overflow:visible}figure svg{min-width:0}figure,tr{break-inside:avoid}h2{break-before:page}nav{display:none}}
            """;

    private final String title;
    private final List<OrientedHole> holes;
    private final Map<String, List<Finding>> further;
    private final List<AuditEntry> audit;
    private final List<String> tables;
    private final int rows;
    private final StringBuilder out = new StringBuilder(1 << 16);

    ReportText(
            String title,
            List<OrientedHole> holes,
            Map<String, List<Finding>> further,
            List<AuditEntry> audit,
            List<String> tables) {
        this.audit = audit;
        this.title = title;
        this.holes = holes;
        this.further = further;
        this.tables = tables;
        this.rows = Math.max(50, Math.min(200, 2000 / Math.max(1, holes.size())));
    }

    String html() {
        out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>");
        out.append(Svg.escaped(title)).append("</title>\n<style>\n").append(STYLE);
        out.append("</style>\n</head>\n<body>\n<main>\n");
        tag("h1", title);
        out.append("<p class=\"caution\">").append(ASSUMED).append("</p>\n");
        links();
        if (holes.isEmpty()) {
            tag("p", "There is no hole to show.");
        } else {
            summary();
        }
        notShown();
        if (!holes.isEmpty()) {
            holes();
        }
        return out.append("</main>\n</body>\n</html>\n").toString();
    }

    private void holes() {
        KindKey key = Holes.kinds(holes);
        figure(Stereonet.of(Holes.title("Stereonet", holes), holes, key, Stereonet.MOST_SYMBOLS));
        figure(PlanAndSection.of(holes));
        new AuditSection(audit).write(out, 200, tables.contains("audit.csv") ? "audit.csv" : "");
        for (int i = 0; i < Math.min(MOST_HOLES, holes.size()); i++) {
            hole(i, key);
        }
        if (holes.size() > MOST_HOLES) {
            tag("p", "The first " + MOST_HOLES + " holes are shown one by one; the tables hold all.");
        }
        out.append("<footer>Azimuths from ").append(Holes.text(Holes.north(holes)));
        out.append(
                " north; angles in degrees, lengths in metres. Line angles and offsets run clockwise looking down-hole.</footer>\n");
    }

    private void tag(String name, String text) {
        out.append('<').append(name).append('>').append(Svg.escaped(text));
        out.append("</").append(name).append(">\n");
    }

    private void figure(Picture picture) {
        out.append("<figure>\n").append(picture.svg()).append("</figure>\n");
    }

    private void links() {
        if (!tables.isEmpty()) {
            out.append("<p>Tables: ");
            for (String table : tables) {
                out.append("<a href=\"")
                        .append(table)
                        .append("\">")
                        .append(table)
                        .append("</a> ");
            }
            out.append("</p>\n");
        }
        if (holes.size() > 1) {
            out.append("<nav>Holes: ");
            for (int i = 0; i < Math.min(MOST_HOLES, holes.size()); i++) {
                out.append("<a href=\"#hole-").append(i + 1).append("\">");
                out.append(Svg.escaped(holes.get(i).log().id())).append("</a> ");
            }
            out.append("</nav>\n");
        }
    }

    private void summary() {
        HtmlTable table =
                new HtmlTable("*hole", "depth", "stations", "marks", "sound", "structures", "oriented", "warnings");
        for (OrientedHole hole : holes) {
            List<MarkPosterior> marks = hole.line().marks();
            table.row(
                    hole.log().id(),
                    metres(Holes.end(hole)),
                    String.valueOf(hole.trace().survey().stations().size()),
                    String.valueOf(marks.size()),
                    String.valueOf(marks.stream()
                            .filter(mark -> mark.verdict() == Verdict.SOUND)
                            .count()),
                    String.valueOf(hole.structures().size()),
                    String.valueOf(hole.structures().stream()
                            .filter(OrientedStructure::isOriented)
                            .count()),
                    String.valueOf(findings(hole).stream()
                            .filter(finding -> finding.level() != Finding.Level.INFO)
                            .count()));
        }
        table.write(out, 200, "");
    }

    private void notShown() {
        Set<String> shown = holes.stream().map(hole -> hole.log().id()).collect(Collectors.toSet());
        further.forEach((id, findings) -> {
            if (!shown.contains(id) && !findings.isEmpty()) {
                tag("p", id + " is not shown: " + findings.get(0).what());
            }
        });
    }

    private void hole(int index, KindKey key) {
        OrientedHole hole = holes.get(index);
        String id = hole.log().id();
        out.append("<section id=\"hole-").append(index + 1).append("\">\n");
        tag("h2", id);
        tag("p", hole.trace().collar() + "; to " + metres(Holes.end(hole)) + " m.");
        figure(LineStrip.of(hole));
        if (holes.size() > 1) {
            int most = Math.max(300, 4 * Stereonet.MOST_SYMBOLS / holes.size());
            figure(Stereonet.of("Stereonet, " + id, List.of(hole), key, Math.min(most, Stereonet.MOST_SYMBOLS)));
            figure(PlanAndSection.of(List.of(hole)));
        }
        findingsTable(findings(hole));
        structuresTable(hole);
        marksTable(hole);
        out.append("</section>\n");
    }

    private List<Finding> findings(OrientedHole hole) {
        return Stream.concat(further.getOrDefault(hole.log().id(), List.of()).stream(), hole.findings().stream())
                .sorted(Comparator.comparing(Finding::level))
                .toList();
    }

    private void findingsTable(List<Finding> findings) {
        HtmlTable table = new HtmlTable("*level", "depth", "*finding");
        findings.forEach(finding -> table.row(
                finding.level().name().toLowerCase(Locale.ROOT),
                finding.depth().isPresent() ? metres(finding.depth().getAsDouble()) : "",
                finding.what()));
        tables("Findings", table, "findings.csv");
    }

    private void structuresTable(OrientedHole hole) {
        HtmlTable table = new HtmlTable(
                "depth", "*kind", "alpha", "beta", "line angle", "sigma", "dip/dip direction", "plunge/trend", "*note");
        for (OrientedStructure structure :
                hole.structures().subList(0, Math.min(rows, hole.structures().size()))) {
            table.row(
                    metres(structure.structure().depth()),
                    structure.structure().kind(),
                    structure.structure().alpha().isPresent()
                            ? Degrees.text(structure.structure().alpha().getAsDouble())
                            : "",
                    azimuth(structure.structure().beta()),
                    structure
                            .line()
                            .filter(LinePosterior::hasMean)
                            .map(line -> Degrees.azimuthText(line.mean()))
                            .orElse(""),
                    structure.line().map(line -> sigma(line.sigma())).orElse(""),
                    structure.plane().map(ReportText::text).orElse(structure.isOriented() ? "" : "unoriented"),
                    lines(structure),
                    structure.note());
        }
        table.further(hole.structures().size() - rows);
        tables("Structures", table, "oriented.csv");
    }

    private static String lines(OrientedStructure structure) {
        return Stream.concat(
                        structure.lineation().map(ReportText::text).stream(),
                        structure.arrow().map(ReportText::text).stream())
                .collect(Collectors.joining(", "));
    }

    private void marksTable(OrientedHole hole) {
        HtmlTable table = new HtmlTable(
                "depth", "offset", "predicted", "residual", "sigma", "*verdict", "*by hand", "*left out because");
        List<MarkPosterior> marks = hole.line().marks();
        List<MarkJudgement> byHand = hole.handLine().marks();
        for (int i = 0; i < marks.size(); i++) {
            MarkPosterior mark = marks.get(i);
            table.row(
                    metres(mark.mark().depth()),
                    Degrees.azimuthText(mark.mark().offset()),
                    azimuth(mark.predicted()),
                    mark.residual().isPresent() ? Degrees.text(mark.residual().getAsDouble()) : "",
                    sigma(mark.sigma()),
                    LineStrip.text(mark.verdict()),
                    LineStrip.text(byHand.get(i).verdict()),
                    mark.mark().leftOut().orElse(""));
        }
        tables("Marks", table, "marks.csv");
    }

    private void tables(String heading, HtmlTable table, String file) {
        if (!table.isEmpty()) {
            tag("h3", heading);
            table.write(out, rows, tables.contains(file) ? file : "");
        }
    }

    private static String metres(double length) {
        return String.format(Locale.ROOT, "%.2f", length);
    }

    /** Infinite for a mark that stands for a side that does not exist. */
    private static String sigma(double sigma) {
        return Double.isInfinite(sigma) ? "" : Degrees.text(sigma);
    }

    private static String azimuth(OptionalDouble angle) {
        return angle.isPresent() ? Degrees.azimuthText(angle.getAsDouble()) : "";
    }

    private static String text(PlaneOrientation plane) {
        return Degrees.text(plane.dip()) + "/" + Degrees.azimuthText(plane.dipDirection());
    }

    private static String text(LineOrientation line) {
        return Degrees.text(line.plunge()) + "/" + Degrees.azimuthText(line.trend());
    }

    private static String text(DirectedLine arrow) {
        return "arrow " + Degrees.text(arrow.plunge()) + "/" + Degrees.azimuthText(arrow.trend());
    }
}
