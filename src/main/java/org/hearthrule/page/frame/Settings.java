package org.hearthrule.page.frame;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.hearthrule.law.Profiles;

/**
 * What the page is started with.
 *
 * @param book     folder of the family's book; it need not be there yet
 * @param demo     folder for the invented family, a place of its own
 * @param startInDemo whether the invented family is shown first
 * @param profiles the laws
 * @param clock    tells the real time, for when something was written
 * @param asOf     the day to look at, or null for the real one
 * @param port     to listen on, 0 for any that is free
 * @param version  of the program
 */
public record Settings(Path book, Path demo, boolean startInDemo, Profiles profiles, Clock clock, LocalDate asOf,
                       int port, String version) { }
