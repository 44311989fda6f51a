/**
 * Words that laws and record books share: subjects, events, grades, how binding a rule is, how a source was read.
 *
 * <p>Nothing here knows a state, a profile or a record book. All types are immutable.
 */
package org.hearthrule.terms;
