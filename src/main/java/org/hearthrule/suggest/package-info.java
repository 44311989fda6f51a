/**
 * Suggests subjects from what a parent wrote in a line of the log, for the parent to confirm or strike.
 *
 * <p>The words stand in {@code shared/activities.yaml}, which a volunteer can read and extend;
 * {@link org.hearthrule.suggest.Suggester} finds them in a line by their stems, and learns from what this family
 * confirmed before. Nothing here knows a law or a record book, and nothing suggested is ever recorded by itself.
 */
package org.hearthrule.suggest;
