package org.hearthrule.law;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Nearest;
import org.hearthrule.input.Problems;

/**
 * The profiles there are: those that come with the program and, file by file before them, those of a folder. Only the
 * profile that is asked for is read and parsed; the others' names only when somebody wants a list of them or asks for
 * one that does not exist. A file that has not changed since is not read again.
 *
 * <p>Safe for use by several threads.
 */
public final class Profiles {

    private static final int CODE_LENGTH = "us-xx".length();
    private static final int LAST_LINE_OF_NAME = 60;

    private final ProfileReader reader;
    private final List<ProfileFolder> folders;
    private final Map<String, Seen<Profile>> kept = new ConcurrentHashMap<>();
    private final Map<String, Seen<String>> names = new ConcurrentHashMap<>();

    /** What was made of a file while it bore a stamp. */
    private record Seen<T>(Object stamp, T value) { }

    private Profiles(ProfileReader reader, List<ProfileFolder> folders) {
        this.reader = reader;
        this.folders = folders;
    }

    /** @return the profiles that come with the program */
    public static Profiles packaged(ProfileReader reader) {
        return packaged(reader, Profiles.class.getClassLoader());
    }

    static Profiles packaged(ProfileReader reader, ClassLoader loader) {
        return new Profiles(reader, List.of(new ProfileFolder.OnClassPath(loader)));
    }

    /**
     * Puts a folder's files before these profiles, each in the place of the one of the same name.
     *
     * @throws BadInputException when the folder cannot be read or a file in it is wrongly named
     */
    public Profiles with(Path folder) throws BadInputException {
        ProfileFolder.OnDisk first = new ProfileFolder.OnDisk(folder);
        Problems problems = new Problems();
        first.check(problems);
        problems.throwIfErrors();
        List<ProfileFolder> all = new ArrayList<>();
        all.add(first);
        all.addAll(folders);
        return new Profiles(reader, List.copyOf(all));
    }

