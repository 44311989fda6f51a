/** The pages where a spreadsheet is taken over into the book, and where everything is taken out again. */
package org.hearthrule.page.tables;
