package org.hearthrule.page.year;

import java.util.List;

/** The shortest names that tell the children of a family apart. */
record Names(List<String> all) {

    /** @return the first name, unless two children share it */
    String of(String name) {
        return all.stream().filter(other -> first(other).equals(first(name))).count() > 1 ? name : first(name);
    }

    private static String first(String name) {
        int space = name.indexOf(' ');
        return space < 0 ? name : name.substring(0, space);
    }
}
