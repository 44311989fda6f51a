package org.hearthrule.page.records;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.hearthrule.records.YearLabel;

/**
 * What a form offers to choose from: the children and persons of the book, and the papers and methods that the laws of
 * its placements ask for, by their plain names.
 *
 * @param asked what those laws ask, in their order
 */
record Offered(Book book, List<Requirement> asked, LocalDate today) {

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
        return new Offered(book, List.copyOf(asked.values()), call.desk().today());
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
        java.util.TreeSet<String> labels = new java.util.TreeSet<>(book.years().keySet());
        YearLabel now = YearLabel.of(today);
        labels.add(now.toString());
        labels.add(new YearLabel(now.start() + 1).toString());
        return labels.descendingSet().stream().map(label -> Option.of(label, label)).toList();
    }

    List<Option> papers() {
        Map<String, String> found = kinds(Evidence.Filing.class, one -> List.of(one.paper()));
        kinds(Evidence.Approval.class, one -> List.of(one.paper())).forEach(found::putIfAbsent);
        return options(found);
    }

    List<Option> documents() {
        return options(kinds(Evidence.Document.class, one -> List.of(one.kind())));
    }

    /** Several kinds may show one duty, so each goes by its own name. */
    List<Option> healthPapers() {
        Map<String, String> found = new LinkedHashMap<>();
        kinds(Evidence.HealthPaper.class, Evidence.HealthPaper::kinds).keySet().forEach(kind -> found.put(kind, plain(kind)));
        return options(found);
    }

    List<Option> testMethods() {
        Map<String, String> found = new LinkedHashMap<>();
        found.put("standardized-test", plain("standardized-test"));
        kinds(Evidence.Test.class, one -> List.of(one.method())).keySet().forEach(kind -> found.putIfAbsent(kind, plain(kind)));
        return options(found);
    }

    List<Option> evaluationMethods() {
        Map<String, String> found = new LinkedHashMap<>();
        kinds(Evidence.Evaluation.class, one -> List.of(one.method())).keySet().forEach(kind -> found.put(kind, plain(kind)));
        return options(found);
    }

    private <T extends Evidence> Map<String, String> kinds(Class<T> leaf, Function<T, List<String>> names) {
        Map<String, String> found = new LinkedHashMap<>();
        for (Requirement requirement : asked) {
            for (T one : Evidence.leaves(requirement.shows(), leaf)) {
                names.apply(one).forEach(kind -> found.putIfAbsent(kind, requirement.title()));
            }
        }
        return found;
    }

    /** @return a kind with the title of the duty it serves, or its own words */
    String paper(String slug) {
        return papers().stream().filter(one -> one.value().equals(slug)).map(Option::words).findFirst().orElse(plain(slug));
    }

    String document(String slug) {
        return documents().stream().filter(one -> one.value().equals(slug)).map(Option::words).findFirst().orElse(plain(slug));
    }

    private static List<Option> options(Map<String, String> found) {
        return found.entrySet().stream().map(one -> Option.of(one.getKey(), one.getValue())).toList();
    }

    /** @return a name of files in plain words: {@code physician-visit} is {@code Physician visit} */
    static String plain(String slug) {
        return org.hearthrule.terms.Prose.upperFirst(slug.replace('-', ' '));
    }
}
