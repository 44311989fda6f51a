/** The first visit: what a state asks before anything is entered, the way to a book, the invented family. */
package org.hearthrule.page.welcome;
