package plantair;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import org.h2.store.fs.FileBaseDefault;

/** A file that has a reserve for the write that finds the disk full. */
final class ReservedFile extends FileBaseDefault {

    private final FileChannel file;
    private final DiskReserve reserve;

    ReservedFile(FileChannel file, DiskReserve reserve) {
        this.file = file;
        this.reserve = reserve;
    }

    @Override
    public int write(ByteBuffer from, long position) throws IOException {
        int begin = from.position();
        try {
            return file.write(from, position);
        } catch (IOException full) {
            if (!reserve.spend()) {
                throw full;
            }
            return file.write(from.position(begin), position);
        }
    }

    @Override
    public int read(ByteBuffer to, long position) throws IOException {
        return file.read(to, position);
    }

    @Override
    public long size() throws IOException {
        return file.size();
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
