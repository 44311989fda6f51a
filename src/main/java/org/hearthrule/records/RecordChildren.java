package org.hearthrule.records;

import java.util.List;

/** Which children a record of any kind is about. */
public final class RecordChildren {

    private RecordChildren() { }

    /** @return ids; none when the record is about all children */
    public static List<String> of(YearRecord record) {
        if (record instanceof YearRecords.LogEntry entry) {
            return entry.students();
        } else if (record instanceof YearRecords.Reading reading) {
            return reading.students();
        } else if (record instanceof YearRecords.Sample sample) {
            return List.of(sample.student());
        } else if (record instanceof YearRecords.TestTaken test) {
            return List.of(test.student());
        } else if (record instanceof YearRecords.Evaluation evaluation) {
            return List.of(evaluation.student());
        } else if (record instanceof YearRecords.Filing filing) {
            return filing.students();
        } else if (record instanceof YearRecords.Request request) {
            return request.students();
        } else if (record instanceof YearRecords.HealthPaper paper) {
            return List.of(paper.student());
        } else if (record instanceof YearRecords.KeptDocument document) {
            return document.students();
        }
        return ((YearRecords.Visit) record).students();
    }

    /**
     * @param students ids
     * @return the record about these children; the same when it is of a kind that is always about one
     */
    public static YearRecord with(YearRecord record, List<String> students) {
        if (record instanceof YearRecords.LogEntry one) {
            return new YearRecords.LogEntry(one.id(), one.date(), one.minutes(), students, one.subjects(), one.did(),
                    one.materials(), one.place(), one.core(), one.by(), one.written());
        } else if (record instanceof YearRecords.Reading one) {
            return new YearRecords.Reading(one.id(), students, one.title(), one.author(), one.started(), one.finished(),
                    one.subjects(), one.idea(), one.isbn());
        } else if (record instanceof YearRecords.Filing one) {
            return new YearRecords.Filing(one.id(), students, one.paper(), one.sent(), one.how(), one.to(), one.year(),
                    one.part(), one.states(), one.attached(), one.copy(), one.answers());
        } else if (record instanceof YearRecords.Request one) {
            return new YearRecords.Request(one.id(), students, one.by(), one.written(), one.date(), one.cause());
        } else if (record instanceof YearRecords.KeptDocument one) {
            return new YearRecords.KeptDocument(one.id(), students, one.kind(), one.date(), one.file());
        } else if (record instanceof YearRecords.Visit one) {
            return new YearRecords.Visit(one.id(), students, one.date(), one.minutes(), one.by(), one.faceToFace());
        }
        return record;
    }
}
