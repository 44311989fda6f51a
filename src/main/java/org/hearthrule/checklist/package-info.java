/**
 * Findings set out for a reader: dated lines in order, as text, JSON and a calendar; the check before an evaluation;
 * one line explained; one state's law in plain words.
 *
 * <p>Nothing is judged here. All types are immutable; writers keep no state between two calls.
 */
package org.hearthrule.checklist;
