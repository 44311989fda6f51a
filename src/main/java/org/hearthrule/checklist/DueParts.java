package org.hearthrule.checklist;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.law.Condition;
import org.hearthrule.law.Due;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Requirement;

/**
 * Takes a due form apart into what can be told of a family of whom nothing is known: fixed days with the next date they
 * fall on, and forms that hang on something.
 */
final class DueParts {

    /** How a part stands to the calendar. */
    enum Kind {
        /** A fixed day of the law. */
        DAY,
        /** A fixed day that somebody asks for, or that is sensible; the law names none. */
        CUSTOM,
        /** Hangs on an event, a choice or somebody's word. */
        HANGS,
        /** Goes on through the year, or has no day. */
        THROUGH
    }

    /**
     * One part.
     *
     * @param when      conditions of its case, beside those of the duty
     * @param otherwise it holds where no case before it does
     * @param due       what is left of the form, for words
     * @param opens     first day on which it can be done, or null
     * @param day       next day, today included, or null
     */
    record Part(Kind kind, List<Condition> when, boolean otherwise, Due due, LocalDate opens, LocalDate day) {

        private Part under(Condition condition, boolean last) {
            List<Condition> all = new ArrayList<>(List.of(condition));
            all.addAll(when);
            return condition.equals(Condition.ALWAYS) ? new Part(kind, when, last || otherwise, due, opens, day)
                    : new Part(kind, List.copyOf(all), otherwise, due, opens, day);
        }
    }

    private static final int MOST_STEPS = 4;
    private static final int FEW = 3;

    private final Pathway pathway;
    private final LocalDate today;
    private int depth;

    private DueParts(Pathway pathway, LocalDate today) {
        this.pathway = pathway;
        this.today = today;
    }

    /** @return the parts in the order of the form */
    static List<Part> of(Requirement asked, Pathway pathway, LocalDate today) {
        return new DueParts(pathway, today).of(asked.due());
    }

    /**
     * Many cases that differ in no more than a remark, such as one for each year of the program, are one to a reader.
     *
     * @return the parts, those of one form without a day put together where the first stood
     */
    static List<Part> joined(List<Part> parts) {
        Map<Object, List<Part>> alike = new LinkedHashMap<>();
        for (Part part : parts) {
            alike.computeIfAbsent(part.day() == null ? plain(part.due()) : part, key -> new ArrayList<>()).add(part);
        }
        List<Part> joined = new ArrayList<>();
        for (List<Part> same : alike.values()) {
            Part first = same.get(0);
            if (same.size() > FEW) {
                joined.add(new Part(first.kind(), List.of(), false, plain(first.due()), null, null));
            } else {
                joined.addAll(same);
            }
        }
        return joined;
    }

    private static Due plain(Due due) {
        return due instanceof Due.Remarked remarked ? plain(remarked.due()) : due;
    }

    private List<Part> of(Due due) {
        if (due instanceof Due.By by) {
            return by.dates().stream().map(date -> part(Kind.DAY, new Due.By(List.of(date), by.year()), null, next(date, today))).toList();
        }
        if (due instanceof Due.Window window) {
            LocalDate closes = next(window.closes(), today);
            return List.of(part(Kind.DAY, due, before(window.opens(), closes), closes));
        }
        if (due instanceof Due.Cases cases) {
            List<Part> parts = new ArrayList<>();
            for (Due.Case one : cases.cases()) {
                boolean others = one != cases.cases().get(0);
                of(one.due()).forEach(part -> parts.add(part.under(one.when(), others)));
            }
            return parts;
        }
        if (due instanceof Due.Remarked remarked) {
            return of(remarked.due()).stream().map(part -> remarked(part, remarked)).toList();
        }
        if (due instanceof Due.With with) {
            return List.of(with(with));
        }
        boolean through = due instanceof Due.None || due instanceof Due.YearEnd || due instanceof Due.InPeriod;
        return List.of(part(through ? Kind.THROUGH : Kind.HANGS, due, null, null));
    }

    private static Part part(Kind kind, Due due, LocalDate opens, LocalDate day) {
        return new Part(kind, List.of(), false, due, opens, day);
    }

    /** A day beside the law's is told in words; it stands for the law's where that has none. */
    private Part remarked(Part part, Due.Remarked remarked) {
        Due whole = new Due.Remarked(part.due(), remarked.opens(), remarked.advisory(), remarked.practice(), remarked.note());
        if (part.day() != null) {
            LocalDate opens = remarked.opens() instanceof Due.By by ? before(by.dates().get(0), part.day()) : part.opens();
            return new Part(part.kind(), part.when(), part.otherwise(), whole, opens, part.day());
        }
        Due beside = remarked.practice() != null ? remarked.practice() : remarked.advisory();
        boolean custom = part.due() instanceof Due.None && beside instanceof Due.By;
        return new Part(custom ? Kind.CUSTOM : part.kind(), part.when(), part.otherwise(), whole, null,
                custom ? next(((Due.By) beside).dates().get(0), today) : null);
    }

    /** What goes with a duty of one fixed day has its day. */
    private Part with(Due.With with) {
        Optional<Requirement> other = pathway.asks().stream().filter(asked -> asked.id().equals(with.requirement())
                || asked.localId().equals(with.requirement())).findFirst();
        // two duties that go with each other have no day
        List<Part> parts = other.isEmpty() || depth > MOST_STEPS ? List.of() : further(other.get().due());
        Part only = parts.size() == 1 ? parts.get(0) : null;
        return only == null || only.day() == null ? part(Kind.HANGS, with, null, null)
                : part(only.kind(), with, only.opens(), only.day());
    }

    private List<Part> further(Due due) {
        depth++;
        List<Part> parts = of(due);
        depth--;
        return parts;
    }

    /** @return the next such day, today included; February 29 is February 28 where there is none */
    static LocalDate next(MonthDay date, LocalDate today) {
        LocalDate day = date.atYear(today.getYear());
        return day.isBefore(today) ? date.atYear(today.getYear() + 1) : day;
    }

    private static LocalDate before(MonthDay date, LocalDate day) {
        LocalDate same = date.atYear(day.getYear());
        return same.isAfter(day) ? date.atYear(day.getYear() - 1) : same;
    }
}
