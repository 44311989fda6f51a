package org.hearthrule.rules;

import java.io.ObjectInput;
import java.io.ObjectOutput;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.kie.api.runtime.rule.AccumulateFunction;

/** Accumulates a child's records for a requirement, so that a finding can name the very ones it counted. */
final class Collect implements AccumulateFunction<Collect.Context> {

    static final class Context implements Serializable {
        private final transient ArrayList<ChildRecords> children = new ArrayList<>();
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
        context.children.clear();
    }

    @Override
    public void accumulate(Context context, Object value) {
        context.children.add((ChildRecords) value);
    }

    @Override
    public void reverse(Context context, Object value) {
        context.children.remove((ChildRecords) value);
    }

    @Override
    public boolean supportsReverse() {
        return true;
    }

    @Override
    public Object getResult(Context context) {
        return new FactList(List.copyOf(context.children), needed);
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
