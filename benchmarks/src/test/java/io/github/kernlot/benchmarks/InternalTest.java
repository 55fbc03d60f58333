package io.github.kernlot.benchmarks;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;

/** Benchmarks measure what users call. */
class InternalTest {
    private static final ArchRule RULE = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAPackage("io.github.kernlot..internal..")
            .allowEmptyShould(true);

    @Test
    void noBenchmarkUsesAnInternalPackage() {
        JavaClasses benchmarks = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("io.github.kernlot.benchmarks");
        assertFalse(benchmarks.isEmpty());
        RULE.check(benchmarks);
    }

    @Test
    void theRuleCanFail() {
        JavaClasses orientation = new ClassFileImporter().importPackages("io.github.kernlot.orientation");
        assertTrue(RULE.evaluate(orientation).hasViolation());
    }
}
