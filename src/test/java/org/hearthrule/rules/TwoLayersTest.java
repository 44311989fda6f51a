package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drools.model.DSL.accFunction;
import static org.drools.model.DSL.accumulate;
import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.betaIndexedBy;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.reactOn;
import static org.drools.model.PatternDSL.rule;

import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInput;
import java.io.ObjectOutput;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

import org.drools.model.Index.ConstraintType;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.junit.jupiter.api.Test;
import org.kie.api.KieBase;
import org.kie.api.definition.KiePackage;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.AccumulateFunction;

/** What the design rests on: rules from rules/*.drl and rules built at run time live in one KieBase. */
class TwoLayersTest {

    public record Child(String id, int grade) {
    }

    public record Worked(String child, String subject, int minutes) {
    }

    public record Shown(String requirement, String child, long minutes, boolean enough) {
    }

    /** Holds data that came with its construction, as the compiled requirements do. */
    private static final class Minutes implements AccumulateFunction<Minutes.Sum> {

        static final class Sum implements Serializable {
            private long minutes;
        }

        private final String subject;

        Minutes(String subject) {
            this.subject = subject;
        }

        @Override
        public Sum createContext() {
            return new Sum();
        }

        @Override
        public void init(Sum sum) {
            sum.minutes = 0;
        }

        @Override
        public void accumulate(Sum sum, Object value) {
            Worked worked = (Worked) value;
            if (worked.subject().equals(subject)) {
                sum.minutes += worked.minutes();
            }
        }

        @Override
        public void reverse(Sum sum, Object value) {
            Worked worked = (Worked) value;
            if (worked.subject().equals(subject)) {
                sum.minutes -= worked.minutes();
            }
        }

        @Override
        public boolean supportsReverse() {
            return true;
        }

        @Override
        public Object getResult(Sum sum) {
            return sum.minutes;
        }

        @Override
        public Class<?> getResultType() {
            return Long.class;
        }

        @Override
        public void writeExternal(ObjectOutput out) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void readExternal(ObjectInput in) {
            throw new UnsupportedOperationException();
        }
    }

    private static final String NAME = "us-xx/home-instruction/mathematics: 60 \"minutes\"";

    private static Rule requirement() {
        Variable<Child> child = declarationOf(Child.class, "$child");
        Variable<Worked> worked = declarationOf(Worked.class, "$worked");
        Variable<Long> minutes = declarationOf(Long.class, "$minutes");
        return rule("us-xx/home-instruction", NAME).build(
                pattern(child).expr("grade", c -> c.grade() >= 3, reactOn("grade")),
                accumulate(
                        pattern(worked).expr("child", child, (w, c) -> w.child().equals(c.id()),
                                betaIndexedBy(String.class, ConstraintType.EQUAL, 0,
                                        Worked::child, Child::id, String.class),
                                reactOn("child")),
                        accFunction(() -> new Minutes("mathematics"), worked).as(minutes)),
                on(child, minutes).execute((drools, c, sum) ->
                        drools.insert(new Shown(NAME, c.id(), sum, sum >= 60))));
    }

    private static Rule sequel() {
        Variable<Shown> shown = declarationOf(Shown.class, "$shown");
        return rule("second", "what follows").build(
                pattern(shown).expr("enough", Shown::enough, reactOn("enough")),
                on(shown).execute((drools, s) -> drools.insert("enough: " + s.child())));
    }

    /** The models that were generated from rules/*.drl when the project was built. */
    private static List<Model> builtModels() throws ReflectiveOperationException, IOException {
        List<Model> models = new ArrayList<>();
        try (InputStream names = Model.class.getClassLoader()
                .getResourceAsStream("META-INF/kie/org.hearthrule/hearthrule/drools-model")) {
            assertThat(names).as("rules/*.drl were compiled").isNotNull();
            for (String line : new String(names.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
                if (!line.isBlank() && !line.startsWith("Drools-Model-Version")) {
                    models.add((Model) Class.forName(line.strip()).getDeclaredConstructor().newInstance());
                }
            }
        }
        return models;
    }

    @Test
    void rulesOfBothLayersLiveInOneBase() throws Exception {
        List<Model> models = builtModels();
        models.add(new ModelImpl("us-xx").addRule(requirement()));
        models.add(new ModelImpl("second").addRule(sequel()));
        KieBase base = KieBaseBuilder.createKieBaseFromModel(models);
        assertThat(base.getKiePackages()).extracting(KiePackage::getName)
                .contains("org.hearthrule.rules", "us-xx/home-instruction", "second");

        List<String> fired = new ArrayList<>();
        KieSession session = base.newKieSession();
        try {
            session.addEventListener(new DefaultAgendaEventListener() {
                @Override
                public void afterMatchFired(AfterMatchFiredEvent event) {
                    fired.add(event.getMatch().getRule().getName());
                }
            });
            session.insert(new Child("ada", 4));
            session.insert(new Child("ben", 3));
            session.insert(new Child("cleo", 2));
            session.insert(new Worked("ada", "mathematics", 40));
            session.insert(new Worked("ada", "mathematics", 25));
            session.insert(new Worked("ada", "art", 90));
            session.insert(new Worked("ben", "mathematics", 59));
            session.insert(new Worked("cleo", "mathematics", 300));
            session.fireAllRules();

            assertThat(session.getObjects(Shown.class::isInstance).stream().map(Shown.class::cast))
                    .containsExactlyInAnyOrder(
                            new Shown(NAME, "ada", 65, true),
                            new Shown(NAME, "ben", 59, false));
            assertThat(session.getObjects(String.class::isInstance).stream().map(Object::toString))
                    .contains("enough: ada").doesNotContain("enough: ben");
            assertThat(fired).contains(NAME, "what follows");
        } finally {
            session.dispose();
        }
    }
}
