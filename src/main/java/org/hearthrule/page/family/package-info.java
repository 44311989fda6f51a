/** The family: children, persons, where and how each child is taught, moves, events and facts. */
package org.hearthrule.page.family;
