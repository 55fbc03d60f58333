package io.github.kernlot.survey.picture;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** A picture read back: what is drawn in it and where. */
final class Drawn {

    private static final Pattern PART = Pattern.compile("([MmLlhvaz])([^MmLlhvaz]*)");

    private final Document document;

    private Drawn(Document document) {
        this.document = document;
    }

    static Drawn of(Picture picture) {
        return of(picture.svg());
    }

    static Drawn of(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return new Drawn(builder.parse(new InputSource(new StringReader(svg))));
        } catch (Exception malformed) {
            throw new AssertionError("not well-formed: " + malformed.getMessage(), malformed);
        }
    }

    /** All elements of a name. */
    List<Element> all(String name) {
        return list(document.getElementsByTagName(name));
    }

    private static List<Element> list(org.w3c.dom.NodeList nodes) {
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> (Element) nodes.item(i))
                .toList();
    }

    /** The paths in the groups of a class. */
    List<Element> pathsIn(String className) {
        return all("g").stream()
                .filter(group -> group.getAttribute("class").equals(className))
                .flatMap(group -> list(group.getElementsByTagName("path")).stream())
                .toList();
    }

    /** Where the symbols in the groups of a class stand. */
    List<Point> symbols(String className) {
        return pathsIn(className).stream()
                .map(path -> points(path.getAttribute("d")).get(0))
                .toList();
    }

    List<String> texts() {
        return all("text").stream().map(Element::getTextContent).toList();
    }

    String description() {
        return all("desc").get(0).getTextContent();
    }

    /** The points of a path, one after the other. */
    static List<Point> points(String path) {
        List<Point> points = new ArrayList<>();
        Matcher part = PART.matcher(path);
        double x = 0;
        double y = 0;
        while (part.find()) {
            double[] numbers = Stream.of(part.group(2).trim().split("[ ,]+"))
                    .filter(text -> !text.isEmpty())
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            switch (part.group(1)) {
                case "M", "L" -> {
                    x = numbers[0];
                    y = numbers[1];
                }
                case "m", "l" -> {
                    x += numbers[0];
                    y += numbers[1];
                }
                case "h" -> x += numbers[0];
                case "v" -> y += numbers[0];
                case "a" -> {
                    x += numbers[5];
                    y += numbers[6];
                }
                default -> {
                    // z moves back; what follows it here begins anew
                }
            }
            points.add(new Point(x, y));
        }
        return points;
    }

    /** Says that the picture is titled, described, wholly inside its frame and without a number that is none. */
    void assertSound() {
        Element svg = document.getDocumentElement();
        assertTrue(svg.getAttribute("role").equals("img")
                && !svg.getAttribute("aria-label").isBlank());
        assertFalse(all("title").get(0).getTextContent().isBlank());
        assertFalse(description().isBlank());
        String[] box = svg.getAttribute("viewBox").split(" ");
        double width = Double.parseDouble(box[2]);
        double height = Double.parseDouble(box[3]);
        for (Element path : all("path")) {
            for (Point point : points(path.getAttribute("d"))) {
                assertInside(path.getAttribute("d"), point, width, height);
            }
        }
        for (Element circle : all("circle")) {
            double x = number(circle, "cx");
            double y = number(circle, "cy");
            double r = number(circle, "r");
            assertInside("circle", new Point(x - r, y - r), width, height);
            assertInside("circle", new Point(x + r, y + r), width, height);
        }
        for (Element rect : all("rect")) {
            double x = rect.hasAttribute("x") ? number(rect, "x") : 0;
            double y = rect.hasAttribute("y") ? number(rect, "y") : 0;
            assertInside("rect", new Point(x, y), width, height);
            assertInside("rect", new Point(x + number(rect, "width"), y + number(rect, "height")), width, height);
        }
        for (Element text : all("text")) {
            assertInside(text.getTextContent(), new Point(number(text, "x"), number(text, "y")), width, height);
        }
        assertFalse(texts().stream().anyMatch(text -> text.contains("NaN") || text.contains("Infinity")));
        assertFalse(document.getDocumentElement().getTextContent().contains("NaN"));
        assertFalse(svg.hasAttribute("id") || all("g").stream().anyMatch(group -> group.hasAttribute("id")));
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    private static void assertInside(String what, Point point, double width, double height) {
        assertTrue(
                point.x() >= -0.01 && point.x() <= width + 0.01 && point.y() >= -0.01 && point.y() <= height + 0.01,
                () -> what + " at " + point + " lies outside " + width + " x " + height);
    }
}
