package org.hearthrule.checklist;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** Writes JSON set out for a reader, with {@code \n} between lines on every system. */
public final class Json {

    private static final JsonFactory FACTORY = new JsonFactory();
    private static final Separators SEPARATORS = Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER).withObjectEmptySeparator("").withArrayEmptySeparator("");

    private Json() { }

    /** Writes one value. */
    public interface Body {
        void write(JsonGenerator json) throws IOException;
    }

    /** @return the text of one JSON value, its last line ended */
    public static String write(Body body) {
        StringWriter out = new StringWriter(8_000);
        try (JsonGenerator json = FACTORY.createGenerator(out)) {
            DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
            DefaultPrettyPrinter printer = new DefaultPrettyPrinter(SEPARATORS);
            printer.indentObjectsWith(indenter);
            printer.indentArraysWith(indenter);
            json.setPrettyPrinter(printer);
            body.write(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.append('\n').toString();
    }

    /** Writes a text or null. */
    static void text(JsonGenerator json, String name, String value) throws IOException {
        json.writeFieldName(name);
        if (value == null) {
            json.writeNull();
        } else {
            json.writeString(value);
        }
    }

    /** Writes a day such as {@code 2027-06-30} or null. */
    static void day(JsonGenerator json, String name, LocalDate value) throws IOException {
        text(json, name, value == null ? null : value.toString());
    }

    static void texts(JsonGenerator json, String name, List<String> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }

    /** Writes what was counted: numbers, yes or no, texts, lists of them. */
    static void counted(JsonGenerator json, Map<String, Object> counted) throws IOException {
        json.writeObjectFieldStart("counted");
        for (Map.Entry<String, Object> entry : counted.entrySet()) {
            json.writeFieldName(entry.getKey());
            value(json, entry.getValue());
        }
        json.writeEndObject();
    }

    private static void value(JsonGenerator json, Object value) throws IOException {
        if (value == null) {
            json.writeNull();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object item : list) {
                value(json, item);
            }
            json.writeEndArray();
        } else if (value instanceof Integer || value instanceof Long) {
            json.writeNumber(((Number) value).longValue());
        } else if (value instanceof BigDecimal number) {
            json.writeNumber(number.toPlainString());
        } else if (value instanceof Double number) {
            json.writeNumber(number);
        } else if (value instanceof Boolean is) {
            json.writeBoolean(is);
        } else {
            json.writeString(value.toString());
        }
    }
}
