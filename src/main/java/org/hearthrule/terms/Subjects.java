package org.hearthrule.terms;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The common vocabulary of subjects, from {@code shared/subjects.yaml}: areas ({@code mathematics}), each with subjects
 * ({@code arithmetic}). Record books and profiles both use these ids.
 *
 * <p>Read once, on first use; never changes afterwards; safe for several threads.
 */
public final class Subjects {

    /** Where the vocabulary lies on the class path. */
    public static final String RESOURCE = "shared/subjects.yaml";

    /** A mark on a log entry that some laws count by. It is no subject: {@link #known} does not know it. */
    public static final String CORE = "core";

    private Subjects() { }

    /** @return true when this is the id of an area or a subject */
    public static boolean known(String id) {
        return Loaded.NAMES.containsKey(id);
    }

    /** @return every id: each area, then its subjects, in the order of the file */
    public static Set<String> ids() {
        return Loaded.NAMES.keySet();
    }

    /**
     * Returns the plain name, for example {@code Living things}.
     *
     * @throws IllegalArgumentException when the id is not known
     */
    public static String name(String id) {
        String name = Loaded.NAMES.get(id);
        if (name == null) {
            throw unknown(id);
        }
        return name;
    }

    /** @return the ids of the areas, in the order of the file */
    public static Set<String> areas() {
        return Loaded.SUBJECTS.keySet();
    }

    /** @return true when this is the id of an area */
    public static boolean isArea(String id) {
        return Loaded.SUBJECTS.containsKey(id);
    }

    /** @return the area of a subject; an area is its own; empty when the id is not known */
    public static Optional<String> area(String id) {
        return Optional.ofNullable(Loaded.AREAS.get(id));
    }

    /**
     * Returns what {@link #area} does, for an id that is known.
     *
     * @throws IllegalArgumentException when the id is not known
     */
    public static String areaOf(String id) {
        return area(id).orElseThrow(() -> unknown(id));
    }

    /**
     * Returns the subjects of an area, without the area itself, in the order of the file.
     *
     * @throws IllegalArgumentException when this is not an area
     */
    public static List<String> subjectsOf(String area) {
        List<String> subjects = Loaded.SUBJECTS.get(area);
        if (subjects == null) {
            throw new IllegalArgumentException("not an area: " + area);
        }
        return subjects;
    }

    /**
     * Tells whether work logged under one id shows another. An area is shown by any of its subjects or by the bare
     * area; a bare area never shows one subject; a few subjects also show a sister ({@code drawing} shows
     * {@code visual-art}).
     *
     * @param logged the id in the record
     * @param asked  the id the law's subject points to
     */
    public static boolean shows(String logged, String asked) {
        String area = Loaded.AREAS.get(logged);
        return area != null
                && (logged.equals(asked) || area.equals(asked) || asked.equals(Loaded.ALSO.get(logged)));
    }

    private static IllegalArgumentException unknown(String id) {
        return new IllegalArgumentException("not a subject of the common vocabulary: " + id);
    }

    /** Fills on first use; a fault here is a fault of the build, not of anybody's input. */
    private static final class Loaded {
        static final Map<String, String> NAMES;
        static final Map<String, String> AREAS;
        static final Map<String, List<String>> SUBJECTS;
        static final Map<String, String> ALSO;

        static {
            SubjectsFile file = SubjectsFile.load(RESOURCE);
            NAMES = Collections.unmodifiableMap(file.names);
            AREAS = Collections.unmodifiableMap(file.areas);
            Map<String, List<String>> subjects = new LinkedHashMap<>();
            file.areas.forEach((id, area) -> {
                List<String> members = subjects.computeIfAbsent(area, key -> new ArrayList<>());
                if (!id.equals(area)) {
                    members.add(id);
                }
            });
            subjects.replaceAll((area, members) -> List.copyOf(members));
            SUBJECTS = Collections.unmodifiableMap(subjects);
            ALSO = Collections.unmodifiableMap(file.also);
        }
    }
}
