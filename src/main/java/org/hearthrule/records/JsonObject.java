package org.hearthrule.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Gathers the keys of one object in their order and leaves out what was not entered. */
final class JsonObject {

    private final Map<String, Object> values = new LinkedHashMap<>();

    /** Adds a value unless it is null or an empty text, list or map. Dates become text. */
    JsonObject with(String key, Object value) {
        boolean nothing = value == null || value.equals("")
                || value instanceof Collection<?> list && list.isEmpty()
                || value instanceof Map<?, ?> map && map.isEmpty();
        if (!nothing) {
            values.put(key, plain(value));
        }
        return this;
    }

    /** Adds a list even when it is empty, but not when it is null. */
    JsonObject withEvenEmpty(String key, List<?> list) {
        if (list != null) {
            values.put(key, list);
        }
        return this;
    }

    /** Adds a list of objects unless it is empty. */
    <T> JsonObject withEach(String key, List<T> list, Function<T, JsonObject> object) {
        return with(key, each(list, object));
    }

    static <T> List<Map<String, Object>> each(List<T> list, Function<T, JsonObject> object) {
        List<Map<String, Object>> objects = new ArrayList<>(list.size());
        for (T entry : list) {
            objects.add(object.apply(entry).values);
        }
        return objects;
    }

    Map<String, Object> values() {
        return values;
    }

    private static Object plain(Object value) {
        if (value instanceof LocalDate) {
            return value.toString();
        }
        if (value instanceof List<?> list && list.get(0) instanceof LocalDate) {
            List<String> dates = new ArrayList<>(list.size());
            for (Object date : list) {
                dates.add(date.toString());
            }
            return dates;
        }
        return value;
    }
}
