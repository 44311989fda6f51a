package org.hearthrule.records;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Keeps two writers out of one book, in this process and in others. The operating system gives the lock back when a
 * process dies. The file itself stays: to delete it would let two writers hold a lock each, one on the deleted file.
 *
 * <p>A thread may take the lock of a book once, and gives it back itself. Whoever gets it finds the book whole: a
 * restore that was cut off is brought to its end first, or taken back.
 */
public final class FolderLock implements Closeable {

    static final String FILE = ".lock";

    static final Duration PATIENCE = Duration.ofSeconds(5);
    private static final long PAUSE_MILLIS = 20;
    private static final Map<Path, ReentrantLock> HERE = new ConcurrentHashMap<>();

    private final ReentrantLock here;
    private final FileChannel channel;

    private FolderLock(ReentrantLock here, FileChannel channel) {
        this.here = here;
        this.channel = channel;
    }

    /**
     * Waits up to five seconds for other writers of a book.
     *
     * @param folder of the book; must be there
     * @return the lock, to be closed by the same thread
     * @throws BookBusyException when another writer does not finish
     */
    public static FolderLock take(Path folder) throws IOException {
        return take(folder, PATIENCE);
    }

    static FolderLock take(Path folder, Duration patience) throws IOException {
        long end = System.nanoTime() + patience.toNanos();
        ReentrantLock here = HERE.computeIfAbsent(folder.toRealPath(), path -> new ReentrantLock());
        try {
            if (!here.tryLock(patience.toNanos(), TimeUnit.NANOSECONDS)) {
                throw new BookBusyException(folder);
            }
            FileChannel channel = null;
            try {
                channel = FileChannel.open(folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                while (!isLocked(channel)) {
                    if (System.nanoTime() > end) {
                        throw new BookBusyException(folder);
                    }
                    Thread.sleep(PAUSE_MILLIS);
                }
                BookArchiveSwap.finish(folder);
                return new FolderLock(here, channel);
            } catch (IOException | InterruptedException e) {
                if (channel != null) {
                    channel.close();
                }
                here.unlock();
                throw e;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new BookBusyException(folder);
        }
    }

    private static boolean isLocked(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) {
            return false;
        } catch (ClosedChannelException e) {
            throw e;
        } catch (IOException e) {
            return true; // some drives in a network know no locks; the hashes still tell of a change
        }
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close(); // gives the lock back
        } finally {
            here.unlock();
        }
    }
}
