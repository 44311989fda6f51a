package org.hearthrule.input;

import java.util.List;

/** Thrown when input cannot be used because of the problems it carries. */
public final class BadInputException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /**
     * Makes one.
     *
     * @param problems every problem, in the order in which they are to be shown
     */
    public BadInputException(List<Problem> problems) {
        super(message(problems));
        this.problems = List.copyOf(problems);
    }

    /** Returns the problems; the list cannot be changed. */
    public List<Problem> problems() {
        return problems;
    }

    private static String message(List<Problem> problems) {
        StringBuilder text = new StringBuilder();
        for (Problem problem : problems) {
            if (text.length() > 0) {
                text.append('\n');
            }
            text.append(problem.toText());
        }
        return text.toString();
    }
}
