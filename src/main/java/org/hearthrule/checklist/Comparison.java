package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.rules.ProgramYear;
import org.hearthrule.rules.Status;

/**
 * Two laws side by side, and what a move from the first to the second brings.
 *
 * @param asOf the day the laws are taken on; with a move, the day of the move
 * @param move null when nobody moves
 */
public record Comparison(LocalDate asOf, Side here, Side there, Move move) {

    /**
     * One law, on one of its pathways.
     *
     * @param asked  what it asks on the day, in the order of its file; of a child only what it owes
     * @param lines  the same as lines for one child; null when no child was named: then {@code asked} says it all
     */
    public record Side(Profile law, Pathway pathway, List<Requirement> asked, List<Line> lines) {

        /** @return a law for whomever it may concern */
        public static Side of(Profile law, Pathway pathway, LocalDate asOf) {
            return of(law, pathway, asOf, (List<Line>) null);
        }

        /** @param lines of one child in the school year; what is not due for it is left out */
        private static Side of(Profile law, Pathway pathway, LocalDate asOf, List<Line> lines) {
            List<Requirement> asked = new ArrayList<>();
            for (Requirement requirement : pathway.asks()) {
                boolean stands = requirement.validity().inForceOn(asOf);
                boolean concerns = lines == null || lines.stream().anyMatch(line -> line.isOf(requirement));
                if (stands && concerns) {
                    asked.add(requirement);
                }
            }
            return new Side(law, pathway, List.copyOf(asked), lines);
        }

        /** @param checklist of one child that is taught so on the day; what belongs to an earlier school year is left out */
        public static Side of(Profile law, Pathway pathway, LocalDate asOf, Checklist checklist) {
            String year = ProgramYear.holding(pathway.year(), asOf).label();
            List<Line> lines = new ArrayList<>();
            for (Line line : checklist.lines()) {
                boolean over = line.asked() != null && line.finding().year().compareTo(year) < 0;
                if (line.asked() != null && line.finding().status() != Status.NOT_DUE && !over) {
                    lines.add(line);
                }
            }
            return of(law, pathway, asOf, List.copyOf(lines));
        }

        List<Requirement> of(Topic topic) {
            return asked.stream().filter(one -> Topic.of(one.kind()) == topic).toList();
        }
    }

    /**
     * A family that moves.
     *
     * @param owed   still owed where it lived, by the day of the move; sorted by day
     * @param ends   would have fallen due there later; sorted by day
     * @param toFile what the new place asks; sorted by day, what has none last
     * @param keep   what is worth keeping
     */
    public record Move(LocalDate day, List<Line> owed, List<Line> ends, List<Line> toFile, List<Kept> keep) {

        private static final Comparator<Line> BY_DAY = Comparator.comparing(line -> line.finding().due(),
                Comparator.nullsLast(Comparator.naturalOrder()));

        /**
         * @param stayed lines for a child who stays, on the day of the move
         * @param moved  lines for one who moves on that day, of both places
         */
        public static Move of(LocalDate day, Side here, Side there, Checklist stayed, Checklist moved) {
            List<Line> owed = moved.lines().stream().filter(line -> isOf(line, here) && matters(line)).sorted(BY_DAY).toList();
            Set<String> stillThere = new TreeSet<>(owed.stream().map(Line::id).toList());
            List<Line> ends = stayed.lines().stream().filter(line -> isOf(line, here) && matters(line)
                    && comesAnew(line.asked().kind()) && !stillThere.contains(line.id()) && line.finding().status() != Status.LATE)
                    .sorted(BY_DAY).toList();
            List<Line> toFile = moved.lines().stream().filter(line -> isOf(line, there) && matters(line)
                    && line.asked().kind() != RequirementKind.STANDARD).sorted(BY_DAY).toList();
            return new Move(day, owed, ends, toFile, Kept.of(here, there, day));
        }

        /** What is so all the time has no day on which it would have come. */
        private static boolean comesAnew(RequirementKind kind) {
            return switch (kind) {
                case QUALIFY, STANDING, STANDARD, THEIRS, SHOW -> false;
                default -> true;
            };
        }

        private static boolean isOf(Line line, Side side) {
            return side.pathway().asks().stream().anyMatch(line::isOf);
        }

        private static boolean matters(Line line) {
            return line.finding().status() != Status.NOT_DUE && line.finding().status() != Status.MET && !line.finding().theirs();
        }
    }

    /**
     * Something that stays worth keeping after a move.
     *
     * @param asked        what made it
     * @param alsoThere    the duty of the new place that the same paper, test or record shows, or null
     */
    public record Kept(Requirement asked, Requirement alsoThere) {

        /** Records and results of the old place, and whatever the new place asks for by the same name on that day. */
        static List<Kept> of(Side here, Side there, LocalDate day) {
            List<Kept> kept = new ArrayList<>();
            Set<Set<String>> named = new HashSet<>();
            for (Requirement asked : inForce(here, day)) {
                boolean ofTheYears = asked.kind() == RequirementKind.RECORD || asked.kind() == RequirementKind.ASSESS;
                Requirement also = ofTheYears || leavesPaper(asked.kind()) ? alike(asked, there, day) : null;
                Set<String> names = names(asked.shows());
                // two duties that one test shows are one thing to keep
                boolean anew = names.isEmpty() || named.add(names);
                if (asked.keepFor() != null || anew && (also != null || ofTheYears)) {
                    kept.add(new Kept(asked, also));
                }
            }
            return List.copyOf(kept);
        }

        private static List<Requirement> inForce(Side side, LocalDate day) {
            return side.pathway().asks().stream().filter(asked -> asked.validity().inForceOn(day)).toList();
        }

        private static Requirement alike(Requirement asked, Side there, LocalDate day) {
            return inForce(there, day).stream().filter(other -> other.kind() == asked.kind()
                    && !Collections.disjoint(names(asked.shows()), names(other.shows()))).findFirst().orElse(null);
        }

        private static boolean leavesPaper(RequirementKind kind) {
            return kind == RequirementKind.HEALTH || kind == RequirementKind.QUALIFY;
        }

        /** What shows it, by the names a record book uses; kinds of records without a name stand for themselves. */
        private static Set<String> names(Evidence evidence) {
            Set<String> names = new TreeSet<>();
            for (Evidence leaf : Evidence.leaves(evidence, Evidence.class)) {
                if (leaf instanceof Evidence.Document document) {
                    names.add(document.kind());
                } else if (leaf instanceof Evidence.HealthPaper health) {
                    names.addAll(health.kinds());
                } else if (leaf instanceof Evidence.Credential credential) {
                    names.addAll(credential.kinds());
                } else if (leaf instanceof Evidence.Test test) {
                    names.add(test.method());
                } else if (leaf instanceof Evidence.Evaluation evaluation) {
                    names.add(evaluation.method());
                } else if (leaf instanceof Evidence.Log || leaf instanceof Evidence.Samples || leaf instanceof Evidence.Readings) {
                    names.add(leaf.getClass().getSimpleName());
                }
            }
            return names;
        }
    }
}
