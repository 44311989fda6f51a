package org.hearthrule.page.frame;

/** Answers one call. Safe for several threads at once. */
@FunctionalInterface
public interface Handler {

    /**
     * @throws Exception {@code BadInputException} when what was given must be put right; the reader is told all of it.
     *                   Anything else is our fault and told as such, without its message
     */
    Answer answer(Call call) throws Exception;
}
