package org.hearthrule.suggest;

/**
 * A cue found in a line.
 *
 * @param cue    the cue
 * @param key    {@link Cue#key()}
 * @param places the indexes of its words among the words of the line, rising
 */
record Hit(Cue cue, String key, int[] places) {

    int first() {
        return places[0];
    }

    int last() {
        return places[places.length - 1];
    }
}
