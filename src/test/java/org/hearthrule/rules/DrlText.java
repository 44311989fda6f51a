package org.hearthrule.rules;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.drools.compiler.kie.builder.impl.DrlProject;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.io.ResourceType;
import org.kie.internal.builder.KnowledgeBuilder;
import org.kie.internal.builder.KnowledgeBuilderFactory;
import org.kie.internal.io.ResourceFactory;

/**
 * The benchmarks' yardstick: both layers of rules as rule text, compiled at run time by the engine's classic compiler.
 * Rule by rule the same left side, the same accumulation and the same consequence as {@link RequirementRule} builds.
 */
final class DrlText {

    private static final Path RULES = Path.of("rules");

    private DrlText() {
    }

    /** @return one text for each pathway */
    static List<String> of(Profile profile) {
        List<String> texts = new ArrayList<>();
        for (Pathway pathway : profile.pathways()) {
            StringBuilder out = new StringBuilder("package ").append(packageOf(pathway)).append("\n\n"
                    + "import org.hearthrule.rules.ChildRecords\n"
                    + "import org.hearthrule.rules.Claim\n"
                    + "import org.hearthrule.rules.DrlBridge\n"
                    + "import org.hearthrule.rules.Situation\n"
                    + "import accumulate org.hearthrule.rules.DrlBridge.Gather gather\n");
            for (Requirement requirement : pathway.asks()) {
                rule(pathway, requirement, out);
            }
            texts.add(out.toString());
        }
        return texts;
    }

    private static String packageOf(Pathway pathway) {
        return "text." + pathway.id().replace('-', '_').replace('/', '.');
    }

    private static void rule(Pathway pathway, Requirement requirement, StringBuilder out) {
        boolean looksAtRecords = !FactsNeeded.by(requirement).none();
        String id = '"' + requirement.id() + '"';
        out.append("\nrule ").append(id).append("\nwhen\n    $situation : Situation( pathwayId == \"").append(pathway.id())
                .append("\", DrlBridge.mayApply( ").append(id).append(", this ) )\n");
        if (looksAtRecords) {
            out.append("    accumulate( $child : ChildRecords( student == $situation.studentId );\n            $records : gather( "
                    + "DrlBridge.needed( $child ) ) )\n");
        }
        out.append("then\n    for ( Claim claim : DrlBridge.claims( ").append(id).append(", $situation, ")
                .append(looksAtRecords ? "$records" : "null").append(" ) ) {\n        insert( claim );\n    }\nend\n");
    }

    /** @return rules of the profiles and those of {@code rules/}, all as text */
    private static List<String> all(List<Profile> profiles) throws IOException {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.list(RULES)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".drl")).sorted().toList()) {
                texts.add(Files.readString(file));
            }
        }
        for (Profile profile : profiles) {
            DrlBridge.know(profile);
            texts.addAll(of(profile));
        }
        return texts;
    }

    /** Compiles by the shortest way, with the rule builder itself. */
    static KieBase compiled(List<Profile> profiles) throws IOException {
        KnowledgeBuilder builder = KnowledgeBuilderFactory.newKnowledgeBuilder();
        for (String text : all(profiles)) {
            builder.add(ResourceFactory.newByteArrayResource(text.getBytes(StandardCharsets.UTF_8)), ResourceType.DRL);
            if (builder.hasErrors()) {
                throw new IllegalStateException(builder.getErrors() + "\n" + text);
            }
        }
        return builder.newKieBase();
    }

    /** Compiles by the way that the engine's manual shows, with files in memory, a module and a container. */
    static KieBase compiledInModule(List<Profile> profiles) throws IOException {
        return compiledInModule(profiles, DrlProject.class);
    }

    /** The same, through the compiler that makes a model of the text first, as the build does for rules/. */
    static KieBase compiledToModel(List<Profile> profiles) throws IOException {
        return compiledInModule(profiles, ExecutableModelProject.class);
    }

    private static KieBase compiledInModule(List<Profile> profiles, Class<? extends KieBuilder.ProjectType> type)
            throws IOException {
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        int number = 0;
        for (String text : all(profiles)) {
            files.write("src/main/resources/rules" + number++ + ".drl", text);
        }
        KieBuilder builder = services.newKieBuilder(files).buildAll(type);
        if (builder.getResults().hasMessages(Message.Level.ERROR)) {
            throw new IllegalStateException(builder.getResults().toString());
        }
        return services.newKieContainer(builder.getKieModule().getReleaseId()).getKieBase();
    }
}
