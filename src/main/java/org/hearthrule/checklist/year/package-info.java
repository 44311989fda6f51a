/**
 * One school year as a family sees it: its calendar, how each minimum of time comes together, subjects by month. Numbers
 * and days only; how they are drawn and worded is the page's matter.
 */
package org.hearthrule.checklist.year;