    /** @return codes of all profiles, such as {@code US-XX}, in order */
    public List<String> codes() {
        Set<String> codes = new TreeSet<>();
        try {
            for (ProfileFolder folder : folders) {
                for (String file : folder.files()) {
                    codes.add(file.substring(0, CODE_LENGTH).toUpperCase(Locale.ROOT));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(codes);
    }

    /** @return plain names by code, read without reading the profiles; a name that cannot be seen is the code */
    public SortedMap<String, String> names() {
        SortedMap<String, String> names = new TreeMap<>();
        for (String code : codes()) {
            names.put(code, name(code));
        }
        return names;
    }

    /**
     * Reads one profile.
     *
     * @param asked a code ({@code US-XX}), its last two letters, or the plain name; neither capitals nor what stands
     *              between the letters matters
     * @throws UnknownJurisdictionException when there is no such profile
     * @throws BadInputException            when the profile has errors
     */
    public Profile find(String asked) throws UnknownJurisdictionException, BadInputException {
        Problems problems = new Problems();
        Optional<Profile> profile = find(asked, problems);
        problems.throwIfErrors();
        return profile.orElseThrow();
    }

    /**
     * Reads one profile.
     *
     * @param asked as for {@link #find(String)}
     * @return the profile; empty when there is none of that name
     * @throws BadInputException when the profile has errors
     */
    public Optional<Profile> known(String asked) throws BadInputException {
        try {
            return asked.isEmpty() ? Optional.empty() : Optional.of(find(asked));
        } catch (UnknownJurisdictionException e) {
            return Optional.empty();
        }
    }

    /**
     * Reads one profile and records what is wrong with it, warnings too.
     *
     * @param asked    as for {@link #find(String)}
     * @param problems takes every problem
     * @return the profile; empty when it has errors
     * @throws UnknownJurisdictionException when there is no such profile
     */
    public Optional<Profile> find(String asked, Problems problems) throws UnknownJurisdictionException {
        String letters = letters(asked);
        String file = file(letters);
        ProfileFolder folder = file == null ? null : folder(file);
        if (folder == null) {
            SortedMap<String, String> names = names();
            file = fileOfName(letters, names);
            folder = file == null ? null : folder(file);
            if (folder == null) {
                throw new UnknownJurisdictionException(asked, nearest(asked, letters, names), names);
            }
        }
        return read(folder, file, problems);
    }

    /** What was read without a word is kept as long as its file stays the same. */
    private Optional<Profile> read(ProfileFolder folder, String file, Problems problems) {
        String shown = folder.shown(file);
        Object stamp = folder.stamp(file);
        Seen<Profile> before = kept.get(shown);
        if (before != null && before.stamp().equals(stamp)) {
            return Optional.of(before.value());
        }
        int told = problems.all().size();
        try (InputStream in = folder.open(file)) {
            String content = ProfileText.of(in, shown, problems);
            Optional<Profile> profile = content == null ? Optional.empty() : reader.read(shown, content, problems);
            if (profile.isPresent() && problems.all().size() == told) {
                kept.put(shown, new Seen<>(stamp, profile.get()));
            }
            return profile;
        } catch (IOException e) {
            ProfileText.cannotRead(shown, "a file that cannot be read", problems);
            return Optional.empty();
        }
    }

    private ProfileFolder folder(String file) {
        for (ProfileFolder folder : folders) {
            if (folder.stamp(file) != null) {
                return folder;
            }
        }
        return null;
    }

    private static String letters(String asked) {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < asked.length(); i++) {
            if (Character.isLetter(asked.charAt(i))) {
                letters.append(Character.toLowerCase(asked.charAt(i)));
            }
        }
        return letters.toString();
    }

    /** @return name of the file that letters such as {@code usxx} or {@code xx} stand for, or null */
    private static String file(String letters) {
        String state = letters.length() == 4 && letters.startsWith("us") ? letters.substring(2) : letters;
        String file = "us-".concat(state).concat(".yaml");
        return ProfileFolder.isProfileName(file) ? file : null;
    }

    private static String fileOfName(String letters, Map<String, String> names) {
        for (Map.Entry<String, String> one : names.entrySet()) {
            if (letters(one.getValue()).equals(letters) && !letters.isEmpty()) {
                return one.getKey().toLowerCase(Locale.ROOT).concat(".yaml");
            }
        }
        return null;
    }

    /** A mistyped code is taken for another only when a single one differs from it by one letter. */
    private static String nearest(String asked, String letters, SortedMap<String, String> names) {
        if (file(letters) != null) {
            return nearestCode(file(letters), names);
        }
        String name = Nearest.of(asked.strip(), names.values()).orElse(null);
        for (Map.Entry<String, String> one : names.entrySet()) {
            if (one.getValue().equals(name)) {
                return one.getKey();
            }
        }
        return null;
    }

    private static String nearestCode(String file, SortedMap<String, String> names) {
        String found = null;
        for (String code : names.keySet()) {
            String other = code.toLowerCase(Locale.ROOT).concat(".yaml");
            int differing = other.length() == file.length() ? 0 : 2;
            for (int i = 0; i < Math.min(other.length(), file.length()); i++) {
                differing += other.charAt(i) == file.charAt(i) ? 0 : 1;
            }
            if (differing == 1) {
                if (found != null) {
                    return null;
                }
                found = code;
            }
        }
        return found;
    }

    private String name(String code) {
        String file = code.toLowerCase(Locale.ROOT).concat(".yaml");
        ProfileFolder folder = folder(file);
        if (folder == null) {
            return code;
        }
        Object stamp = folder.stamp(file);
        Seen<String> before = names.get(folder.shown(file));
        if (before == null || !before.stamp().equals(stamp)) {
            before = new Seen<>(stamp, name(folder, file, code));
            names.put(folder.shown(file), before);
        }
        return before.value();
    }

    private static String name(ProfileFolder folder, String file, String code) {
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(folder.open(file), StandardCharsets.UTF_8))) {
            for (int i = 0; i < LAST_LINE_OF_NAME; i++) {
                String line = lines.readLine();
                if (line == null) {
                    return code;
                }
                if (line.startsWith("name:")) {
                    return shownName(line.substring("name:".length()), code);
                }
            }
        } catch (IOException e) {
            return code;
        }
        return code;
    }

    /** Takes comment and quotes off; anything odd is left to the strict reading of that profile. */
    private static String shownName(String rest, String code) {
        int comment = rest.indexOf(" #");
        String name = (comment < 0 ? rest : rest.substring(0, comment)).strip();
        if (name.length() > 1 && (name.charAt(0) == '"' || name.charAt(0) == '\'')
                && name.charAt(name.length() - 1) == name.charAt(0)) {
            name = name.substring(1, name.length() - 1);
        }
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (!Character.isLetter(c) && c != ' ' && c != '-' && c != '.' && c != '\'') {
                return code;
            }
        }
        return name.isEmpty() || name.length() > Forms.LONGEST_NAME ? code : name;
    }
}
