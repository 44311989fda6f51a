package org.hearthrule.rules;

import java.util.List;

/** The records accumulated for a requirement, in the order of the book. */
record FactList(List<RecordFact> facts) {
}
