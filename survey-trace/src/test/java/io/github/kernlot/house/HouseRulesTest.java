package io.github.kernlot.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules of the house hold here. That each can fail is shown beside the same rules in orientation-core. */
class HouseRulesTest {
    private static final String SURVEY = "io.github.kernlot.survey";
    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(SURVEY);
    private static final ArchRule KNOWN = HouseRules.knowsOnly(
            SURVEY + "..", "io.github.kernlot.orientation..", "de.siegmar..", "org.ejml..", "org.apache.commons..");

    static Stream<ArchRule> rules() {
        return Stream.of(
                KNOWN,
                HouseRules.noCycles("io.github.kernlot"),
                HouseRules.signaturesAreOurOwn(),
                HouseRules.publicTypesAreClosed(),
                HouseRules.noGetters(),
                HouseRules.noWornOutNames(),
                HouseRules.noGlobalState(),
                HouseRules.silent());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theRuleHolds(ArchRule rule) {
        rule.check(OURS);
    }

    @Test
    void aStrangerIsSeen() {
        JavaClasses ofThisTest = new ClassFileImporter().importPackages("io.github.kernlot.house");
        assertTrue(KNOWN.evaluate(ofThisTest).hasViolation());
    }

    @Test
    void thereAreClassesToJudge() {
        assertFalse(OURS.isEmpty());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "java/io/github/kernlot/house/HouseRules.java",
                "java/io/github/kernlot/house/EvenDraws.java",
                "java/io/github/kernlot/house/RepeatableDraws.java",
                "resources/META-INF/services/net.jqwik.api.configurators.ArbitraryConfigurator",
                "resources/META-INF/services/net.jqwik.api.lifecycle.LifecycleHook",
                "resources/junit-platform.properties"
            })
    void theHouseIsThatOfOrientationCore(String file) throws IOException {
        Path ours = Path.of("src", "test").resolve(file);
        Path sibling = Path.of("..", "orientation-core").resolve(ours);
        assertEquals(Files.readString(sibling), Files.readString(ours));
    }
}
