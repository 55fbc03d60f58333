package io.github.kernlot.survey.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Which symbol stands for which kind: the more frequent a kind, the more its symbol stands out. */
final class KindKey {

    /** So many kinds have a symbol of their own. */
    static final int OWN = 16;

    static final String OTHERS = "other kinds";

    /** A shape in a colour. */
    record Symbol(Glyph glyph, String colour) {}

    private static final Symbol OF_OTHERS = new Symbol(Glyph.DISC, Ink.PENCIL);

    private final Map<String, Symbol> symbols = new HashMap<>();
    private final List<String> order = new ArrayList<>();
    private final boolean hasOthers;

    private KindKey(Map<String, Integer> counts) {
        List<String> kinds = counts.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .toList();
        for (String kind : kinds.subList(0, Math.min(OWN, kinds.size()))) {
            int place = order.size();
            Glyph glyph = Glyph.OF_KINDS.get(place % Glyph.OF_KINDS.size());
            symbols.put(kind, new Symbol(glyph, Ink.COLOURS.get(place % Ink.COLOURS.size())));
            order.add(kind);
        }
        hasOthers = kinds.size() > OWN;
    }

    static KindKey of(Stream<String> kinds) {
        Map<String, Integer> counts = new HashMap<>();
        kinds.forEach(kind -> counts.merge(kind, 1, Integer::sum));
        return new KindKey(counts);
    }

    /** The kinds in the order of a legend, the name for all further ones last. */
    List<String> names() {
        List<String> names = new ArrayList<>(order);
        if (hasOthers) {
            names.add(OTHERS);
        }
        return names;
    }

    /** The name under which a kind is shown. */
    String nameOf(String kind) {
        return symbols.containsKey(kind) ? kind : OTHERS;
    }

    Symbol symbol(String name) {
        return symbols.getOrDefault(name, OF_OTHERS);
    }
}
