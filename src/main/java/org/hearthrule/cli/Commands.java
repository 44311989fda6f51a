package org.hearthrule.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.hearthrule.tables.ListKind;

/** The commands by name, in the order of the help. A command is made only when it is asked for. */
final class Commands {

    private static final Map<String, Supplier<Command>> BY_NAME = new LinkedHashMap<>();

    static {
        BY_NAME.put("open", () -> new OpenCommand());
        BY_NAME.put("check", () -> new CheckCommand());
        BY_NAME.put("deadlines", () -> new DeadlinesCommand());
        BY_NAME.put("readiness", () -> new ReadinessCommand());
        BY_NAME.put("explain", () -> new ExplainCommand());
        BY_NAME.put("law", () -> new LawCommand());
        BY_NAME.put("compare", () -> new CompareCommand());
        BY_NAME.put("new", () -> new NewCommand());
        BY_NAME.put("import log", () -> new ImportCommand<>(ListKind.LOG));
        BY_NAME.put("import readings", () -> new ImportCommand<>(ListKind.READINGS));
        BY_NAME.put("export", () -> new ExportCommand());
        BY_NAME.put("copy", () -> new CopyCommand());
        BY_NAME.put("restore", () -> new RestoreCommand());
        BY_NAME.put("lint", () -> new LintCommand());
    }

    private Commands() { }

    static List<String> names() {
        return List.copyOf(BY_NAME.keySet());
    }

    static boolean has(String name) {
        return BY_NAME.containsKey(name);
    }

    static Command make(String name) {
        return BY_NAME.get(name).get();
    }
}
