package org.hearthrule.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * What a file contained when it was read, as a SHA-256 (FIPS 180-4): equal hashes mean equal content.
 *
 * @param hex 64 small hexadecimal digits; empty for a file that was not there
 */
public record Hash(String hex) {

    /** Stands for a file that is not there. */
    public static final Hash NONE = new Hash("");

    private static final String DIGITS = "0123456789abcdef";

    /** @return the hash of these bytes */
    public static Hash of(byte[] content) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
            StringBuilder hex = new StringBuilder(digest.length * 2);
            for (byte one : digest) {
                hex.append(DIGITS.charAt(one >> 4 & 15)).append(DIGITS.charAt(one & 15));
            }
            return new Hash(hex.toString());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * @return the hash of a file, {@link #NONE} when it is not there
     * @throws IOException when it is there and cannot be read
     */
    public static Hash of(Path file) throws IOException {
        try {
            return of(Files.readAllBytes(file));
        } catch (NoSuchFileException e) {
            return NONE;
        }
    }
}
