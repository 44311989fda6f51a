package org.hearthrule.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/** Knows which files of a folder belong to a book, by their names. */
final class BookNames {

    static final String FAMILY = "family.json";

    /** Stands in the name of a version that could not be saved without overwriting somebody's change. */
    static final String CONFLICT = ".conflict-";

    private static final String JSON = ".json";

    private BookNames() { }

    /** Returns the years there are files for, sorted; records a missing family file and wrong names. */
    static List<YearLabel> check(BookSource source, Problems problems) {
        List<YearLabel> years = new ArrayList<>();
        List<String> names = source.names();
        if (!names.contains(FAMILY)) {
            noFamily(source, problems);
        }
        for (String name : names) {
            Optional<YearLabel> year = year(name);
            if (year.isPresent()) {
                years.add(year.get());
            } else if (isConflict(name)) {
                secondVersion(source, name, problems);
            } else if (looksLikeAYear(name)) {
                badName(source, name, problems);
            }
        }
        return years;
    }

    /** Returns the school year that a name of a file stands for. */
    static Optional<YearLabel> year(String name) {
        return name.endsWith(JSON) ? YearLabel.parse(name.substring(0, name.length() - JSON.length()))
                : Optional.empty();
    }

    /** Whether this is the name of a file of a book. */
    static boolean isPart(String name) {
        return name.equals(FAMILY) || year(name).isPresent();
    }

    /** Whether this is the name of a version that could not be saved. */
    static boolean isConflict(String name) {
        int at = name.indexOf(CONFLICT);
        return at > 0 && name.endsWith(JSON) && isPart(name.substring(0, at) + JSON);
    }

    private static boolean looksLikeAYear(String name) {
        return name.toLowerCase(Locale.ROOT).endsWith(JSON) && name.charAt(0) >= '0' && name.charAt(0) <= '9';
    }

    private static void noFamily(BookSource source, Problems problems) {
        String perhaps = source.names().stream().filter(name -> name.equalsIgnoreCase(FAMILY)).findFirst()
                .map(name -> "rename " + name + " to " + FAMILY)
                .or(() -> source.bookBelow().map(folder -> "you meant the folder " + folder))
                .orElse("another folder is meant: the one that holds " + FAMILY);
        problems.error(new Place(source.shown(FAMILY), 1, 1), "NO-FAMILY-FILE", "no file " + FAMILY,
                "the file with the names of the children", perhaps);
    }

    private static void secondVersion(BookSource source, String name, Problems problems) {
        String original = name.substring(0, name.indexOf(CONFLICT)) + JSON;
        problems.warning(new Place(source.shown(name), 1, 1), "SECOND-VERSION",
                "a version of " + original + " that could not be saved, because the file had changed meanwhile",
                "one version", "compare the two, copy what is missing into " + original + ", then delete this one");
    }

    private static void badName(BookSource source, String name, Problems problems) {
        problems.error(new Place(source.shown(name), 1, 1), "BAD-FILE-NAME", Phrases.quoted(name),
                "the name of a school year such as 2026-27.json", betterName(name));
    }

    private static String betterName(String name) {
        String stem = name.substring(0, name.length() - JSON.length());
        Matcher years = Pattern.compile("((?:[12][0-9])?[0-9]{2})(?:\\D{0,3}((?:[12][0-9])?[0-9]{2}))?").matcher(stem);
        if (!years.matches()) {
            return "it is a copy: move it into a folder of its own";
        }
        int start = Integer.parseInt(years.group(1)) + (years.group(1).length() == 2 ? 2000 : 0);
        YearLabel meant = new YearLabel(start);
        boolean fits = years.group(2) == null || Integer.parseInt(years.group(2)) % 100 == (start + 1) % 100;
        return fits ? "rename it to " + meant.fileName() : null;
    }
}
