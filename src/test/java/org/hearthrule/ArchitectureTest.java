package org.hearthrule;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;

/** Keeps the house as it is drawn: who may know whom, and what nobody may do. */
@AnalyzeClasses(packages = "org.hearthrule", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String ROOT = "org.hearthrule.";

    /** Each package and those of the project that it may use. */
    private static final Map<String, Set<String>> MAY_USE = new TreeMap<>(Map.ofEntries(
            entry("input", Set.of("terms")),
            entry("terms", Set.of("input")),
            entry("law", Set.of("input", "terms")),
            entry("records", Set.of("input", "terms")),
            entry("pictures", Set.of("input", "terms", "records")),
            entry("tables", Set.of("input", "terms", "records")),
            entry("suggest", Set.of("input", "terms")),
            entry("rules", Set.of("input", "terms", "law", "records")),
            entry("checklist", Set.of("input", "terms", "law", "records", "rules")),
            entry("papers", Set.of("input", "terms", "law", "records", "pictures", "tables", "rules", "checklist")),
            entry("page", Set.of("input", "terms", "law", "records", "pictures", "tables", "suggest", "rules", "checklist",
                    "papers")),
            entry("cli", Set.of("input", "terms", "law", "records", "pictures", "tables", "suggest", "rules", "checklist",
                    "papers", "page"))));

    /**
     * An import against the arrows works on the day it is written, and silently makes two packages one: the law could
     * no longer be read, or a record book checked, without the other.
     */
    @ArchTest
    static void eachPackageUsesOnlyThoseToItsLeft(JavaClasses ours) {
        SoftAssertions all = new SoftAssertions();
        MAY_USE.forEach((name, mayUse) -> {
            String[] forbidden = MAY_USE.keySet().stream().filter(other -> !other.equals(name) && !mayUse.contains(other))
                    .map(other -> ROOT + other + "..").toArray(String[]::new);
            // the rightmost package may use all; a package that is not there yet uses none
            if (forbidden.length > 0) {
                ArchRule arrows = noClasses().that().resideInAPackage(ROOT + name + "..")
                        .should().dependOnClassesThat().resideInAnyPackage(forbidden).allowEmptyShould(true);
                all.assertThatCode(() -> arrows.check(ours)).as(name).doesNotThrowAnyException();
            }
        });
        all.assertAll();
    }

    /** A package this test has never heard of would be kept by no arrow at all. */
    @ArchTest
    static void everyPackageHasItsPlace(JavaClasses ours) {
        Set<String> found = ours.stream().map(JavaClass::getPackageName).filter(name -> name.startsWith(ROOT))
                .map(name -> name.substring(ROOT.length()).split("\\.")[0]).collect(Collectors.toCollection(TreeSet::new));

        assertThat(MAY_USE.keySet()).containsAll(found);
        assertThat(found).contains("input", "terms", "law", "records", "rules", "cli");
    }

    /** Two packages that use each other can be changed, tested and understood only together; nothing else says so. */
    @ArchTest
    static final ArchRule PACKAGES_FORM_NO_CIRCLE =
            slices().matching("org.hearthrule.(*)..").should().beFreeOfCycles();

    /**
     * The rule engine's types in another package would tie the format of profiles, the record book or the sentences to
     * the engine, and a change of engine to a change of everything.
     */
    @ArchTest
    static final ArchRule DROOLS_STAYS_IN_RULES = noClasses().that().resideOutsideOfPackage("org.hearthrule.rules..")
            .should().dependOnClassesThat().resideInAnyPackage("org.drools..", "org.kie..");

    /**
     * Text of a profile that reaches a compiler of rules or of Java is a way to run any code (CVE-2013-6468); it would
     * work for every honest profile and be noticed with the first dishonest one. (What the build makes of rules/ lies
     * one package below, and carries an annotation of the compiler.)
     */
    @ArchTest
    static final ArchRule NOTHING_COMPILES_TEXT = noClasses().that().resideOutsideOfPackage("org.hearthrule.rules.*")
            .should().dependOnClassesThat().resideInAnyPackage("org.kie.api.builder..", "org.kie.internal.builder..",
                    "org.kie.internal.utils..", "org.drools.compiler..", "org.drools.drl..", "org.drools.mvel..",
                    "org.drools.template..", "org.mvel2..", "javax.script..", "javax.tools..", "groovy..");

    /** A family's data must stay on its machine: a look-up of something, anywhere, would tell somebody about it. */
    @ArchTest
    static final ArchRule NOTHING_CALLS_OUT = noClasses()
            .should().dependOnClassesThat().resideInAnyPackage("java.net.http..", "javax.net..", "java.rmi..", "javax.mail..")
            .orShould().dependOnClassesThat().haveNameMatching("java\\.net\\.(Socket|DatagramSocket|MulticastSocket"
                    + "|HttpURLConnection|URLConnection)")
            .orShould().dependOnClassesThat().haveNameMatching("java\\.nio\\.channels\\.(Asynchronous)?(Socket|Datagram).*")
            .orShould().callMethod(java.net.URL.class, "openStream")
            .orShould().callMethod(java.net.URL.class, "getContent");

    /**
     * An address opened by the class library goes out to the network when it begins with http. One class may do it: it
     * lists the profiles that lie in the program's own jar.
     */
    @ArchTest
    static final ArchRule ADDRESSES_ARE_NOT_OPENED = noClasses()
            .that().doNotHaveFullyQualifiedName("org.hearthrule.law.ProfileFolder$OnClassPath")
            .should().callMethod(java.net.URL.class, "openConnection")
            .orShould().dependOnClassesThat().haveFullyQualifiedName("java.net.JarURLConnection");

    /** Whoever listens on the network can be asked from outside; only the local page does, on its own loopback address. */
    @ArchTest
    static final ArchRule ONLY_THE_PAGE_LISTENS = noClasses().that().resideOutsideOfPackage("org.hearthrule.page..")
            .should().dependOnClassesThat().resideInAPackage("com.sun.net.httpserver..")
            .orShould().dependOnClassesThat().haveNameMatching("java\\.net\\.(ServerSocket|InetAddress)")
            .orShould().dependOnClassesThat().haveNameMatching("java\\.nio\\.channels\\.(Asynchronous)?ServerSocket.*");

    /** A System.exit deep inside ends the page, a bulk check or a test in the middle, without a word and without closing files. */
    @ArchTest
    static final ArchRule ONLY_THE_ENTRANCE_ENDS_THE_PROGRAM = noClasses()
            .that().doNotHaveFullyQualifiedName("org.hearthrule.cli.Hearthrule")
            .should().callMethod(System.class, "exit", int.class)
            .orShould().callMethod(Runtime.class, "exit", int.class)
            .orShould().callMethod(Runtime.class, "halt", int.class);

    /**
     * What is written past the command line's writers spoils JSON and calendar files sent down a pipe, and what a
     * logger writes may hold a child's name.
     */
    @ArchTest
    static final ArchRule ONLY_THE_COMMAND_LINE_WRITES = noClasses().that().resideOutsideOfPackage("org.hearthrule.cli..")
            .should().accessField(System.class, "out")
            .orShould().accessField(System.class, "err")
            .orShould().callMethod(Throwable.class, "printStackTrace")
            .orShould().dependOnClassesThat(resideInAPackage("java.util.logging..").or(resideInAPackage("org.slf4j..")));
}
