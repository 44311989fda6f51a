/**
 * The record book of a family: one folder, plain JSON, one file for people and placements and one per school year.
 *
 * <p>{@link org.hearthrule.records.Book} is what was read; nothing in it can change.
 * {@link org.hearthrule.records.BookReader} reports every problem at once with its place.
 * {@link org.hearthrule.records.BookWriter} is the only writer and never overwrites a change made by somebody else.
 * Nothing here knows the law of any state.
 */
package org.hearthrule.records;
