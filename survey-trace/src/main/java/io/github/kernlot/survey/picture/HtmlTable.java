package io.github.kernlot.survey.picture;

import java.util.ArrayList;
import java.util.List;

/** A table of a report page that scrolls in its own box. */
final class HtmlTable {

    private final List<String> headings;
    private final List<List<String>> rows = new ArrayList<>();
    private int notListed;

    /** A table whose columns of words are those with an asterisk before their heading. */
    HtmlTable(String... headings) {
        this.headings = List.of(headings);
    }

    void row(String... cells) {
        rows.add(List.of(cells));
    }

    /** Counts rows that were not even listed here. */
    void further(int count) {
        notListed += Math.max(0, count);
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Writes no more rows than the most; the file, if it has a name, holds them all. */
    void write(StringBuilder out, int most, String file) {
        out.append("<div class=\"box\" tabindex=\"0\"><table>\n<thead><tr>");
        for (String heading : headings) {
            boolean words = heading.startsWith("*");
            cell(out, "th", words, words ? heading.substring(1) : heading);
        }
        out.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : rows.subList(0, Math.min(most, rows.size()))) {
            out.append("<tr>");
            for (int i = 0; i < row.size(); i++) {
                cell(out, "td", headings.get(i).startsWith("*"), row.get(i));
            }
            out.append("</tr>\n");
        }
        out.append("</tbody>\n</table></div>\n");
        int all = rows.size() + notListed;
        if (all > most) {
            out.append("<p class=\"cut\">The first ")
                    .append(most)
                    .append(" of ")
                    .append(all)
                    .append(" rows");
            out.append(file.isEmpty() ? "." : "; <a href=\"" + file + "\">" + file + "</a> holds all.");
            out.append("</p>\n");
        }
    }

    private static void cell(StringBuilder out, String name, boolean words, String text) {
        out.append('<').append(name).append(words ? " class=\"w\">" : ">");
        out.append(Svg.escaped(text)).append("</").append(name).append('>');
    }
}
