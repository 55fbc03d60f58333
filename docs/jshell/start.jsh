import io.github.kernlot.orientation.*;
import io.github.kernlot.orientation.bulk.*;
import io.github.kernlot.orientation.line.*;
import io.github.kernlot.orientation.line.audit.*;
import io.github.kernlot.orientation.line.fit.*;
import io.github.kernlot.orientation.line.runs.*;
import io.github.kernlot.orientation.reading.*;
import io.github.kernlot.orientation.rock.*;
import io.github.kernlot.orientation.solve.*;
import io.github.kernlot.orientation.sphere.*;
import io.github.kernlot.orientation.sphere.distribution.*;
import io.github.kernlot.orientation.sphere.repeat.*;
import io.github.kernlot.survey.*;
import io.github.kernlot.survey.check.*;
import io.github.kernlot.survey.combine.*;
import io.github.kernlot.survey.hole.*;
import io.github.kernlot.survey.north.*;
import io.github.kernlot.survey.picture.*;
import io.github.kernlot.survey.place.*;
import io.github.kernlot.survey.sensor.*;
import io.github.kernlot.survey.table.*;
import io.github.kernlot.survey.uncertainty.*;
import java.nio.file.Path;
import java.time.LocalDate;

Job read(String folder) { return Job.read(Path.of(folder)); }
