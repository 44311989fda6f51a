package org.hearthrule.records;

/** The lists of a year's file, as they are written. */
final class YearText {

    private YearText() { }

    static void addLists(JsonObject root, YearRecords year) {
        root.withEach("log", year.log(), YearText::entry)
                .withEach("readings", year.readings(), YearText::reading)
                .withEach("samples", year.samples(), YearText::sample)
                .withEach("tests", year.tests(), YearText::test)
                .withEach("evaluations", year.evaluations(), YearText::evaluation)
                .withEach("filings", year.filings(), YearText::filing)
                .withEach("requests", year.requests(), YearText::request)
                .withEach("health", year.health(), YearText::healthPaper)
                .withEach("documents", year.documents(), YearText::document)
                .withEach("visits", year.visits(), YearText::visit);
    }

    private static JsonObject entry(YearRecords.LogEntry entry) {
        return new JsonObject().with("id", entry.id()).with("date", entry.date())
                .with("minutes", orNull(entry.minutes())).with("students", entry.students())
                .with("subjects", entry.subjects()).with("did", entry.did()).with("materials", entry.materials())
                .with("place", entry.place()).with("core", entry.core()).with("by", entry.by())
                .with("written", entry.written() == null ? null : Times.format(entry.written()));
    }

    private static JsonObject reading(YearRecords.Reading reading) {
        return new JsonObject().with("id", reading.id()).with("students", reading.students())
                .with("title", reading.title()).with("author", reading.author()).with("started", reading.started())
                .with("finished", reading.finished()).with("subjects", reading.subjects())
                .with("idea", reading.idea()).with("isbn", reading.isbn());
    }

    private static JsonObject sample(YearRecords.Sample sample) {
        return new JsonObject().with("id", sample.id()).with("student", sample.student()).with("date", sample.date())
                .with("subjects", sample.subjects()).with("title", sample.title()).with("kind", sample.kind())
                .with("idea", sample.idea()).with("files", sample.files())
                .with("chosen", sample.chosen() ? true : null);
    }

    private static JsonObject test(YearRecords.TestTaken test) {
        return new JsonObject().with("id", test.id()).with("student", test.student()).with("date", test.date())
                .with("method", test.method()).with("name", test.name()).with("edition", test.edition())
                .with("givenBy", test.givenBy()).with("place", test.place()).with("consent", test.consent())
                .withEach("scores", test.scores(), score -> new JsonObject().with("area", score.area())
                        .with("measure", score.measure()).with("value", score.value()))
                .with("file", test.file());
    }

    private static JsonObject evaluation(YearRecords.Evaluation evaluation) {
        return new JsonObject().with("id", evaluation.id()).with("student", evaluation.student())
                .with("date", evaluation.date()).with("method", evaluation.method()).with("by", evaluation.by())
                .with("consent", evaluation.consent()).with("includes", evaluation.includes())
                .with("outcome", evaluation.outcome()).with("note", evaluation.note())
                .with("file", evaluation.file());
    }

    private static JsonObject filing(YearRecords.Filing filing) {
        return new JsonObject().with("id", filing.id()).with("students", filing.students())
                .with("paper", filing.paper()).with("sent", filing.sent()).with("how", filing.how())
                .with("to", filing.to()).with("for", filing.year()).with("part", filing.part())
                .with("states", filing.states()).with("attached", filing.attached()).with("copy", filing.copy())
                .withEach("answers", filing.answers(), answer -> new JsonObject().with("kind", answer.kind())
                        .with("date", answer.date()).with("note", answer.note()));
    }

    private static JsonObject request(YearRecords.Request request) {
        return new JsonObject().with("id", request.id()).with("students", request.students()).with("by", request.by())
                .with("written", request.written()).with("date", request.date()).with("cause", request.cause());
    }

    private static JsonObject healthPaper(YearRecords.HealthPaper paper) {
        return new JsonObject().with("id", paper.id()).with("student", paper.student()).with("kind", paper.kind())
                .with("date", paper.date()).with("file", paper.file());
    }

    private static JsonObject document(YearRecords.KeptDocument document) {
        return new JsonObject().with("id", document.id()).with("students", document.students())
                .with("kind", document.kind()).with("date", document.date()).with("file", document.file());
    }

    private static JsonObject visit(YearRecords.Visit visit) {
        return new JsonObject().with("id", visit.id()).with("students", visit.students()).with("date", visit.date())
                .with("minutes", orNull(visit.minutes())).with("by", visit.by())
                .with("faceToFace", visit.faceToFace() ? true : null);
    }

    /** No minutes and minutes not said are one thing to the reader; leaving them out reads better. */
    private static Integer orNull(int minutes) {
        return minutes == 0 ? null : minutes;
    }
}
