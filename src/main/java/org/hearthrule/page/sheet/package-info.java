/** Sheets set for a browser: the templates below {@code src/main/jte/sheet}, and where a sheet's references lead. */
package org.hearthrule.page.sheet;
