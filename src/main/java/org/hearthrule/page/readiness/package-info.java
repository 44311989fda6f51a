/** The check before an evaluation, as a page to walk through with the child and to print. */
package org.hearthrule.page.readiness;
