package org.hearthrule.page.log;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Desk;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.suggest.Suggestion;
import org.hearthrule.terms.Subjects;

/** What the log's pages keep between calls: the order of the open log, and what each family confirmed. Safe for several threads. */
final class Shelf {

    private final LogIndex.Kept index = new LogIndex.Kept();
    private final Map<Path, Learner> learners = new ConcurrentHashMap<>();

    LogIndex index(Call call) {
        return index.of(call.desk().book());
    }

    /** @return subjects for the words of a form, but those that are ticked there */
    List<EntryView.Offered> offered(Desk desk, Form form) {
        List<String> ticked = form.field("subjects", "").values();
        return offered(desk, form.raw("did")).stream().filter(one -> !ticked.contains(one.subject())).toList();
    }

    List<EntryView.Offered> offered(Desk desk, String words) {
        return words.isBlank() ? List.of() : learner(desk).offer(desk.book(), words).stream().map(Shelf::offered).toList();
    }

    private Learner learner(Desk desk) {
        return learners.computeIfAbsent(desk.folder(), folder -> new Learner());
    }

    /** Makes suggestions ready for the words that are going to be typed. */
    void prepare(Desk desk) {
        if (!learners.containsKey(desk.folder())) {
            learner(desk).prepare(desk.book());
        }
    }

    private static EntryView.Offered offered(Suggestion one) {
        String words = LogWords.and(one.because().stream().map(word -> "“" + word + "”").toList());
        return new EntryView.Offered(one.subject(), Subjects.name(one.subject()), one.learned() ? LogWords.say("log.because", words) : words);
    }

    /** @return what must be said after entries were saved; empty when nothing must */
    String tooFull(Call call, List<LogEntry> logged) {
        return LogWords.tooFull(logged, index(call), call.desk().book());
    }
}
