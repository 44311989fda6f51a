/**
 * The law as pages: every state, one state's law and its ways side by side, two states side by side, and a text to report
 * a mistake in a rule.
 */
package org.hearthrule.page.law;
