package org.hearthrule.page.records;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Option;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;

/**
 * What a form offers to choose from: the children and persons of the book, and the papers and methods that the laws of
 * its placements ask for, by their plain names. Gathered once for a call: a list asks for the name of each of its rows.
 *
 * @param paperNames    title of the duty by the paper that serves it, in the order of the laws
 * @param documentNames title of the duty by the kind of paper that is kept for it
 */
record Offered(Book book, Map<String, String> paperNames, Map<String, String> documentNames, List<Option> healthPapers,
               List<Option> testMethods, List<Option> evaluationMethods, LocalDate today) {

    static Offered of(Call call) throws BadInputException {
        Book book = call.desk().book();
        Map<String, Requirement> asked = new LinkedHashMap<>();
        for (Profile profile : call.desk().judgement().profiles()) {
            for (Placement placement : book.placements()) {
                Optional<Pathway> way = placement.jurisdiction().equals(profile.slug())
                        ? profile.pathway(placement.pathway()) : Optional.empty();
                way.ifPresent(found -> found.asks().forEach(one -> asked.putIfAbsent(one.id(), one)));
            }
        }
        return of(book, List.copyOf(asked.values()), call.desk().today());
    }

    private static Offered of(Book book, List<Requirement> asked, LocalDate today) {
        Map<String, String> papers = kinds(asked, Evidence.Filing.class, one -> List.of(one.paper()));
        kinds(asked, Evidence.Approval.class, one -> List.of(one.paper())).forEach(papers::putIfAbsent);
        Set<String> tests = new LinkedHashSet<>(List.of("standardized-test"));
        tests.addAll(kinds(asked, Evidence.Test.class, one -> List.of(one.method())).keySet());
        return new Offered(book, papers, kinds(asked, Evidence.Document.class, one -> List.of(one.kind())),
                plainly(kinds(asked, Evidence.HealthPaper.class, Evidence.HealthPaper::kinds).keySet()), plainly(tests),
                plainly(kinds(asked, Evidence.Evaluation.class, one -> List.of(one.method())).keySet()), today);
    }

    private static <T extends Evidence> Map<String, String> kinds(List<Requirement> asked, Class<T> leaf,
                                                                  Function<T, List<String>> names) {
        Map<String, String> found = new LinkedHashMap<>();
        for (Requirement requirement : asked) {
            for (T one : Evidence.leaves(requirement.shows(), leaf)) {
                names.apply(one).forEach(kind -> found.putIfAbsent(kind, requirement.title()));
            }
        }
        return found;
    }

    /** Several kinds may show one duty, so each goes by its own name. */
    private static List<Option> plainly(Collection<String> kinds) {
        return kinds.stream().map(kind -> Option.of(kind, plain(kind))).toList();
    }

    List<Option> children() {
        return Choices.children(book);
    }

    List<String> childIds() {
        return Choices.childIds(book);
    }

    String childName(String id) {
        return book.student(id).map(one -> one.name()).orElse(id);
    }

    /** @return names of several children, or that it is for all */
    String childNames(List<String> ids) {
        return ids.isEmpty() ? "All children" : org.hearthrule.terms.Wording.english()
                .and(ids.stream().map(this::childName).toList());
    }

    /** @return the name of a person of the book, or the role as it was typed */
    String person(String idOrRole) {
        return idOrRole == null ? null : book.person(idOrRole).map(one -> one.name())
                .orElseGet(() -> book.student(idOrRole).map(one -> one.name()).orElse(plain(idOrRole)));
    }

    List<Option> persons() {
        return Choices.persons(book);
    }

    /** @return school years there are records of, and those around today, the latest first */
    List<Option> years() {
        return Choices.years(book, today);
    }

    List<Option> papers() {
        return options(paperNames);
    }

    List<Option> documents() {
        return options(documentNames);
    }

    /** @return a kind with the title of the duty it serves, or its own words */
    String paper(String slug) {
        return paperNames.getOrDefault(slug, plain(slug));
    }

    String document(String slug) {
        return documentNames.getOrDefault(slug, plain(slug));
    }

    private static List<Option> options(Map<String, String> found) {
        return found.entrySet().stream().map(one -> Option.of(one.getKey(), one.getValue())).toList();
    }

    /** @return a name of files in plain words: {@code physician-visit} is {@code Physician visit} */
    static String plain(String slug) {
        return org.hearthrule.terms.Prose.upperFirst(slug.replace('-', ' '));
    }
}
