package io.github.kernlot.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The rules of the house that hold in every module. The same file stands in the tests of orientation-core and of
 * survey-trace, and a test there compares the two.
 */
final class HouseRules {
    private static final Pattern WORN_OUT = Pattern.compile(".*(Util|Utils|Helper|Helpers|Manager)");
    private static final Pattern GETTER = Pattern.compile("get([A-Z].*)?");

    private HouseRules() {}

    /**
     * Packages in tiers, the lowest first: a class may depend on its own tier and on lower ones, and packages of one
     * tier make no cycle.
     */
    static List<ArchRule> tiers(List<List<String>> tiers) {
        Stream<ArchRule> upward = Stream.iterate(0, i -> i < tiers.size() - 1, i -> i + 1)
                .map(i -> noClasses()
                        .that()
                        .resideInAnyPackage(tiers.get(i).toArray(String[]::new))
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(tiers.subList(i + 1, tiers.size()).stream()
                                .flatMap(List::stream)
                                .toArray(String[]::new))
                        .as("an arrow never runs back from " + tiers.get(i))
                        .allowEmptyShould(true));
        return upward.toList();
    }

    /** No cycle between the packages below {@code base}, itself included. */
    static ArchRule noCycles(String base) {
        return slices().matching(base + ".(**)").should().beFreeOfCycles().allowEmptyShould(true);
    }

    /** The packages below {@code base} know nothing of each other. */
    static ArchRule apart(String base) {
        return slices().matching(base + ".(*)..")
                .should()
                .notDependOnEachOther()
                .as("the rooms of " + base + " know nothing of each other")
                .allowEmptyShould(true);
    }

    /** Nothing but the packages named is used, annotations of JSpecify and the JDK apart. */
    static ArchRule knowsOnly(String... packages) {
        String[] known = Stream.concat(Stream.of("java..", "org.jspecify.."), Stream.of(packages))
                .toArray(String[]::new);
        return classes()
                .should()
                .onlyDependOnClassesThat(describe(
                        "are known to the house",
                        type -> type.getBaseComponentType().isPrimitive()
                                || JavaClass.Predicates.resideInAnyPackage(known)
                                        .test(type.getBaseComponentType())))
                .as("nothing is used but " + List.of(known))
                .allowEmptyShould(true);
    }

    /** The package {@code internal} is for its owners. */
    static ArchRule internalStaysInside(String internal, String... owners) {
        return noClasses()
                .that()
                .resideOutsideOfPackages(owners)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(internal)
                .as("only " + List.of(owners) + " use " + internal)
                .allowEmptyShould(true);
    }

    /** What a caller can see mentions types of the JDK and public types of ours only. */
    static ArchRule signaturesAreOurOwn() {
        return classes()
                .that(VISIBLE)
                .should(mentionOnlyOwnTypes())
                .as("public signatures mention neither third-party nor internal types")
                .allowEmptyShould(true);
    }

    /** A public type cannot be extended by strangers. */
    static ArchRule publicTypesAreClosed() {
        return classes()
                .that(VISIBLE)
                .should(beClosed())
                .as("public types are final, records, enums, interfaces or sealed")
                .allowEmptyShould(true);
    }

    /** {@code dip()}, not {@code getDip()}. */
    static ArchRule noGetters() {
        return methods()
                .that()
                .arePublic()
                .and(describe("begin with get", m -> GETTER.matcher(m.getName()).matches()))
                .should(overrideTheMethodOfAnother())
                .as("no method of our own begins with get")
                .allowEmptyShould(true);
    }

    /** A class is named for what it is. */
    static ArchRule noWornOutNames() {
        return noClasses()
                .should()
                .haveNameMatching(WORN_OUT.pattern())
                .as("no class is a Util, Helper or Manager")
                .allowEmptyShould(true);
    }

    /** A static field that can be assigned again is global state. */
    static ArchRule noGlobalState() {
        return fields().that()
                .areStatic()
                .should()
                .beFinal()
                .as("no static field can be assigned again")
                .allowEmptyShould(true);
    }

    /** A library does not write to the terminal, and brings no logging. */
    static ArchRule silent() {
        return noClasses()
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .dependOnClassesThat()
                .resideInAnyPackage("java.util.logging..", "org.slf4j..")
                .as("no class prints or logs")
                .allowEmptyShould(true);
    }

    private static final DescribedPredicate<JavaClass> VISIBLE =
            describe("public and not internal", type -> isVisible(type) && !isInternal(type));

    private static boolean isVisible(JavaClass type) {
        boolean open = type.getModifiers().contains(JavaModifier.PUBLIC)
                || type.getModifiers().contains(JavaModifier.PROTECTED);
        return open
                && type.getEnclosingClass().map(HouseRules::isVisible).orElse(true)
                && !type.getSimpleName().equals("package-info");
    }

    private static boolean isInternal(JavaClass type) {
        return Set.of(type.getPackageName().split("\\.")).contains("internal");
    }

    private static boolean isOwn(JavaClass type) {
        JavaClass base = type.getBaseComponentType();
        return base.isPrimitive()
                || base.getPackageName().startsWith("java.")
                || base.getPackageName().startsWith("io.github.kernlot.") && !isInternal(base);
    }

    private static ArchCondition<JavaClass> mentionOnlyOwnTypes() {
        return new ArchCondition<>("mention only own types") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                Stream<JavaClass> supertypes =
                        Stream.concat(type.getAllRawSuperclasses().stream(), type.getAllRawInterfaces().stream());
                supertypes.forEach(mentioned -> report(type.getFullName(), mentioned, type, events));
                for (JavaMember member : type.getMembers()) {
                    if (member.getModifiers().contains(JavaModifier.PUBLIC)
                            || member.getModifiers().contains(JavaModifier.PROTECTED)) {
                        member.getAllInvolvedRawTypes()
                                .forEach(mentioned -> report(member.getFullName(), mentioned, type, events));
                    }
                }
            }

            private void report(String where, JavaClass mentioned, JavaClass type, ConditionEvents events) {
                if (!isOwn(mentioned)) {
                    events.add(SimpleConditionEvent.violated(type, where + " mentions " + mentioned.getName()));
                }
            }
        };
    }

    private static ArchCondition<JavaClass> beClosed() {
        return new ArchCondition<>("be closed") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                boolean closed = type.isInterface()
                        || type.isEnum()
                        || type.getModifiers().contains(JavaModifier.FINAL)
                        || type.reflect().isSealed();
                if (!closed) {
                    events.add(SimpleConditionEvent.violated(type, type.getName() + " can be extended by anybody"));
                }
            }
        };
    }

    private static ArchCondition<JavaMethod> overrideTheMethodOfAnother() {
        return new ArchCondition<>("override the method of another") {
            @Override
            public void check(JavaMethod method, ConditionEvents events) {
                String[] parameters = method.getRawParameterTypes().stream()
                        .map(JavaClass::getName)
                        .toArray(String[]::new);
                JavaClass owner = method.getOwner();
                boolean foreign = Stream.concat(
                                owner.getAllRawSuperclasses().stream(), owner.getAllRawInterfaces().stream())
                        .filter(type -> !type.getPackageName().startsWith("io.github.kernlot"))
                        .anyMatch(type ->
                                type.tryGetMethod(method.getName(), parameters).isPresent());
                if (!foreign) {
                    events.add(SimpleConditionEvent.violated(method, method.getFullName() + " is a getter"));
                }
            }
        };
    }
}
