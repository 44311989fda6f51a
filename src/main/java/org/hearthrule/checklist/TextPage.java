package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hearthrule.input.Unseen;
import org.hearthrule.terms.Wording;

/**
 * Text set for a terminal, line by line: paragraphs wrapped on words, hairlines, a date column beside its text.
 *
 * <p>Characters that cannot be seen are shown as escapes, so that text from a file never steers the terminal. Not safe
 * for use by several threads at once.
 */
public final class TextPage {

    /** Columns of the date column: the longest date, {@code September 30, 2027}, and two spaces. */
    static final int DATES = 20;

    private final Style style;
    private final Set<String> months;
    private final StringBuilder out = new StringBuilder(8_000);

    public TextPage(Style style, Wording wording) {
        this.style = style;
        this.months = new HashSet<>(wording.months());
    }

    public Style style() {
        return style;
    }

    /** Adds one line as it is. */
    public TextPage line(String text) {
        int end = text.length();
        while (end > 0 && text.charAt(end - 1) == ' ') {
            end--;
        }
        out.append(text, 0, end).append('\n');
        return this;
    }

    public TextPage blank() {
        out.append('\n');
        return this;
    }

    /** Adds a paragraph, wrapped, after so many spaces. */
    public TextPage paragraph(int indent, String text) {
        for (String line : wrap(text, style.columns() - indent)) {
            line(" ".repeat(indent) + line);
        }
        return this;
    }

    /** Adds a paragraph whose later lines are set in further than the first. */
    public TextPage hanging(int indent, String mark, String text) {
        int in = indent + Width.of(mark);
        List<String> lines = wrap(text, style.columns() - in);
        line(" ".repeat(indent) + mark + lines.get(0));
        lines.subList(1, lines.size()).forEach(line -> line(" ".repeat(in) + line));
        return this;
    }

    /** Adds a heading with a hairline to the margin. */
    public TextPage heading(String text) {
        String plain = clean(text);
        int rest = style.columns() - Width.of(plain) - 1;
        return line(style.bold(plain) + ' ' + hairline(rest));
    }

    private String hairline(int columns) {
        return style.dim((style.unicode() ? "─" : "-").repeat(Math.max(0, columns)));
    }

    /**
     * Adds lines side by side.
     *
     * @param left      the date column
     * @param leftPlain the same without weight
     * @param right     the text column
     */
    TextPage beside(List<String> left, List<String> leftPlain, List<String> right) {
        for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
            String l = i < left.size() ? left.get(i) : "";
            int width = i < left.size() ? Width.of(leftPlain.get(i)) : 0;
            String r = i < right.size() ? right.get(i) : "";
            line(l + " ".repeat(Math.max(1, DATES - width)) + r);
        }
        return this;
    }

    /** @return the text in lines of at most so many columns; longer words stay whole. Never empty. */
    public List<String> wrap(String text, int columns) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int width = 0;
        for (String word : words(clean(text))) {
            int more = Width.of(word);
            if (width > 0 && width + 1 + more > columns) {
                lines.add(line.toString());
                line.setLength(0);
                width = 0;
            }
            if (width > 0) {
                line.append(' ');
                width++;
            }
            line.append(word);
            width += more;
        }
        lines.add(line.toString());
        return lines;
    }

    /** Words, where what must not stand on two lines counts as one: {@code June 30,} and {@code § 22-5}. */
    private List<String> words(String text) {
        List<String> words = new ArrayList<>();
        int from = 0;
        boolean glued = false;
        for (int i = 0; i <= text.length(); i++) {
            if (i == text.length() || text.charAt(i) == ' ' || text.charAt(i) == '\n') {
                if (i > from) {
                    String word = text.substring(from, i);
                    boolean digit = word.charAt(0) >= '0' && word.charAt(0) <= '9';
                    int last = words.size() - 1;
                    if (last >= 0 && (glued || digit && months.contains(words.get(last)))) {
                        words.set(last, words.get(last) + ' ' + word);
                    } else {
                        words.add(word);
                    }
                    glued = word.equals("§") || word.equals("§§");
                }
                from = i + 1;
            }
        }
        return words;
    }

    /** @return the text as it can be shown here */
    public String clean(String text) {
        String seen = visible(text);
        return style.unicode() ? seen : Ascii.of(seen);
    }

    private static String visible(String text) {
        return text.codePoints().anyMatch(TextPage::isUnseen) ? escaped(text) : text;
    }

    private static boolean isUnseen(int c) {
        return c != '\n' && Unseen.is(c);
    }

    private static String escaped(String text) {
        StringBuilder out = new StringBuilder(text.length() + 12);
        text.codePoints().forEach(c -> {
            if (isUnseen(c)) {
                out.append(String.format("\\u%04X", c));
            } else {
                out.appendCodePoint(c);
            }
        });
        return out.toString();
    }

    /** @return everything added so far */
    @Override
    public String toString() {
        return out.toString();
    }
}
