package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.List;

/**
 * Yes, no, or not known; with the reason and, when not known, what to ask.
 *
 * @param value     the answer
 * @param reason    a plain sentence part, or empty
 * @param questions what would settle it; empty unless the answer is unknown
 */
record Truth(Value value, String reason, List<String> questions) {

    enum Value { YES, NO, UNKNOWN }

    static Truth yes(String reason) {
        return new Truth(Value.YES, reason, List.of());
    }

    static Truth no(String reason) {
        return new Truth(Value.NO, reason, List.of());
    }

    static Truth unknown(String reason, String question) {
        return new Truth(Value.UNKNOWN, reason, List.of(question));
    }

    boolean isYes() {
        return value == Value.YES;
    }

    boolean isNo() {
        return value == Value.NO;
    }

    boolean isUnknown() {
        return value == Value.UNKNOWN;
    }

    Truth negated() {
        return switch (value) {
            case YES -> new Truth(Value.NO, reason, questions);
            case NO -> new Truth(Value.YES, reason, questions);
            case UNKNOWN -> this;
        };
    }

    /** A no decides; else an unknown leaves it open. */
    static Truth all(List<Truth> parts) {
        return joined(parts, Value.NO, Value.YES);
    }

    /** A yes decides; else an unknown leaves it open. */
    static Truth any(List<Truth> parts) {
        return joined(parts, Value.YES, Value.NO);
    }

    private static Truth joined(List<Truth> parts, Value deciding, Value otherwise) {
        List<String> questions = new ArrayList<>();
        String unknown = null;
        String reason = "";
        for (Truth part : parts) {
            if (part.value == deciding) {
                return part;
            }
            if (part.isUnknown()) {
                questions.addAll(part.questions);
                unknown = unknown == null ? part.reason : unknown;
            } else if (reason.isEmpty()) {
                reason = part.reason;
            }
        }
        return unknown == null ? new Truth(otherwise, reason, List.of()) : new Truth(Value.UNKNOWN, unknown, questions);
    }
}
