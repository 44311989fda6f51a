package org.hearthrule.rules;

/**
 * A sentence that a rule in {@code rules/} adds to a claim.
 *
 * @param claim    the claim
 * @param sentence plain words
 * @param rule     name of the rule
 */
public record Remark(Claim claim, String sentence, String rule) {

    /** @return the pace needed to reach a minimum, and the day it is reached at the pace so far */
    public static Remark pace(Claim claim, String rule) {
        return new Remark(claim, Pace.of(claim), rule);
    }

    /** @return that another step comes first */
    public static Remark after(Claim claim, Claim first, String rule) {
        return new Remark(claim, Say.it("remark.after", first.requirement().title()), rule);
    }
}
