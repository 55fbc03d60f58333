package io.github.kernlot.survey.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** The drawings of docs/conventions.md. */
final class ConventionPictures {

    static final Path FOLDER =
            Path.of("../docs/pictures/conventions").toAbsolutePath().normalize();

    private ConventionPictures() {}

    /** Each drawing by the name of its file. */
    static Map<String, Supplier<Sheet>> all() {
        Map<String, Supplier<Sheet>> pictures = new LinkedHashMap<>();
        pictures.put("ground-frame", HolePictures::groundFrame);
        pictures.put("downward-hole", HolePictures::downwardHole);
        pictures.put("upward-hole", HolePictures::upwardHole);
        pictures.put("sides", HolePictures::sides);
        pictures.put("clockwise", HolePictures::clockwise);
        pictures.put("clockwise-upwards", HolePictures::clockwiseUpwards);
        pictures.put("line-from-north", HolePictures::lineFromNorth);
        pictures.put("line-angle", LinePictures::lineAngle);
        pictures.put("mark-offset", LinePictures::markOffset);
        pictures.put("arrows", LinePictures::arrows);
        pictures.put("scribe-turn", LinePictures::scribeTurn);
        pictures.put("alpha", PlanePictures::alpha);
        pictures.put("beta", PlanePictures::beta);
        pictures.put("alpha-90", PlanePictures::alpha90);
        pictures.put("alpha-0", PlanePictures::alpha0);
        pictures.put("beta-maps", PlanePictures::betaMaps);
        pictures.put("gamma", CorePictures::gamma);
        pictures.put("axis-angle", CorePictures::axisAngle);
        pictures.put("directed-line", CorePictures::directedLine);
        pictures.put("facing", CorePictures::facing);
        pictures.put("dip", GroundPictures::dip);
        pictures.put("strikes", GroundPictures::strikes);
        pictures.put("pole", GroundPictures::pole);
        pictures.put("plunge", GroundPictures::plunge);
        pictures.put("rake", RakePictures::rake);
        pictures.put("slip", RakePictures::slip);
        pictures.put("rotation", GroundPictures::rotation);
        pictures.put("norths", GroundPictures::norths);
        return pictures;
    }

    /** Writes the drawings to a folder. */
    static void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (Map.Entry<String, Supplier<Sheet>> picture : all().entrySet()) {
            Files.writeString(
                    folder.resolve(picture.getKey() + ".svg"),
                    picture.getValue().get().finish());
        }
    }
}
