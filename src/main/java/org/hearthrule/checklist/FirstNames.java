package org.hearthrule.checklist;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The shortest name that tells the children of a checklist apart.
 *
 * @param byName first name by whole name; a whole name stays where two children share the first
 */
record FirstNames(Map<String, String> byName) {

    static FirstNames of(Checklist checklist) {
        List<String> names = checklist.lines().stream().map(line -> line.finding().studentName())
                .filter(name -> name != null).distinct().toList();
        Map<String, String> byName = new HashMap<>();
        for (String name : names) {
            String first = first(name);
            boolean alone = names.stream().filter(other -> first(other).equals(first)).count() == 1;
            byName.put(name, alone && names.size() > 1 ? first : name);
        }
        return new FirstNames(byName);
    }

    private static String first(String name) {
        int space = name.indexOf(' ');
        return space < 0 ? name : name.substring(0, space);
    }

    String of(String name) {
        return byName.getOrDefault(name, name);
    }
}
