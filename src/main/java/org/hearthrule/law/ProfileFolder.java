package org.hearthrule.law;

import java.io.IOException;
import java.io.InputStream;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/** A place where profiles lie, each in a file named by its code in small letters. */
abstract class ProfileFolder {

    private static final String SUFFIX = ".yaml";
    private static final int NAME_LENGTH = "us-xx.yaml".length();

    /** @return names of the files, such as {@code us-xx.yaml}, in order */
    abstract Set<String> files() throws IOException;

    /** @return bytes of the file, or null when there is none of that name */
    abstract InputStream open(String file) throws IOException;

    /** @return what is another when the file may have changed, compared with {@code equals}; null when there is none */
    abstract Object stamp(String file);

    /** @return the file's name as problems show it */
    abstract String shown(String file);

    static boolean isProfileName(String name) {
        return name.length() == NAME_LENGTH && name.startsWith("us-") && name.endsWith(SUFFIX)
                && isSmall(name.charAt(3)) && isSmall(name.charAt(4));
    }

    private static boolean isSmall(char c) {
        return c >= 'a' && c <= 'z';
    }

    /** The profiles of a folder on disk. */
    static final class OnDisk extends ProfileFolder {

        private final Path folder;

        OnDisk(Path folder) {
            this.folder = folder;
        }

        /** Records a folder that is none, and files whose names look like slips: they would be passed over. */
        void check(Problems problems) {
            if (!Files.isDirectory(folder)) {
                problems.error(new Place(folder.toString(), 1, 1), ProfileFault.CANNOT_READ.code(),
                        Files.exists(folder) ? "a file" : "nothing", "a folder of profiles", null);
                return;
            }
            try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
                for (Path entry : entries) {
                    String name = entry.getFileName().toString();
                    if ((name.endsWith(SUFFIX) || name.endsWith(".yml")) && !isProfileName(name)) {
                        problems.error(new Place(entry.toString(), 1, 1), ProfileFault.WRONG_FILE_NAME.code(),
                                Say.code(name), "a name such as `us-xx.yaml`", null);
                    }
                }
            } catch (IOException e) {
                ProfileText.cannotRead(folder.toString(), "a folder that cannot be read", problems);
            }
        }

        @Override
        Set<String> files() throws IOException {
            Set<String> files = new TreeSet<>();
            try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
                for (Path entry : entries) {
                    String name = entry.getFileName().toString();
                    if (isProfileName(name)) {
                        files.add(name);
                    }
                }
            }
            return files;
        }

        @Override
        InputStream open(String file) throws IOException {
            Path path = folder.resolve(file);
            return Files.exists(path) ? Files.newInputStream(path) : null;
        }

        @Override
        Object stamp(String file) {
            return stamp(folder.resolve(file));
        }

        /** One that cannot be looked at counts as changed: reading it will say what is wrong. */
        private static Object stamp(Path path) {
            try {
                BasicFileAttributes file = Files.readAttributes(path, BasicFileAttributes.class);
                return List.of(file.lastModifiedTime(), file.size());
            } catch (NoSuchFileException e) {
                return null;
            } catch (IOException e) {
                return new Object();
            }
        }

        @Override
        String shown(String file) {
            return folder.resolve(file).toString();
        }
    }

    /** The profiles on the class path, in a folder or in a jar. */
    static final class OnClassPath extends ProfileFolder {

        private static final String FOLDER = "jurisdictions/";

        private final ClassLoader loader;
        private final Map<String, Set<String>> filesOfJars = new ConcurrentHashMap<>();

        OnClassPath(ClassLoader loader) {
            this.loader = loader;
        }

        @Override
        Set<String> files() throws IOException {
            Set<String> files = new TreeSet<>();
            for (Enumeration<URL> roots = loader.getResources(FOLDER); roots.hasMoreElements();) {
                URL root = roots.nextElement();
                if (root.getProtocol().equals("file")) {
                    files.addAll(new OnDisk(path(root)).files());
                } else if (root.openConnection() instanceof JarURLConnection connection) {
                    files.addAll(ofJar(connection));
                }
            }
            return files;
        }

        /** A jar does not change while the program runs, and has thousands of entries. */
        private Set<String> ofJar(JarURLConnection connection) throws IOException {
            String jar = connection.getJarFileURL().toString();
            Set<String> known = filesOfJars.get(jar);
            if (known == null) {
                known = new TreeSet<>();
                addFromJar(connection, known);
                filesOfJars.put(jar, known);
            }
            return known;
        }

        private static Path path(URL root) throws IOException {
            try {
                return Path.of(root.toURI());
            } catch (URISyntaxException e) {
                throw new IOException(e);
            }
        }

        private static void addFromJar(JarURLConnection connection, Set<String> files) throws IOException {
            String prefix = connection.getEntryName();
            // the jar belongs to the class loader; closing it here would close it there
            JarFile jar = connection.getJarFile();
            for (Enumeration<JarEntry> entries = jar.entries(); entries.hasMoreElements();) {
                String name = entries.nextElement().getName();
                if (name.startsWith(prefix) && isProfileName(name.substring(prefix.length()))) {
                    files.add(name.substring(prefix.length()));
                }
            }
        }

        @Override
        InputStream open(String file) {
            return loader.getResourceAsStream(FOLDER + file);
        }

        @Override
        Object stamp(String file) {
            URL there = loader.getResource(FOLDER + file);
            try {
                boolean onDisk = there != null && there.getProtocol().equals("file");
                return there == null ? null : onDisk ? OnDisk.stamp(path(there)) : there.toString();
            } catch (IOException e) {
                return new Object();
            }
        }

        @Override
        String shown(String file) {
            return FOLDER + file;
        }
    }
}
