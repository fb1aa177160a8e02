package dev.fairlead.web.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;

/**
 * The turn to write in a folder: one thread of one program at a time. A file lock is held by the whole program, so
 * threads of one program wait for each other first.
 */
final class FolderLock implements AutoCloseable {
    private static final Map<Path, ReentrantLock> WITHIN = new ConcurrentHashMap<>();

    private final ReentrantLock within;
    private final FileChannel channel;

    private FolderLock(ReentrantLock within, FileChannel channel) {
        this.within = within;
        this.channel = channel;
    }

    /** Waits for the turn. */
    static FolderLock take(Path lockFile) throws IOException {
        ReentrantLock within = WITHIN.computeIfAbsent(lockFile, p -> new ReentrantLock());
        within.lock();
        FileChannel channel = null;
        try {
            channel = FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock held = channel.lock();
            if (!held.isValid()) {
                throw new IOException("the lock of the folder was lost");
            }
            return new FolderLock(within, channel);
        } catch (IOException | RuntimeException e) {
            within.unlock();
            if (channel != null) {
                channel.close();
            }
            throw e;
        }
    }

    @Override
    public void close() throws IOException {
        try {
            // closing the channel gives the file lock back
            channel.close();
        } finally {
            within.unlock();
        }
    }
}
