package org.hearthrule.tables;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * A log of a year as a family keeps it in a spreadsheet: 400 rows of the Kestlers of Tennick Landing, with times in
 * three ways, subjects by the family's own names, five rows entered twice and one day that does not exist. The same
 * rows as text and as a spreadsheet, which knows most days as days; always the same bytes.
 */
final class YearOfDays {

    static final int ROWS = 400;
    static final int TWICE = 5;
    static final String NO_DAY = "2/30/2027";

    private static final List<String> HEADERS = List.of("Date", "Who", "Time", "Subject", "What we did", "Weather");
    private static final List<String> WHO = List.of("Wren", "Ansel", "Marit", "Wren & Ansel", "Ansel & Marit", "Everybody");
    private static final List<String> WEATHER = List.of("fog", "clear", "rain", "wind from the west", "", "");
    private static final String[][] WORK = {
        {"Math", "Worked out how many planks the jetty needs, %d with waste."},
        {"Math", "Long division, page %d, with a story for every step."},
        {"Math", "Made change for the ferry fares: %d dollars in quarters and dimes."},
        {"Reading", "Read chapter %d aloud, everybody took a page."},
        {"Reading", "Read \"The Brass Weathercock\", chapter %d, on the ramp."},
        {"Language Arts", "Wrote a page about the otters, draft %d."},
        {"Language Arts", "Copied %d lines of a ballad, with all the tails where they belong."},
        {"Spelling", "Spelling in the frost on the window, %d words right."},
        {"Science", "Looked at river water through the lens, drew %d things that move."},
        {"Science", "Measured the river gauge at noon, day %d of the chart."},
        {"Nature Study", "Walked the levee path and found %d kinds of seed."},
        {"Nature Study", "Counted %d herons from the landing, one did not move."},
        {"Social Studies", "Read about the first cities, made a table of %d things they ate."},
        {"Social Studies", "Put pin %d in the map of our county."},
        {"PE", "Bicycled to the second gate and back, lap %d."},
        {"PE", "Swam at the sandbar, %d strokes alone."},
        {"Art", "Drew the ferry in ink, once looking, once from memory; sheet %d."},
        {"Music", "Fiddle practice, tune %d, slowly, then not."},
        {"Math; Science", "Weighed the beans for the market: %d pounds, and what they bring."},
        {"Astronomy", "Turned the dome and found %d stars by name at the observatory."},
    };

    private final Random random = new Random(20_260_901);
    private final List<Object[]> rows = new ArrayList<>();

    private YearOfDays() {
        LocalDate day = LocalDate.of(2026, 9, 1);
        for (int i = 0; i < ROWS - TWICE - 1; i++) {
            boolean next = i % 2 == 0;
            day = next ? day.plusDays(1) : day;
            while (day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY) {
                day = day.plusDays(1);
            }
            String[] work = WORK[random.nextInt(WORK.length)];
            rows.add(new Object[] {day, pick(WHO), minutes(), work[0], String.format(work[1], i + 2), pick(WEATHER)});
        }
        for (int i = 0; i < TWICE; i++) {
            rows.add(61 + 63 * i, rows.get(60 + 63 * i));
        }
        rows.add(250, new Object[] {null, "Marit", 45, "Math", "Wrote the day before March came, and the day was none.", ""});
    }

    private String pick(List<String> from) {
        return from.get(random.nextInt(from.size()));
    }

    private int minutes() {
        return 15 + 15 * random.nextInt(8);
    }

    static byte[] csv() {
        StringBuilder text = new StringBuilder("Our year at the landing,,,,,\r\n");
        text.append(String.join(",", HEADERS)).append("\r\n");
        for (Object[] row : new YearOfDays().rows) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.length; i++) {
                String cell = i == 0 ? day(row) : i == 2 ? time(row) : row[i].toString();
                boolean plain = cell.indexOf(',') < 0 && cell.indexOf('"') < 0;
                cells.add(plain ? cell : '"' + cell.replace("\"", "\"\"") + '"');
            }
            text.append(String.join(",", cells)).append("\r\n");
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String day(Object[] row) {
        return row[0] == null ? NO_DAY : DateForm.US.format((LocalDate) row[0]);
    }

    /** A third of the times stand as minutes, a third as hours and minutes, a third as hours. */
    private static String time(Object[] row) {
        int minutes = (int) row[2];
        return switch (minutes / 15 % 3) {
            case 0 -> Integer.toString(minutes);
            case 1 -> minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
            default -> new BigDecimal(minutes).divide(new BigDecimal(60)).toPlainString() + " h";
        };
    }

    static byte[] xlsx() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Workbook book = new Workbook(bytes, "Hearthrule", null);
        Worksheet notes = book.newWorksheet("Read me");
        notes.value(0, 0, "Mom's log. Friday is library day.");
        Worksheet sheet = book.newWorksheet("2026-27");
        sheet.value(0, 0, "Our year at the landing");
        for (int i = 0; i < HEADERS.size(); i++) {
            sheet.value(1, i, HEADERS.get(i));
        }
        int at = 2;
        for (Object[] row : new YearOfDays().rows) {
            put(sheet, at++, row);
        }
        book.finish();
        ByteArrayOutputStream timeless = new ByteArrayOutputStream();
        XlsxExport.timeless(bytes.toByteArray(), timeless);
        return timeless.toByteArray();
    }

    private static void put(Worksheet sheet, int at, Object[] row) {
        // every ninth day was typed in a way the program took for text
        if (row[0] == null || at % 9 == 0) {
            sheet.value(at, 0, day(row));
        } else {
            sheet.value(at, 0, (LocalDate) row[0]);
            sheet.style(at, 0).format("m/d/yyyy").set();
        }
        int minutes = (int) row[2];
        switch (minutes / 15 % 3) {
            case 0 -> sheet.value(at, 2, minutes);
            case 1 -> {
                sheet.value(at, 2, minutes / 1440.0);
                sheet.style(at, 2).format("h:mm").set();
            }
            default -> sheet.value(at, 2, time(row));
        }
        for (int i : new int[] {1, 3, 4, 5}) {
            if (!row[i].toString().isEmpty()) {
                sheet.value(at, i, row[i].toString());
            }
        }
    }
}
