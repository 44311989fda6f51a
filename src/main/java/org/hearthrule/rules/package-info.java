/**
 * Profiles turned into Drools rules, run over a record book.
 *
 * <p>Each requirement of a profile becomes one rule that carries its id: whom it applies to is the left side, what the
 * records show is accumulated, a {@link org.hearthrule.rules.Claim} is the outcome. Rules that no state owns are in the
 * project's folder {@code rules/}. {@link org.hearthrule.rules.Judge} runs both and returns
 * {@link org.hearthrule.rules.Finding}s. This is the only package that knows both the law and the records.
 */
package org.hearthrule.rules;
