package plantair;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.util.concurrent.atomic.AtomicLong;
import org.h2.store.fs.FileBaseDefault;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * Files on a disk that a test can fill, for addresses {@code jdbc:h2:durable:limited:}. While it is full, a write that
 * makes a file longer writes half of it and fails with the words of Linux; one within the file is done, as on a real disk.
 */
public final class LimitedFiles extends FilePathWrapper {

    private static final AtomicLong ROOM = new AtomicLong(Long.MAX_VALUE / 2);

    static void register() {
        DurableFiles.register();
        FilePath.register(new LimitedFiles());
    }

    static void setFull(boolean now) {
        ROOM.set(now ? 0 : Long.MAX_VALUE / 2);
    }

    /** What a file that is taken away had, is there for others. */
    @Override
    public void delete() {
        long size = exists() ? size() : 0;
        super.delete();
        ROOM.addAndGet(size);
    }

    @Override
    public String getScheme() {
        return "limited";
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        return new Channel(getBase().open(mode));
    }

    private static final class Channel extends FileBaseDefault {

        private final FileChannel file;

        Channel(FileChannel file) {
            this.file = file;
        }

        @Override
        public long size() throws IOException {
            return file.size();
        }

        @Override
        public int read(ByteBuffer to, long position) throws IOException {
            return file.read(to, position);
        }

        @Override
        public int write(ByteBuffer from, long position) throws IOException {
            long longer = Math.max(position + from.remaining() - file.size(), 0);
            if (ROOM.addAndGet(-longer) < 0) {
                ROOM.addAndGet(longer);
                ByteBuffer half = from.slice(from.position(), from.remaining() / 2);
                file.write(half, position);
                throw new IOException("No space left on device");
            }
            return file.write(from, position);
        }

        @Override
        protected void implTruncate(long size) throws IOException {
            file.truncate(size);
        }

        @Override
        public void force(boolean metaData) throws IOException {
            file.force(metaData);
        }

        @Override
        public FileLock tryLock(long position, long size, boolean shared) throws IOException {
            return file.tryLock(position, size, shared);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            file.close();
        }
    }
}
