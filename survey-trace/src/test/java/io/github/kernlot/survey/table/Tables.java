package io.github.kernlot.survey.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/** A folder of small tables that a test changes in one place; two holes of an invented prospect. */
final class Tables {

    private final Path folder;

    private Tables(Path folder) {
        this.folder = folder;
    }

    /** A job without a fault. */
    static Tables sound(Path folder) {
        Tables tables = new Tables(folder);
        tables.put("holes.csv", """
                hole_id,easting_m,northing_m,elevation_m,declination_deg,grid_convergence_deg,core_diameter_mm
                TN-1,1000,2000,300,4,1,
                TN-2,1100,2050,310,,,47.6
                """);
        tables.put("surveys.csv", """
                hole_id,depth_m,azimuth_deg,dip_deg
                TN-1,0,90,-60
                TN-1,30,92,-59
                TN-1,60,94,-58
                TN-2,10,270,-70
                """);
        tables.put("marks.csv", """
                hole_id,depth_m,offset_deg,offset_mm
                TN-1,10,20,
                TN-1,20,22,
                TN-1,30,21,
                TN-2,12,,-10
                TN-2,15,,-11
                """);
        tables.put("joins.csv", """
                hole_id,depth_m,fit
                TN-1,12.5,locked
                TN-1,25,doubtful
                """);
        tables.put("structures.csv", """
                hole_id,depth_m,kind,alpha_deg,beta_deg,gamma_deg,logger
                TN-1,11.25,bedding,40,213,,first
                TN-1,21,vein,55,10,30,"second, later"
                TN-2,14,joint,90,,,
                """);
        return tables;
    }

    Path folder() {
        return folder;
    }

    Tables put(String file, String text) {
        return put(file, text.getBytes(StandardCharsets.UTF_8));
    }

    Tables put(String file, byte[] bytes) {
        try {
            Files.createDirectories(folder);
            Files.write(folder.resolve(file), bytes);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return this;
    }

    Tables replace(String file, String what, String by) {
        String text = text(file);
        if (!text.contains(what)) {
            throw new IllegalArgumentException(file + " has no " + what);
        }
        return put(file, text.replace(what, by));
    }

    Tables append(String file, String line) {
        return put(file, text(file) + line + "\n");
    }

    Tables settings(String... lines) {
        return put("job.properties", String.join("\n", lines) + "\n");
    }

    Tables delete(String file) {
        try {
            Files.delete(folder.resolve(file));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return this;
    }

    String text(String file) {
        try {
            return Files.readString(folder.resolve(file));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    Job read() {
        return Job.read(folder);
    }

    /** The lines with which the job is refused; none where it is read. */
    List<String> refusal() {
        try {
            read();
            return List.of();
        } catch (TableException refused) {
            return Objects.requireNonNull(refused.getMessage()).lines().toList();
        }
    }
}
