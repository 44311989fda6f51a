package org.hearthrule.terms;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Reads the file of subjects by hand: it is needed at every start, and its shape is so plain that waking a YAML parser
 * would cost more than all the rest. A test reads the same file as YAML and compares.
 */
final class SubjectsFile {

    /** Plain name by id, in the order of the file. */
    final Map<String, String> names = new LinkedHashMap<>();

    /** Area by id; an area is its own. In the order of the file. */
    final Map<String, String> areas = new LinkedHashMap<>();

    /** The sister that a subject also shows. */
    final Map<String, String> also = new LinkedHashMap<>();

    private String section = "";
    private String area = "";

    private SubjectsFile() { }

    static SubjectsFile load(String resource) {
        try (InputStream bytes = SubjectsFile.class.getClassLoader().getResourceAsStream(resource)) {
            if (bytes == null) {
                throw new IllegalStateException(resource + " is missing from the program");
            }
            return parse(new String(bytes.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new IllegalStateException(resource + " cannot be read", e);
        }
    }

    static SubjectsFile parse(String text) {
        SubjectsFile file = new SubjectsFile();
        int number = 0;
        int start = 0;
        while (start < text.length()) {
            int end = text.indexOf('\n', start);
            end = end < 0 ? text.length() : end;
            int stop = end > start && text.charAt(end - 1) == '\r' ? end - 1 : end;
            number++;
            String line = text.substring(start, stop);
            if (!line.isBlank() && !line.startsWith("#") && !file.take(line)) {
                throw new IllegalStateException("line " + number + " of the subjects is not understood: " + line);
            }
            start = end + 1;
        }
        return file;
    }

    /** Takes one line; returns false when it has no place here. */
    private boolean take(String line) {
        int indent = 0;
        while (line.charAt(indent) == ' ') {
            indent++;
        }
        int colon = line.indexOf(':');
        if (colon < 0) {
            return false;
        }
        String key = line.substring(indent, colon);
        String value = line.substring(colon + 1).strip();
        boolean inAreas = section.equals("areas");
        switch (indent) {
            case 0:
                section = key;
                return value.isEmpty() && (key.equals("areas") || key.equals("also-shows"));
            case 2:
                area = key;
                return inAreas ? value.isEmpty() && areas.put(key, key) == null
                        : known(key) && known(value) && also.put(key, value) == null;
            case 4:
                return inAreas && (key.equals("subjects") && value.isEmpty() && known(area)
                        || key.equals("name") && !value.isEmpty() && names.put(area, value) == null);
            case 6:
                return inAreas && !value.isEmpty() && known(area) && names.put(key, value) == null
                        && areas.put(key, area) == null;
            default:
                return false;
        }
    }

    private boolean known(String id) {
        return names.containsKey(id);
    }
}
