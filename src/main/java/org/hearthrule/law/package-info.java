/**
 * The law of one jurisdiction as data: profiles, read strictly from YAML and checked.
 *
 * <p>A {@link org.hearthrule.law.Profile} says, for each lawful pathway, what the law asks
 * ({@link org.hearthrule.law.Requirement}), of whom ({@link org.hearthrule.law.Condition}), by when
 * ({@link org.hearthrule.law.Due}) and what shows it ({@link org.hearthrule.law.Evidence}). The set of keys is
 * closed; there is no expression language. Nothing here knows a record book. All types are immutable and safe to
 * share between threads.
 */
package org.hearthrule.law;
