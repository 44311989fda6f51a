/**
 * The year as a page: its calendar, how each minimum comes together, subjects by month; each drawn as SVG and told again
 * as a table. What is drawn where is worked out here; templates only set it.
 */
package org.hearthrule.page.year;
