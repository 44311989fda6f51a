/**
 * Tables in and out: spreadsheets and CSV files become records of the book, and the other way.
 *
 * <p>{@link org.hearthrule.tables.LogImport} takes log entries over from a table, first as a preview, then as a new
 * book. Nothing here reads or writes the folder of a book, and nothing knows the law of any state.
 */
package org.hearthrule.tables;
