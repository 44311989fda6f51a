package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Profile;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.junit.jupiter.api.Test;

/** An answer from the one whom a line names settles the line's open question, and nothing else. */
class OpenQuestionTest {

    private static final String TEST_LIST = "us-pa/home-education-program/test-list";
    private static final String FIRST_NOTICE = "us-vt/home-study/notice";

    @Test
    void withoutAnAnswerTheQuestionStaysOpen() throws Exception {
        // given a child in grade 5, when the tests of 24 P.S. § 13-1327.1(e)(1) are asked
        Book book = book("us-pa", "home-education-program", "2024-08-26", "5", "");

        // when
        Finding line = line(book, "us-pa", TEST_LIST);

        // then
        assertThat(line.status()).isEqualTo(Status.UNCLEAR);
    }

    @Test
    void anAnswerSettlesAQuestionOfALine() throws Exception {
        // given
        Book book = book("us-pa", "home-education-program", "2024-08-26", "5", answer(TEST_LIST, "The test is on the list."));

        // when
        Finding line = line(book, "us-pa", TEST_LIST);

        // then
        assertThat(line.status()).isEqualTo(Status.MET);
        assertThat(line.why()).anyMatch(sentence -> sentence.contains("The test is on the list."));
    }

    @Test
    void anAnswerToAQuestionIsNoPaper() throws Exception {
        // given a first notice (16 V.S.A. § 166b(a)) of which the book holds nothing
        Book book = book("us-vt", "home-study", "2024-08-26", "5", answer(FIRST_NOTICE, "State holidays are left out."));

        // when
        Finding line = line(book, "us-vt", FIRST_NOTICE);

        // then
        assertThat(line.status()).isNotEqualTo(Status.MET);
    }

    private static String answer(String doubt, String text) {
        return "{\"doubt\":\"" + doubt + "\",\"answer\":\"" + text + "\",\"from\":\"the agency\",\"date\":\"2026-09-01\"}";
    }

    private static Book book(String jurisdiction, String pathway, String from, String grade, String answer) {
        String family = "{\"hearthrule\":1,\"students\":[{\"id\":\"child\",\"name\":\"Child\",\"born\":\"2016-03-02\",\"schools\":[]}],"
                + "\"persons\":[],\"placements\":[{\"student\":\"child\",\"jurisdiction\":\"" + jurisdiction + "\",\"pathway\":\""
                + pathway + "\",\"from\":\"" + from + "\"}],\"events\":[],\"facts\":[],\"answers\":[" + answer + "]}";
        String year = "{\"hearthrule\":1,\"year\":\"2026-27\",\"grades\":{\"child\":\"" + grade + "\"}}";
        return BookReader.read(Map.of("family.json", family, "2026-27.json", year), new Problems()).orElseThrow();
    }

    private static Finding line(Book book, String jurisdiction, String requirement) throws Exception {
        Profile profile = Packaged.profiles().find(jurisdiction);
        List<Finding> findings = new Judge(List.of(profile)).judge(book, LocalDate.parse("2026-11-25")).findings();
        return findings.stream().filter(finding -> finding.requirement().equals(requirement)).findFirst().orElseThrow();
    }
}
