package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.List;

/**
 * Something about the records themselves that the parent should look at.
 *
 * @param rule     name of the rule in {@code rules/}
 * @param student  id of the child
 * @param about    what tells it from other doubts of the same rule
 * @param status   {@link Status#THIN} or {@link Status#UNCLEAR}
 * @param sentence what was found
 * @param next     what to do, or null
 * @param records  the records
 */
public record RecordDoubt(String rule, String student, String about, Status status, String sentence, String next,
                          List<RecordRef> records) {

    /**
     * @param key   sentence in {@code shared/wording/findings.properties}: {@code KEY} says what was found,
     *              {@code KEY.next} what to do, when there is anything; {@code {0}} is the number of records, {@code {1}} is {@code about}
     * @param facts {@link RecordFact}s, not empty; a list without a type since rules collect it so
     */
    public static RecordDoubt of(String rule, Status status, String key, String student, String about,
                                 List<?> facts) {
        List<RecordRef> records = facts.stream().map(fact -> ((RecordFact) fact).ref()).toList();
        return new RecordDoubt(rule, student, about, status, Say.it(key, records.size(), about),
                Say.knows(key + ".next") ? Say.it(key + ".next", records.size(), about) : null, records);
    }

    /** @return the earliest day of log entries in words; a list without a type since rules collect it so */
    public static String firstDay(List<?> entries) {
        return Say.day(entries.stream().map(entry -> ((RecordFact.Logged) entry).date()).min(LocalDate::compareTo).orElseThrow());
    }

    /** @return a day in words, for the text of a rule */
    public static String day(LocalDate date) {
        return Say.day(date);
    }
}
