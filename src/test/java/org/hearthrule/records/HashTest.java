package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HashTest {

    // "abc" is the one-block example of NIST's SHA-256 example values for FIPS 180
    @Test
    void hashIsSha256InSmallHexadecimalDigits() {
        assertThat(Hash.of("abc".getBytes(StandardCharsets.US_ASCII)).hex())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void missingFileHasNoHash(@TempDir Path folder) throws IOException {
        assertThat(Hash.of(folder.resolve("family.json"))).isEqualTo(Hash.NONE);
    }
}
