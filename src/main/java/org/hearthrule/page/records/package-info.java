/** The records of a book: books read, work, papers, tests, evaluations; added, mended and found; answers to what the law asks. */
package org.hearthrule.page.records;
