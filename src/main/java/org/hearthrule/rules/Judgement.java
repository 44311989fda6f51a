package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.law.Profile;

/**
 * Everything the rules say about a book on a day.
 *
 * @param asOf     the day
 * @param profiles laws used, in the order first met
 * @param findings in a stable order: jurisdiction, pathway, order of the profile, child, occasion
 */
public record Judgement(LocalDate asOf, List<Profile> profiles, List<Finding> findings) {
}
