package org.hearthrule.page.frame;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/** A word that nobody can guess: 256 random bits. */
final class Secret {

    private static final int BYTES = 32;

    private final String word;

    private Secret(String word) {
        this.word = word;
    }

    static Secret fresh() {
        byte[] bytes = new byte[BYTES];
        new SecureRandom().nextBytes(bytes);
        return new Secret(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    String word() {
        return word;
    }

    /** Compares in a time that tells nothing about how much of a guess was right. */
    boolean is(String guess) {
        return guess != null && MessageDigest.isEqual(word.getBytes(StandardCharsets.UTF_8),
                guess.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public String toString() {
        return "secret";
    }
}
