/** The checklist as a page: what is late, soon, later and done; each line opens to its reasons. */
package org.hearthrule.page.checklist;
