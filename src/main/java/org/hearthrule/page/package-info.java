/**
 * The local page: a server on this machine's loopback address that sets the family's book as pages. Each part is a
 * package of its own below; all stand in {@link org.hearthrule.page.frame}.
 */
package org.hearthrule.page;
