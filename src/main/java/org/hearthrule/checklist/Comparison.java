package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.RequirementKind;
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
     * @param asked  what it asks on the day, in the order of its file
     * @param lines  the same as lines for one child; null when no child was named: then {@code asked} says it all
     */
    public record Side(Profile law, Pathway pathway, List<Requirement> asked, List<Line> lines) {

        /** @param lines of one child in the school year; what is not due for it is left out */
        public static Side of(Profile law, Pathway pathway, LocalDate asOf, List<Line> lines) {
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

        List<Requirement> of(Topic topic) {
            return asked.stream().filter(one -> Topic.of(one.kind()) == topic).toList();
        }
    }

    /**
     * A family that moves.
     *
     * @param owed   still owed where it lived, by the day of the move
     * @param ends   would have fallen due there later
     * @param toFile what the new place asks, by day
     * @param keep   what is worth keeping
     */
    public record Move(LocalDate day, List<Line> owed, List<Line> ends, List<Line> toFile, List<Kept> keep) {

        /**
         * @param stayed lines for a child who stays, on the day of the move
         * @param moved  lines for one who moves on that day, of both places
         */
        public static Move of(LocalDate day, Side here, Side there, Checklist stayed, Checklist moved) {
            List<Line> owed = moved.lines().stream().filter(line -> isOf(line, here) && matters(line)).toList();
            Set<String> stillThere = new TreeSet<>(owed.stream().map(Line::id).toList());
            List<Line> ends = stayed.lines().stream().filter(line -> isOf(line, here) && matters(line)
                    && comesAnew(line.asked().kind()) && !stillThere.contains(line.id()) && line.finding().status() != Status.LATE).toList();
            List<Line> toFile = moved.lines().stream().filter(line -> isOf(line, there) && matters(line)
                    && line.asked().kind() != RequirementKind.STANDARD).toList();
            return new Move(day, owed, ends, toFile, Kept.of(here, there));
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

        /** Records and results of the old place, and whatever the new place asks for by the same name. */
        static List<Kept> of(Side here, Side there) {
            Map<Requirement, Requirement> kept = new LinkedHashMap<>();
            for (Requirement asked : here.pathway().asks()) {
                if (!asked.validity().announced() && (asked.keepFor() != null || leavesPaper(asked.kind()))) {
                    Requirement also = there.pathway().asks().stream().filter(other -> other.kind() == asked.kind()
                            && !java.util.Collections.disjoint(names(asked.shows()), names(other.shows()))).findFirst().orElse(null);
                    boolean ofTheYears = asked.kind() == RequirementKind.RECORD || asked.kind() == RequirementKind.ASSESS;
                    if (asked.keepFor() != null || also != null || ofTheYears) {
                        kept.put(asked, also);
                    }
                }
            }
            return kept.entrySet().stream().map(entry -> new Kept(entry.getKey(), entry.getValue())).toList();
        }

        private static boolean leavesPaper(RequirementKind kind) {
            return switch (kind) {
                case RECORD, ASSESS, HEALTH, QUALIFY -> true;
                default -> false;
            };
        }

        /** What shows it, by the names a record book uses; kinds of records without a name stand for themselves. */
        private static Set<String> names(Evidence evidence) {
            Set<String> names = new TreeSet<>();
            if (evidence != null) {
                add(evidence, names);
            }
            return names;
        }

        private static void add(Evidence evidence, Set<String> names) {
            if (evidence instanceof Evidence.AnyOf any) {
                any.parts().forEach(part -> add(part, names));
            } else if (evidence instanceof Evidence.AllOf all) {
                all.parts().forEach(part -> add(part, names));
            } else if (evidence instanceof Evidence.Option option) {
                add(option.part(), names);
            } else if (evidence instanceof Evidence.Document document) {
                names.add(document.kind());
            } else if (evidence instanceof Evidence.HealthPaper health) {
                names.addAll(health.kinds());
            } else if (evidence instanceof Evidence.Credential credential) {
                names.addAll(credential.kinds());
            } else if (evidence instanceof Evidence.Test test) {
                names.add(test.method());
            } else if (evidence instanceof Evidence.Evaluation evaluation) {
                names.add(evaluation.method());
            } else if (evidence instanceof Evidence.Log || evidence instanceof Evidence.Samples
                    || evidence instanceof Evidence.Readings) {
                names.add(evidence.getClass().getSimpleName());
            }
        }
    }
}
