package org.hearthrule.page.frame;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.hearthrule.records.Hash;

/**
 * Names a part of the book as long as nobody changes it. A form that changes something carries the print of what it was
 * made from; when it is sent and the book holds another version, both are shown.
 */
public final class Print {

    private Print() { }

    /** @return 64 hexadecimal digits, the same for parts that say the same */
    public static String of(Object part) {
        return Hash.of(String.valueOf(part).getBytes(StandardCharsets.UTF_8)).hex();
    }

    /** @return the print of what the book holds; nothing when it holds nothing */
    public static String ofHeld(Optional<?> held) {
        return held.map(Print::of).orElse("");
    }
}
