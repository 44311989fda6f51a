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
import org.hearthrule.terms.Subjects;
import org.junit.jupiter.api.Test;

/**
 * Compulsory ages of every profile against a published table: NCES, State Education Reforms, Table 1.2, "Age of
 * required school attendance", 2020.
 */
class CompulsoryAgesTest {

    private static final Path TABLE = Path.of("test-fixtures", "reference", "nces-compulsory-attendance-2020.csv");

    /** A day in the school year the table speaks of. */
    private static final LocalDate DAY = LocalDate.of(2020, 9, 15);

    /** Code to the cited change or clause that explains why profile and table differ. None so far. */
    private static final Map<String, String> EXPLAINED = Map.of();

    private record Ages(int from, int to) { }

    /**
     * A wrong age silences every duty of a child who is bound, or lays duties on one who is not, and no other test
     * would see it: cases are written by those who wrote the profile.
     */
    @Test
    void agesAreThoseOfThePublishedTable() throws Exception {
        Map<String, Ages> published = published();
        Profiles profiles = Profiles.packaged(new ProfileReader(Subjects::known, Subjects.ids()));
        Map<String, String> differing = new TreeMap<>();
        int compared = 0;
        for (String code : profiles.codes()) {
            Ages table = published.get(code);
            if (table != null) {
                compared++;
                Ages own = own(profiles.find(code));
                if (!own.equals(table)) {
                    differing.put(code, "profile " + own + ", table " + table);
                }
            }
        }

        assertThat(compared).as("jurisdictions compared").isGreaterThanOrEqualTo(8);
        assertThat(differing.keySet()).as("differences: " + differing).isEqualTo(EXPLAINED.keySet());
    }

    private static Ages own(Profile profile) {
        AttendanceAge age = profile.attendance().stream().filter(one -> one.validity().inForceOn(DAY)).findFirst()
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
        try (Stream<String> lines = Files.lines(TABLE)) {
            for (String line : lines.filter(one -> one.startsWith("US-")).toList()) {
                List<String> cells = new ArrayList<>(List.of(line.split(",")));
                table.put(cells.get(0), new Ages(Integer.parseInt(cells.get(2)), Integer.parseInt(cells.get(3))));
            }
        }
        return table;
    }
}
