package org.hearthrule.rules;

import java.io.ObjectInput;
import java.io.ObjectOutput;
import java.io.Serializable;
import java.util.ArrayList;
import org.kie.api.runtime.rule.AccumulateFunction;

/** Accumulates a child's records of the kinds a requirement looks at, so that a finding can name the very ones it counted. */
final class Collect implements AccumulateFunction<Collect.Context> {

    static final class Context implements Serializable {
        private final transient ArrayList<RecordFact> facts = new ArrayList<>();
    }

    private final FactsNeeded needed;

    Collect(FactsNeeded needed) {
        this.needed = needed;
    }

    @Override
    public Context createContext() {
        return new Context();
    }

    @Override
    public void init(Context context) {
        context.facts.clear();
    }

    @Override
    public void accumulate(Context context, Object value) {
        context.facts.addAll(needed.of((ChildRecords) value));
    }

    @Override
    public void reverse(Context context, Object value) {
        context.facts.removeAll(needed.of((ChildRecords) value));
    }

    @Override
    public boolean supportsReverse() {
        return true;
    }

    @Override
    public Object getResult(Context context) {
        return new FactList(new ArrayList<>(context.facts));
    }

    @Override
    public Class<?> getResultType() {
        return FactList.class;
    }

    @Override
    public void writeExternal(ObjectOutput out) {
        throw new UnsupportedOperationException("rule bases are never written");
    }

    @Override
    public void readExternal(ObjectInput in) {
        throw new UnsupportedOperationException("rule bases are never written");
    }
}
