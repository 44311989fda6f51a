package org.hearthrule.rules;

import java.io.IOException;
import java.io.PrintWriter;
import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.kie.api.KieBase;

/**
 * Does one thing in a fresh process and ends, for {@code .bench/run} to time.
 *
 * <pre>
 * model BOOK DATE OUT   judges a book by rules built as a model, as the program does
 * text BOOK DATE OUT    judges it by the same rules as text, compiled by the classic compiler
 * module BOOK DATE OUT  the same, compiled as the engine's manual shows
 * to-model BOOK DATE OUT  the same, compiled to a model first, at run time
 * profiles              reads, checks and compiles every profile
 * </pre>
 */
public final class ColdStart {

    private ColdStart() {
    }

    public static void main(String[] args) throws Exception {
        Profiles profiles = Packaged.profiles();
        if (args[0].equals("profiles")) {
            for (String code : profiles.codes()) {
                RuleBase.of(List.of(profiles.find(code)));
            }
            return;
        }
        Problems problems = new Problems();
        Book book = BookReader.read(Path.of(args[1]), problems).orElseThrow(() -> new IllegalStateException(problems.all().toString()));
        List<Profile> used = new ArrayList<>();
        for (String code : BookPlacements.jurisdictions(book)) {
            used.add(profiles.find(code));
        }
        switch (args[0]) {
            case "text" -> takeForBase(used, DrlText.compiled(used));
            case "to-model" -> takeForBase(used, DrlText.compiledToModel(used));
            case "module" -> takeForBase(used, DrlText.compiledInModule(used));
            default -> { }
        }
        Judgement judgement = new Judge(used).judge(book, LocalDate.parse(args[2]));
        if (args.length > 3) {
            print(judgement, Path.of(args[3]));
        }
    }

    /** Puts a knowledge base in the place of the one that would be built, so that all the rest is the same. */
    @SuppressWarnings("unchecked")
    static void takeForBase(List<Profile> profiles, KieBase base) throws ReflectiveOperationException {
        Field bases = RuleBase.class.getDeclaredField("BASES");
        bases.setAccessible(true);
        ((Map<List<String>, KieBase>) bases.get(null)).put(profiles.stream().map(Profile::content).sorted().toList(), base);
    }

    private static void print(Judgement judgement, Path file) throws IOException {
        try (PrintWriter out = new PrintWriter(file.toFile(), StandardCharsets.UTF_8)) {
            judgement.findings().forEach(out::println);
        }
    }
}
