package org.hearthrule.checklist;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;

class MistakeReportTest {

    private static String report(Profile law, Requirement asked) {
        return MistakeReport.of(law, asked, Wording.english());
    }

    @Test
    void saysWhichRuleOfWhichFileAndLeavesRoomForTheLaw() throws Exception {
        Profile law = Packaged.profiles().find("oh");
        Requirement asked = law.usualPathway().asks().stream().filter(one -> one.title().equals("Yearly notice")).findFirst().orElseThrow();

        String report = report(law, asked);

        assertThat(report.replaceAll("\\s+", " ")).contains(asked.id(), law.contentHash(), "Yearly notice", "by August 30", asked.cite().words(),
                "November 25, 2026", asked.cite().source().address());
        assertThat(report).containsSubsequence("What the law says, in its own words:\n\n\n", "Where you read it", "What should change:\n\n\n");
    }

    @Test
    void everyRuleHasOneOfItsOwn() throws Exception {
        for (Profile law : Packaged.all()) {
            for (Pathway pathway : law.pathways()) {
                for (Requirement asked : pathway.asks()) {
                    assertThat(report(law, asked).replaceAll("\\s+", " ")).contains(asked.id(), asked.title(), asked.cite().words());
                    assertThat(MistakeReport.fileName(asked)).matches("mistake-[a-z0-9-]+\\.txt");
                }
            }
        }
    }

    /**
     * The text is meant to be sent to strangers. A record book within its reach would one day put a child's name or a
     * birth date into it, and nobody would see it before it is sent.
     */
    @Test
    void aFamilysRecordsAreOutOfItsReach() {
        JavaClasses ours = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("org.hearthrule");

        noClasses().that().haveSimpleName("MistakeReport").should().dependOnClassesThat()
                .resideInAnyPackage("org.hearthrule.records..", "org.hearthrule.rules..").check(ours);
    }
}
