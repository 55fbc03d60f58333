package io.github.kernlot.house;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules of the house hold here, and each of them is broken by the classes of the package {@code bad}. */
class HouseRulesTest {
    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("io.github.kernlot");
    private static final JavaClasses BAD = new ClassFileImporter().importPackages("io.github.kernlot.house.bad");

    static Stream<ArchRule> rules() {
        return rules("io.github.kernlot.orientation", "io.github.kernlot.survey", "io.github.kernlot.orientation..")
                .stream();
    }

    static Stream<ArchRule> rulesForBad() {
        return rules(
                "io.github.kernlot.house.bad",
                "io.github.kernlot.house.bad.survey",
                "io.github.kernlot.house.bad.line..")
                .stream();
    }

    private static List<ArchRule> rules(String base, String survey, String inside) {
        List<ArchRule> rules = new ArrayList<>(HouseRules.tiers(List.of(
                List.of(base + ".internal.."),
                List.of(base),
                List.of(base + ".sphere.."),
                List.of(base + ".line", base + ".solve..", base + ".reading..", base + ".rock..", base + ".bulk.."),
                List.of(base + ".line.*.."),
                List.of(base + ".uncertainty.."),
                List.of(survey + ".."))));
        rules.add(HouseRules.noCycles(base));
        rules.add(HouseRules.apart(base + ".line"));
        rules.add(HouseRules.knowsOnly(base + "..", "org.ejml..", "org.apache.commons.."));
        rules.add(HouseRules.internalStaysInside(base + ".internal..", inside));
        rules.add(HouseRules.signaturesAreOurOwn());
        rules.add(HouseRules.publicTypesAreClosed());
        rules.add(HouseRules.noGetters());
        rules.add(HouseRules.noWornOutNames());
        rules.add(HouseRules.noGlobalState());
        rules.add(HouseRules.silent());
        return rules;
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theRuleHolds(ArchRule rule) {
        rule.check(OURS);
    }

    @ParameterizedTest
    @MethodSource("rulesForBad")
    void theRuleCanFail(ArchRule rule) {
        assertTrue(rule.evaluate(BAD).hasViolation(), rule.getDescription());
    }

    @Test
    void thereAreClassesToJudge() {
        assertFalse(OURS.isEmpty());
    }

    @Test
    void whatIsBlamelessIsNotBlamed() {
        List<String> blamed = rulesForBad()
                .flatMap(rule -> blamedBy(rule).stream())
                .filter(detail -> detail.contains("Blameless"))
                .toList();
        assertTrue(blamed.isEmpty(), blamed::toString);
    }

    @Test
    void whatNoCallerSeesMayMentionOthers() {
        List<String> blamed = blamedBy(HouseRules.signaturesAreOurOwn());
        assertFalse(blamed.stream().anyMatch(detail -> detail.contains("hiddenFromCallers")), blamed::toString);
        assertTrue(blamed.stream().anyMatch(detail -> detail.contains("foreign")), blamed::toString);
        assertTrue(blamed.stream().anyMatch(detail -> detail.contains("kernel")), blamed::toString);
    }

    @Test
    void theLineKnowsNoneOfItsRooms() {
        List<String> blamed = rulesForBad()
                .flatMap(rule -> blamedBy(rule).stream())
                .filter(detail -> detail.contains("BadLineHelper.guess()") && detail.contains("line.fit.BadGuess"))
                .toList();
        assertFalse(blamed.isEmpty());
    }

    private static List<String> blamedBy(ArchRule rule) {
        return rule.evaluate(BAD).getFailureReport().getDetails();
    }
}
