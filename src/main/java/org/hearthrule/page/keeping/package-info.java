/** What keeps a book safe and what takes it elsewhere: earlier states, whole copies, the dates for a calendar program. */
package org.hearthrule.page.keeping;
