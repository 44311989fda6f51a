package org.hearthrule.law;

import java.util.List;

/**
 * A subject under the law's own name.
 *
 * @param name    the law's name
 * @param shownBy ids of the common vocabulary, one of which shows it; an area is shown by any of its subjects
 * @param needsAll true when each id of {@code shownBy} must be shown
 * @param may     true when the law permits it without asking it
 */
public record SubjectItem(String name, List<String> shownBy, boolean needsAll, boolean may) {
}
