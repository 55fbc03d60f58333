import io.github.kernlot.survey.hole.OrientedHole;
import io.github.kernlot.survey.picture.ReportPage;
import io.github.kernlot.survey.table.Job;
import io.github.kernlot.survey.table.ResultTables;
import io.github.kernlot.survey.table.TableException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Reads a folder of tables, orients every hole in it, and writes tables and pictures: an example of embedding the library. */
public final class OrientHole {

    private OrientHole() {}

    public static void main(String[] arguments) {
        try {
            Path data = Path.of("data");
            Path out = Path.of("out");
            for (int i = 0; i < arguments.length; i += 2) {
                String value = i + 1 < arguments.length ? arguments[i + 1] : "";
                switch (arguments[i] + (value.isEmpty() ? " (without a value)" : "")) {
                    case "--data", "--default-data" -> data = Path.of(value);
                    case "--out", "--default-out" -> out = Path.of(value);
                    default -> refuse("usage: run.sh [--data DIR] [--out DIR]; found " + arguments[i]);
                }
            }
            orient(data, out);
        } catch (TableException refused) {
            refuse(refused.getMessage());
        } catch (InvalidPathException unnameable) {
            refuse(unnameable.getInput() + ": not a path in this locale, expected LC_ALL to name a UTF-8 locale");
        } catch (IOException failed) {
            refuse("cannot write: " + failed.getMessage());
        }
    }

    private static void orient(Path data, Path out) throws IOException {
        Job job = Job.read(data);
        job.notices().forEach(notice -> System.out.println("note: " + notice));
        List<OrientedHole> holes = job.orient();
        holes.forEach(System.out::println);
        ResultTables tables = ResultTables.of(job, holes);
        tables.write(out);
        if (holes.isEmpty()) {
            Files.deleteIfExists(out.resolve("index.html"));
            refuse("no hole is left to be oriented; " + out.resolve("findings.csv") + " tells why each was set aside");
        }
        if (!job.setAside().isEmpty()) {
            System.out.println(job.setAside().size() + " rows set aside, listed in " + out.resolve("set-aside.csv"));
        }
        ReportPage.of(holes).withFindings(job.findings()).withAudit(tables.audit()).write(out);
        System.out.println("tables and pictures: " + out.resolve("index.html").toAbsolutePath().normalize());
    }

    private static void refuse(String why) {
        System.err.println(why);
        System.exit(2);
    }
}
