package io.github.kernlot.survey.picture;

import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.hole.AuditEntry;
import io.github.kernlot.survey.hole.OrientedHole;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * A page that shows oriented holes: pictures and tables, first of all holes together, then of each. It is one HTML file that needs
 * no network and no script. Long tables are cut, with a word of where the rest is.
 */
public final class ReportPage {

    private static final List<String> TABLES = List.of(
            "oriented.csv", "marks.csv", "trace.csv", "findings.csv", "audit.csv", "budget.csv", "set-aside.csv");

    private static final int LONGEST_NAME = 80;

    private final String title;
    private final List<OrientedHole> holes;
    private final Map<String, List<Finding>> further;

    private final List<AuditEntry> audit;

    private ReportPage(
            String title, List<OrientedHole> holes, Map<String, List<Finding>> further, List<AuditEntry> audit) {
        this.title = title;
        this.audit = List.copyOf(audit);
        this.holes = List.copyOf(holes);
        this.further = new LinkedHashMap<>(further);
    }

    /**
     * The page of holes. Without a hole it says so, and shows the findings that tell why.
     *
     * @param holes all with azimuths from one north; may be none
     * @return the page
     * @throws IllegalArgumentException if the azimuths of the holes are counted from different norths
     */
    public static ReportPage of(List<OrientedHole> holes) {
        if (!holes.isEmpty()) {
            Holes.north(holes);
        }
        String title = holes.isEmpty() ? "Oriented core" : Holes.title("Oriented core", holes);
        return new ReportPage(title, holes, Map.of(), List.of());
    }

    /**
     * The same page under another title.
     *
     * @param words the title
     * @return the page
     */
    public ReportPage titled(String words) {
        return new ReportPage(words, holes, further, audit);
    }

    /**
     * The same page with further findings, such as those of reading the tables, before those of the holes themselves. A hole of which
     * there are findings and nothing else, because it was set aside, is named with the first of them.
     *
     * @param byHole findings by the name of the hole, in the order in which they are to be shown
     * @return the page
     */
    public ReportPage withFindings(Map<String, List<Finding>> byHole) {
        return new ReportPage(title, holes, new LinkedHashMap<>(byHole), audit);
    }

    /**
     * The same page with an audit of the marks by those who made them.
     *
     * @param entries the audit, as {@link AuditEntry#all} gives it
     * @return the page
     */
    public ReportPage withAudit(List<AuditEntry> entries) {
        return new ReportPage(title, holes, further, entries);
    }

    /**
     * The page by itself, without links to tables.
     *
     * @return an HTML document
     */
    public String html() {
        return new ReportText(title, holes, further, audit, List.of()).html();
    }

    /**
     * Writes the page as {@code index.html} and each of its pictures as an SVG file ({@code stereonet.svg},
     * {@code plan-and-section.svg} and, for each hole, {@code line-ID.svg}, {@code stereonet-ID.svg},
     * {@code plan-and-section-ID.svg}, ID with other characters than letters, digits, dot and hyphen written as underscores). The
     * page links the tables of results that lie in the folder already.
     *
     * @param folder where to; it is made where it does not exist
     * @throws IOException if a file cannot be written
     */
    public void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        List<String> tables = TABLES.stream()
                .filter(table -> Files.exists(folder.resolve(table)))
                .toList();
        Files.writeString(
                folder.resolve("index.html"),
                new ReportText(title, holes, further, audit, tables).html(),
                StandardCharsets.UTF_8);
        if (holes.isEmpty()) {
            return;
        }
        KindKey key = Holes.kinds(holes);
        stereonet(holes, key).save(folder.resolve("stereonet.svg"));
        PlanAndSection.of(holes).save(folder.resolve("plan-and-section.svg"));
        Set<String> names = new HashSet<>();
        for (OrientedHole hole : holes) {
            String name = fileName(hole, names);
            List<OrientedHole> one = List.of(hole);
            LineStrip.of(hole).save(folder.resolve("line-" + name + ".svg"));
            stereonet(one, key).save(folder.resolve("stereonet-" + name + ".svg"));
            PlanAndSection.of(one).save(folder.resolve("plan-and-section-" + name + ".svg"));
        }
    }

    private static Picture stereonet(List<OrientedHole> shown, KindKey key) {
        return Stereonet.of(Holes.title("Stereonet", shown), shown, key, Stereonet.MOST_SYMBOLS);
    }

    /** A name that no file system minds, and that no hole before has, in whatever case. */
    private static String fileName(OrientedHole hole, Set<String> names) {
        String safe = hole.log().id().replaceAll("[^A-Za-z0-9.-]", "_");
        String plain = safe.substring(0, Math.min(LONGEST_NAME, safe.length()));
        String name = plain;
        for (int i = 2; !names.add(name.toLowerCase(Locale.ROOT)); i++) {
            name = plain + "_" + i;
        }
        return name;
    }

    /** The title and the number of holes. */
    @Override
    public String toString() {
        return title + ": a page of " + holes.size() + (holes.size() == 1 ? " hole" : " holes");
    }
}
