package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.law.Profile;
import org.hearthrule.records.Book;
import org.kie.api.runtime.KieSession;

/**
 * Runs both layers of rules over a record book. Keeps nothing of a family but the last book's {@link ChildRecords};
 * safe for several threads.
 */
public final class Judge {

    private final Map<String, Profile> profiles = new LinkedHashMap<>();

    /** @param profiles every profile that the book's placements name */
    public Judge(Collection<Profile> profiles) {
        profiles.forEach(profile -> this.profiles.put(profile.slug(), profile));
    }

    /** What a run of the rules leaves. */
    record Outcome(List<Situation> situations, Map<Claim, Verdict> verdicts, Map<Claim, List<Remark>> remarks,
                   List<RecordDoubt> doubts) { }

    /**
     * @param book with placements in known jurisdictions and pathways (see {@link BookPlacements})
     * @param asOf the day it is looked at
     */
    public Judgement judge(Book book, LocalDate asOf) {
        List<Situation> situations = Situations.of(book, profiles, asOf);
        Outcome outcome = run(book, asOf, situations);
        return new Judgement(asOf, List.copyOf(profiles.values()), new Findings(book, asOf, profiles, outcome).all());
    }

    private Outcome run(Book book, LocalDate asOf, List<Situation> situations) {
        Outcome outcome = new Outcome(situations, new IdentityHashMap<>(), new IdentityHashMap<>(), new ArrayList<>());
        KieSession session = RuleBase.of(List.copyOf(profiles.values())).newKieSession();
        try {
            Map<String, ChildRecords> records = ChildRecords.of(book);
            records.values().forEach(session::insert);
            situations.forEach(session::insert);
            session.fireAllRules();
            // only now, when every claim is made, is it time to judge them: all rules in rules/ look at Today
            for (Situation situation : situations) {
                if (situation.year().holds(asOf) && !situation.lastDay().isBefore(asOf)) {
                    session.insert(Child.of(situation));
                    if (records.containsKey(situation.studentId())) {
                        SubjectTrace.of(situation, records.get(situation.studentId())).forEach(session::insert);
                    }
                }
            }
            session.insert(new Today(asOf));
            session.fireAllRules();
            collect(session, outcome);
        } finally {
            session.dispose();
        }
        return outcome;
    }

    private static void collect(KieSession session, Outcome outcome) {
        for (Object fact : session.getObjects()) {
            if (fact instanceof Verdict verdict) {
                outcome.verdicts().put(verdict.claim(), verdict);
            } else if (fact instanceof Remark remark && !remark.sentence().isEmpty()) {
                outcome.remarks().computeIfAbsent(remark.claim(), claim -> new ArrayList<>()).add(remark);
            } else if (fact instanceof RecordDoubt doubt) {
                outcome.doubts().add(doubt);
            }
        }
    }
}
