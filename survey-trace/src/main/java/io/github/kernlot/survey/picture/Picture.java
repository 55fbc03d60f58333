package io.github.kernlot.survey.picture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A finished picture as SVG text, complete in itself: it refers to no other file and holds no identifiers that could clash. */
public final class Picture {

    private final String title;
    private final String svg;

    Picture(String title, String svg) {
        this.title = title;
        this.svg = svg;
    }

    /**
     * What the picture shows.
     *
     * @return the title that is written in it
     */
    public String title() {
        return title;
    }

    /**
     * The picture.
     *
     * @return an svg element that can be saved as it is or put into an HTML page
     */
    public String svg() {
        return svg;
    }

    /**
     * Writes the picture in UTF-8, over what the file held before.
     *
     * @param file where to
     * @throws IOException if the file cannot be written
     */
    public void save(Path file) throws IOException {
        Files.writeString(file, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg);
    }

    /** The title and the size of the text. */
    @Override
    public String toString() {
        return title + " (SVG, " + svg.length() + " characters)";
    }
}
