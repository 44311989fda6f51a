/**
 * Tables in and out: spreadsheets (XLSX) and tables as text (CSV) become records of the book, and the other way.
 *
 * <p>{@link org.hearthrule.tables.TableFile} reads a file, {@link org.hearthrule.tables.TableImport} takes its rows
 * over, first as a preview, then as a new book. Nothing here reads or writes the folder of a book, and nothing knows
 * the law of any state.
 */
package org.hearthrule.tables;
