package org.hearthrule.rules;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.kie.api.KieBase;

/**
 * Both layers of rules in one knowledge base, kept by the content of the profiles. Safe for several threads.
 */
final class RuleBase {

    /** Written by the build: names of the models made from {@code rules/*.drl}. */
    private static final String BUILT = "META-INF/kie/org.hearthrule/hearthrule/drools-model";
    /** Each holds a megabyte. */
    private static final int KEPT = 16;

    private static final Map<List<String>, KieBase> BASES = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<List<String>, KieBase> eldest) {
            return size() > KEPT;
        }
    };

    private RuleBase() {
    }

    static KieBase of(List<Profile> profiles) {
        List<String> contents = profiles.stream().map(Profile::content).sorted().toList();
        synchronized (BASES) {
            return BASES.computeIfAbsent(contents, missing -> build(profiles));
        }
    }

    private static KieBase build(List<Profile> profiles) {
        List<Model> models = new ArrayList<>(builtModels());
        for (Profile profile : profiles) {
            ModelImpl model = new ModelImpl(profile.code());
            for (Pathway pathway : profile.pathways()) {
                for (Requirement requirement : pathway.asks()) {
                    model.addRule(RequirementRule.of(pathway, requirement));
                }
            }
            models.add(model);
        }
        return KieBaseBuilder.createKieBaseFromModel(models);
    }

    private static List<Model> builtModels() {
        List<Model> models = new ArrayList<>();
        try (InputStream names = RuleBase.class.getClassLoader().getResourceAsStream(BUILT);
                BufferedReader lines = new BufferedReader(new InputStreamReader(names, StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.isBlank() && !line.startsWith("Drools-Model-Version")) {
                    models.add((Model) Class.forName(line.strip()).getDeclaredConstructor().newInstance());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the built rules cannot be loaded", e);
        }
        return models;
    }
}
