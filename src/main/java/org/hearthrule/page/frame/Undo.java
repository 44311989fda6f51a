package org.hearthrule.page.frame;

/** Takes the last change back, or does it again. */
final class Undo {

    private Undo() { }

    static Answer undo(Call call) throws Exception {
        String path = call.back("/checklist");
        return call.desk().undo().map(what -> Answer.done("Taken back: " + what + '.', path))
                .orElse(Answer.done("There is nothing to take back.", path));
    }

    static Answer redo(Call call) throws Exception {
        String path = call.back("/checklist");
        return call.desk().redo().map(what -> Answer.done("Done again: " + what + '.', path))
                .orElse(Answer.done("There is nothing to do again.", path));
    }
}
