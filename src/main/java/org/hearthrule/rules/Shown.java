package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the records show of a piece of evidence.
 *
 * @param value     yes, no, or not to be told
 * @param on        the day it was shown (a paper sent, a test given), or null
 * @param counted   numbers and words, in a stable order
 * @param records   records counted
 * @param sums      the arithmetic, a line each
 * @param lacks     what is lacking, as sentences the parent can act on
 * @param questions what would settle an unknown
 * @param courses   how the amounts of time among the numbers came together, under the same keys
 */
record Shown(Truth.Value value, LocalDate on, Map<String, Object> counted, List<RecordRef> records, List<String> sums,
             List<String> lacks, List<String> questions, List<TimeCourse> courses) {

    Shown(Truth.Value value, LocalDate on, Map<String, Object> counted, List<RecordRef> records, List<String> sums,
          List<String> lacks, List<String> questions) {
        this(value, on, counted, records, sums, lacks, questions, List.of());
    }

    static Shown yes(LocalDate on, Map<String, Object> counted, List<RecordRef> records, String sum) {
        return new Shown(Truth.Value.YES, on, counted, records, lines(sum), List.of(), List.of());
    }

    static Shown no(Map<String, Object> counted, List<RecordRef> records, String sum, String lack) {
        return new Shown(Truth.Value.NO, null, counted, records, lines(sum), lines(lack), List.of());
    }

    static Shown unknown(Map<String, Object> counted, List<RecordRef> records, String sum, String lack, String question) {
        return new Shown(Truth.Value.UNKNOWN, null, counted, records, lines(sum), lines(lack), lines(question));
    }

    boolean isYes() {
        return value == Truth.Value.YES;
    }

    /** @return the same with how its amounts of time came together */
    Shown along(List<TimeCourse> added) {
        return new Shown(value, on, counted, records, sums, lacks, questions, added);
    }

    private static List<String> lines(String line) {
        return line == null || line.isEmpty() ? List.of() : List.of(line);
    }

    /** Every part must be shown. */
    static Shown all(List<Shown> parts) {
        Truth.Value value = Truth.Value.YES;
        LocalDate on = null;
        for (Shown part : parts) {
            if (part.value == Truth.Value.NO) {
                value = Truth.Value.NO;
            } else if (part.value == Truth.Value.UNKNOWN && value == Truth.Value.YES) {
                value = Truth.Value.UNKNOWN;
            }
            on = later(on, part.on);
        }
        return joined(value, value == Truth.Value.YES ? on : null, parts, parts);
    }

    /** One part is enough; {@code preferred} is the part whose lacks are told when none is shown, or null. */
    static Shown any(List<Shown> parts, Shown preferred) {
        Shown open = null;
        for (Shown part : parts) {
            if (part.isYes()) {
                return joined(Truth.Value.YES, part.on, List.of(part), List.of(part));
            }
            if (part.value == Truth.Value.UNKNOWN && open == null) {
                open = part;
            }
        }
        Truth.Value value = open == null ? Truth.Value.NO : Truth.Value.UNKNOWN;
        if (preferred != null) {
            return joined(preferred.value, null, parts, List.of(preferred));
        }
        Shown all = joined(value, null, parts, parts);
        List<String> lacks = new ArrayList<>(new java.util.LinkedHashSet<>(all.lacks));
        if (parts.size() > 1 && lacks.size() > 1) {
            lacks = List.of(oneOf(lacks));
        }
        return new Shown(value, null, all.counted, all.records, all.sums, lacks, all.questions, all.courses);
    }

    /** Several things of which none is noted read as one list. */
    private static String oneOf(List<String> lacks) {
        String none = Say.it("lacks.none", "");
        String start = none.substring(0, none.length() - 1);
        if (lacks.stream().allMatch(lack -> lack.startsWith(start))) {
            List<String> things = lacks.stream().map(lack -> lack.substring(start.length(), lack.length() - 1)).distinct().toList();
            return Say.it("lacks.none", String.join(Say.it("lacks.or"), things));
        }
        return Say.it("lacks.one-of", String.join(" ", lacks));
    }

    /** @return the same, never a no: beside it stands a way that nobody can look up, told in words */
    Shown opened(List<String> words) {
        List<String> all = new ArrayList<>(lacks);
        all.addAll(words);
        return new Shown(Truth.Value.UNKNOWN, null, counted, records, sums, all, questions, courses);
    }

    private static Shown joined(Truth.Value value, LocalDate on, List<Shown> counted, List<Shown> told) {
        Map<String, Object> numbers = new LinkedHashMap<>();
        List<RecordRef> records = new ArrayList<>();
        List<String> sums = new ArrayList<>();
        List<TimeCourse> courses = new ArrayList<>();
        for (Shown part : counted) {
            part.counted.forEach((key, number) -> {
                String name = free(numbers, key);
                numbers.put(name, number);
                for (TimeCourse course : part.courses) {
                    if (course.key().equals(key)) {
                        courses.add(course.as(name));
                    }
                }
            });
            for (RecordRef record : part.records) {
                records.add(record);
            }
            sums.addAll(part.sums);
        }
        List<String> lacks = new ArrayList<>();
        List<String> questions = new ArrayList<>();
        for (Shown part : told) {
            if (!part.isYes()) {
                lacks.addAll(part.lacks);
                questions.addAll(part.questions);
            }
        }
        return new Shown(value, on, numbers, unique(records), sums, lacks, questions, courses);
    }

    private static List<RecordRef> unique(List<RecordRef> records) {
        return new ArrayList<>(new java.util.LinkedHashSet<>(records));
    }

    private static String free(Map<String, Object> taken, String key) {
        String name = key;
        for (int number = 2; taken.containsKey(name); number++) {
            name = key + "-" + number;
        }
        return name;
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return one.isAfter(other) ? one : other;
    }
}
