package org.hearthrule.input;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** Skips a byte-order mark and knows how many characters were read and whether the end was reached. */
final class CountingReader extends FilterReader {

    private long count;
    private boolean started;
    private boolean ended;

    CountingReader(Reader reader) {
        super(reader);
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
        int got = in.read(buffer, offset, length);
        if (!started && got > 0) {
            started = true;
            if (buffer[offset] == '\uFEFF') {
                if (got == 1) {
                    return read(buffer, offset, length);
                }
                System.arraycopy(buffer, offset + 1, buffer, offset, got - 1);
                got--;
            }
        }
        if (got < 0) {
            ended = true;
        } else {
            count += got;
        }
        return got;
    }

    @Override
    public int read() throws IOException {
        char[] one = new char[1];
        return read(one, 0, 1) < 0 ? -1 : one[0];
    }

    @Override
    public void close() {
        // the one who opened the reader closes it
    }

    /** How many characters were handed on. */
    long count() {
        return count;
    }

    /** Whether the end was reached. */
    boolean hasEnded() {
        return ended;
    }
}
