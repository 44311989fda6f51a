/** The log: a day in one line, subjects offered from its words, a week at a time, finding what was done. */
package org.hearthrule.page.log;
