/**
 * What every part of the local page stands in: the guard at the door, the open book, forms, the layout, answers.
 *
 * <p>A {@link org.hearthrule.page.frame.Feature} adds its addresses to {@link org.hearthrule.page.frame.Routes}; a
 * handler takes a {@link org.hearthrule.page.frame.Call} and returns an {@link org.hearthrule.page.frame.Answer}. What
 * changes the book goes through {@link org.hearthrule.page.frame.Desk#edit}, so that it can be undone.
 */
package org.hearthrule.page.frame;
