package org.hearthrule.tables;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.time.LocalTime;

/** What a cell holds. A table as text holds texts only; a spreadsheet knows days, times and numbers as well. */
public sealed interface CellValue {

    /** @return the value as it is shown and, in a column of words, taken over */
    String shown();

    /** Words, without space around them. */
    record Text(String shown) implements CellValue { }

    /** A number. */
    record Figure(BigDecimal number) implements CellValue {
        @Override
        public String shown() {
            return number.toPlainString();
        }
    }

    /** A day, perhaps with a time of day. */
    record Moment(LocalDateTime at) implements CellValue {
        @Override
        public String shown() {
            return at.toLocalTime().equals(LocalTime.MIDNIGHT) ? at.toLocalDate().toString()
                    : at.toString().replace('T', ' ');
        }
    }

    /**
     * A span of time, or a time of day.
     *
     * @param minutes   as exactly as the spreadsheet has it
     * @param isOfDay   whether it is shown as a time of day (AM or PM), which is no span
     */
    record Span(BigDecimal minutes, boolean isOfDay) implements CellValue {
        private static final long HOUR = 60;

        @Override
        public String shown() {
            BigDecimal seconds = minutes.multiply(BigDecimal.valueOf(HOUR)).setScale(0, RoundingMode.HALF_UP);
            long all = seconds.longValue();
            long rest = all % HOUR;
            String text = all / HOUR / HOUR + ":" + two(all / HOUR % HOUR);
            return rest == 0 ? text : text + ':' + two(rest);
        }

        private static String two(long number) {
            return number < 10 ? "0" + number : Long.toString(number);
        }
    }

    /**
     * No value, although something stands in the cell.
     *
     * @param shown  such as {@code #REF!}, or {@code a formula}
     * @param advice a remedy
     */
    record Fault(String shown, String advice) implements CellValue { }
}
