package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.line.Fabric;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One kind of structures in the setting fabric.kinds: {@code bedding (54/118 scatter 4)} or, to be estimated, {@code bedding}. */
record FabricWord(String kind, Optional<PlaneOrientation> mean, double scatter) {

    static final String KEY = "fabric.kinds";

    private static final Pattern WORD = Pattern.compile(
            "([^(),]*[^(),\\s])\\s*(\\(\\s*([^/()\\s]+)\\s*/\\s*([^/()\\s]+)\\s+scatter\\s+([^()\\s]+)\\s*\\))?");
    private static final NumberRange AZIMUTH = NumberRange.within(0, 360);

    Optional<Fabric> fabric(double stray) {
        return mean.map(plane -> new Fabric(plane, scatter, stray));
    }

    /** The kinds of a value that was not refused. */
    static List<FabricWord> list(String value) {
        List<FabricWord> words = new ArrayList<>();
        for (String part : parts(value)) {
            parse(part).ifPresent(words::add);
        }
        return words;
    }

    /** Why a value is refused; empty where it is accepted. */
    static Optional<String> refusal(String value) {
        Set<String> kinds = new HashSet<>();
        for (String part : parts(value)) {
            Optional<FabricWord> word = parse(part);
            if (word.isEmpty()) {
                return Optional.of("\"" + part
                        + "\" is neither a kind nor one with its fabric, expected for example: bedding, joint A (54/118 scatter 4)"
                        + " with dip/dip direction and scatter in degrees");
            }
            if (!kinds.add(word.get().kind)) {
                return Optional.of("the kind " + word.get().kind + " stands twice, expected once");
            }
        }
        return Optional.empty();
    }

    private static List<String> parts(String value) {
        List<String> parts = new ArrayList<>();
        for (String part : value.strip().split(",", -1)) {
            if (!value.isBlank()) {
                parts.add(part.strip());
            }
        }
        return parts;
    }

    private static Optional<FabricWord> parse(String part) {
        Matcher word = WORD.matcher(part);
        if (!word.matches()) {
            return Optional.empty();
        }
        if (word.group(2) == null) {
            return Optional.of(new FabricWord(word.group(1), Optional.empty(), 0));
        }
        OptionalDouble dip = NumberRange.ALPHA.parse(word.group(3));
        OptionalDouble direction = AZIMUTH.parse(word.group(4));
        OptionalDouble scatter = NumberRange.SIGMA.parse(word.group(5));
        return dip.isPresent() && direction.isPresent() && scatter.isPresent()
                ? Optional.of(new FabricWord(
                        word.group(1),
                        Optional.of(PlaneOrientation.ofDipAndDirection(dip.getAsDouble(), direction.getAsDouble())),
                        scatter.getAsDouble()))
                : Optional.empty();
    }
}
