package org.hearthrule.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hearthrule.law.AttendanceAge.Ends;
import org.hearthrule.law.AttendanceAge.Starts;
import org.junit.jupiter.api.Test;

/**
 * Compulsory ages of every profile against a published table: NCES, State Education Reforms, Table 1.2, "Age of
 * required school attendance", 2020.
 */
class CompulsoryAgesTest {

    private static final Path TABLE = Path.of("test-fixtures", "reference", "nces-compulsory-attendance-2020.csv");

    /** A day in the school year the table speaks of. */
    private static final LocalDate DAY = LocalDate.of(2020, 9, 15);

    /** Why a profile differs from the table: code, ages of the profile, source of the change or clause, and in words. */
    private static final Path EXPLAINED = Path.of("test-fixtures", "reference", "age-differences.csv");

    private record Ages(int from, int to) { }

    private record Explained(Ages ages, String source) { }

    /**
     * A wrong age silences every duty of a child who is bound, or lays duties on one who is not, and no other test
     * would see it: cases are written by those who wrote the profile.
     */
    @Test
    void agesAreThoseOfThePublishedTable() throws Exception {
        Profiles profiles = Packaged.profiles();
        Map<String, Ages> differing = new TreeMap<>();
        for (Map.Entry<String, Ages> row : published().entrySet()) {
            Ages own = own(profiles.find(row.getKey()));
            if (!own.equals(row.getValue())) {
                differing.put(row.getKey(), own);
            }
        }

        Map<String, Ages> explained = new TreeMap<>();
        explained().forEach((code, why) -> explained.put(code, why.ages()));
        assertThat(differing).as("profiles that differ from the table").isEqualTo(explained);
    }

    /** An explanation rests on a text that the profile itself cites for its ages or for a change. */
    @Test
    void everyDifferenceIsExplainedByACitedText() throws Exception {
        Profiles profiles = Packaged.profiles();
        for (Map.Entry<String, Explained> why : explained().entrySet()) {
            Profile profile = profiles.find(why.getKey());
            List<String> cited = new ArrayList<>();
            profile.attendance().forEach(age -> age.cites().forEach(cite -> cited.add(cite.source().key())));
            profile.changes().forEach(change -> cited.add(change.cite().source().key()));
            assertThat(cited).as(why.getKey()).contains(why.getValue().source());
        }
    }

    /** The entry for everybody: those for a place or a choice stand before it and have a condition. */
    private static Ages own(Profile profile) {
        AttendanceAge age = profile.attendance().stream().filter(one -> one.validity().inForceOn(DAY)
                        && one.when().equals(Condition.ALWAYS)).findFirst()
                .orElseThrow(() -> new AssertionError(profile.code() + " has no compulsory ages in 2020-21"));
        return new Ages(starts(age.starts()).min().orElseThrow(), ends(age.ends()).max().orElseThrow());
    }

    private static IntStream starts(Starts starts) {
        if (starts instanceof Starts.Birthday birthday) {
            return IntStream.of(birthday.age());
        }
        if (starts instanceof Starts.ByDate byDate) {
            return IntStream.of(byDate.age());
        }
        if (starts instanceof Starts.CalendarYear calendar) {
            return IntStream.of(calendar.age());
        }
        if (starts instanceof Starts.BySchoolFirstDay first) {
            return IntStream.of(first.age());
        }
        List<Starts> parts = starts instanceof Starts.EarlierOf earlier ? earlier.parts()
                : ((Starts.LaterOf) starts).parts();
        return parts.stream().flatMapToInt(CompulsoryAgesTest::starts);
    }

    /** Exits by an event, such as a diploma, carry no age. */
    private static IntStream ends(Ends ends) {
        if (ends instanceof Ends.Birthday birthday) {
            return IntStream.of(birthday.age());
        }
        if (ends instanceof Ends.YearEnd yearEnd) {
            return IntStream.of(yearEnd.age());
        }
        if (ends instanceof Ends.ByDate byDate) {
            return IntStream.of(byDate.age());
        }
        List<Ends> parts = ends instanceof Ends.EarlierOf earlier ? earlier.parts()
                : ends instanceof Ends.LaterOf later ? later.parts() : List.of();
        return parts.stream().flatMapToInt(CompulsoryAgesTest::ends);
    }

    private static Map<String, Ages> published() throws IOException {
        Map<String, Ages> table = new TreeMap<>();
        for (List<String> cells : rows(TABLE)) {
            table.put(cells.get(0), new Ages(Integer.parseInt(cells.get(2)), Integer.parseInt(cells.get(3))));
        }
        assertThat(table).as("rows of the table that were read").hasSize(47);
        return table;
    }

    private static Map<String, Explained> explained() throws IOException {
        Map<String, Explained> explained = new TreeMap<>();
        for (List<String> cells : rows(EXPLAINED)) {
            Ages ages = new Ages(Integer.parseInt(cells.get(1)), Integer.parseInt(cells.get(2)));
            assertThat(cells).as("the reason in words").hasSizeGreaterThan(4);
            explained.put(cells.get(0), new Explained(ages, cells.get(3)));
        }
        return explained;
    }

    private static List<List<String>> rows(Path file) throws IOException {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.filter(one -> one.startsWith("US-")).map(line -> List.of(line.split(","))).toList();
        }
    }
}
