package org.hearthrule.law;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** Names a text by its content. */
final class Sha256 {

    private static final char[] HEX = "0123456789abcdef".toCharArray();

    private Sha256() { }

    /** @return SHA-256 of the text in UTF-8, as 64 hexadecimal digits */
    static String hex(String text) {
        byte[] digest;
        try {
            digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
        char[] out = new char[digest.length * 2];
        for (int i = 0; i < digest.length; i++) {
            out[2 * i] = HEX[(digest[i] >> 4) & 0xF];
            out[2 * i + 1] = HEX[digest[i] & 0xF];
        }
        return new String(out);
    }
}
