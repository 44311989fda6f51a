package org.hearthrule.records;

import org.hearthrule.input.Phrases;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/** Checks names of files that lie beside a book: they must stay in its folder, on every kind of computer. */
final class BookPaths {

    private BookPaths() { }

    /** Returns whether the text names a file within the book's folder; records why not. */
    static boolean isInside(String path, Place place, Problems problems) {
        String perhaps = null;
        if (path.indexOf('\\') >= 0 && path.indexOf(':') < 0) {
            perhaps = "write \"" + path.replace('\\', '/') + '"';
        } else if (path.startsWith("/") || path.indexOf(':') >= 0) {
            perhaps = "copy the file into the folder of the book and name it from there";
        } else if (isClean(path)) {
            return true;
        }
        problems.error(place, "PATH-OUTSIDE", Phrases.quoted(path),
                "a file in the folder of the book, such as \"photos/jetty.jpg\"", perhaps);
        return false;
    }

    private static boolean isClean(String path) {
        for (String part : path.split("/", -1)) {
            if (part.isEmpty() || part.equals(".") || part.equals("..")) {
                return false;
            }
        }
        return true;
    }
}
