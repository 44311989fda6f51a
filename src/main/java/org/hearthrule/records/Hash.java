package org.hearthrule.records;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What a file contained when it was read, as a SHA-256 (FIPS 180-4): equal hashes mean equal content.
 *
 * @param hex 64 small hexadecimal digits; empty for a file that was not there
 */
public record Hash(String hex) {

    /** Stands for a file that is not there. */
    public static final Hash NONE = new Hash("");

    /** @return a new sum, to be fed and handed to {@link #of(MessageDigest)} */
    public static MessageDigest sum() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** @return the hash of all that was fed to a sum, which begins anew */
    public static Hash of(MessageDigest sum) {
        return new Hash(HexFormat.of().formatHex(sum.digest()));
    }

    /** @return the hash of these bytes */
    public static Hash of(byte[] content) {
        MessageDigest sum = sum();
        sum.update(content);
        return of(sum);
    }

    /**
     * @return the hash of a file, {@link #NONE} when it is not there
     * @throws IOException when it is there and cannot be read
     */
    public static Hash of(Path file) throws IOException {
        MessageDigest sum = sum();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), sum)) {
            in.transferTo(OutputStream.nullOutputStream());
            return of(sum);
        } catch (NoSuchFileException e) {
            return NONE;
        }
    }
}
