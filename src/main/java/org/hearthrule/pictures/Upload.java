package org.hearthrule.pictures;

import java.io.IOException;
import java.io.InputStream;

/**
 * A file that comes in.
 *
 * @param name    as it was called at home, or null; shown to the parent and looked at for a day, never used as a path
 * @param content opened once, read to its end or to the cap, and closed
 */
public record Upload(String name, Content content) {

    /** Opens what comes in. */
    public interface Content {
        InputStream open() throws IOException;
    }
}
