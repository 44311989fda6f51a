package org.hearthrule.records;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A family's record book.
 *
 * @param folder     where it lies, or null when it was made in memory
 * @param familyName as the family calls itself, or null
 * @param students   children, in the order of the file
 * @param persons    parents, teachers, evaluators and others who take part
 * @param placements which child followed which pathway, from when to when
 * @param events     dated happenings the law may hang a date on
 * @param facts      answers to questions a profile asks
 * @param answers    doubts about the law that somebody answered
 * @param years      records by school year label such as {@code 2026-27}
 */
public record Book(Path folder, String familyName, List<Student> students, List<Person> persons,
                   List<Placement> placements, List<BookEvent> events, List<AnsweredFact> facts,
                   List<AnsweredDoubt> answers, SortedMap<String, YearRecords> years) {

    /** Version of the format that this program writes; it reads this and all earlier ones. */
    public static final int VERSION = 1;

    public Optional<Student> student(String id) {
        return students.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    public Optional<Person> person(String id) {
        return persons.stream().filter(p -> p.id().equals(id)).findFirst();
    }
}
