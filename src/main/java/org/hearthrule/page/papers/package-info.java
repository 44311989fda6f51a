/** Papers, tests, evaluations, health papers and visits: added, mended and found; answers to what the law asks. */
package org.hearthrule.page.papers;
