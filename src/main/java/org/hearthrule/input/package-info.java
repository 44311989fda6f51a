/**
 * Reads YAML and JSON strictly into one tree in which every value knows its file, line and column,
 * and collects every problem instead of stopping at the first.
 *
 * <p>{@link org.hearthrule.input.YamlText} and {@link org.hearthrule.input.JsonText} read a text
 * into {@link org.hearthrule.input.Node}s; {@link org.hearthrule.input.Fields} reads typed values
 * out of them; {@link org.hearthrule.input.Problems} gathers what is wrong.
 */
package org.hearthrule.input;
