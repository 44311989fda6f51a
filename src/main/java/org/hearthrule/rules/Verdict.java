package org.hearthrule.rules;

/**
 * What a rule in {@code rules/} makes of a claim.
 *
 * @param claim  the claim
 * @param status what is said
 * @param rule   name of the rule that said it
 */
public record Verdict(Claim claim, Status status, String rule) {
}
