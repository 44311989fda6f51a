package org.hearthrule.terms;

/** How binding a rule is. */
public enum Binding {
    STATUTE("statute"),
    REGULATION("regulation"),
    CASE_LAW("a court's decision"),
    AGENCY("agency practice"),
    LOCAL_PRACTICE("local practice"),
    VOLUNTARY("voluntary"),
    DISPUTED("disputed");

    private final String words;

    Binding(String words) {
        this.words = words;
    }

    /** @return the kind of rule in plain words */
    public String words() {
        return words;
    }

    /** @return true for statutes, regulations and decisions: the only rules whose dates can be missed */
    public boolean law() {
        return this == STATUTE || this == REGULATION || this == CASE_LAW;
    }
}
