package org.hearthrule.page.frame;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;

/** Style sheets, the little script and the small pictures of the page itself. A fixed list; nothing else is ever read. */
final class Assets {

    private static final Map<String, String> TYPES = new LinkedHashMap<>();

    static {
        TYPES.put("frame.css", "text/css; charset=utf-8");
        TYPES.put("year.css", "text/css; charset=utf-8");
        TYPES.put("log.css", "text/css; charset=utf-8");
        TYPES.put("frame.js", "text/javascript; charset=utf-8");
        TYPES.put("sheet.css", "text/css; charset=utf-8");
        TYPES.put("law.css", "text/css; charset=utf-8");
        TYPES.put("law.js", "text/javascript; charset=utf-8");
        TYPES.put("readiness.css", "text/css; charset=utf-8");
        TYPES.put("readiness.js", "text/javascript; charset=utf-8");
        TYPES.put("icon.svg", "image/svg+xml");
    }

    private final Map<String, byte[]> contents = new LinkedHashMap<>();
    private final String version;

    Assets() {
        CRC32 sum = new CRC32();
        for (String name : TYPES.keySet()) {
            try (InputStream in = Assets.class.getClassLoader().getResourceAsStream("page/" + name)) {
                if (in == null) {
                    throw new IllegalStateException("no asset " + name);
                }
                byte[] content = in.readAllBytes();
                sum.update(content);
                contents.put(name, content);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        this.version = Long.toHexString(sum.getValue());
    }

    /** @return changes with any of them */
    String version() {
        return version;
    }

    Optional<byte[]> content(String name) {
        return Optional.ofNullable(contents.get(name));
    }

    String type(String name) {
        return TYPES.get(name);
    }
}
