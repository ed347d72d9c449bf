package plantair;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.h2.store.fs.FilePath;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Some room on the disk, held by a file of nothing, for the write that finds the disk full. H2 does not survive a write
 * that fails; so the reserve is given up for it, and new records are refused until there is room for the reserve again.
 */
final class DiskReserve {

    static final int BYTES = 16 << 20;

    private static final Logger LOG = LoggerFactory.getLogger(DiskReserve.class);
    private static final int PIECE = 1 << 20;
    private static final Map<String, DiskReserve> ALL = new ConcurrentHashMap<>();

    private final FilePath file;
    private boolean spent;

    private DiskReserve(FilePath file) {
        this.file = file;
        spent = !lay();
    }

    /** That of a database, laid down if it is not there. */
    static DiskReserve beside(FilePath database) {
        return ALL.compute(database + ".reserve", (path, old) -> new DiskReserve(FilePath.get(path)));
    }

    /** Whether a database of this program has spent its reserve and there is no room for it still. */
    static boolean isMissing() {
        return ALL.values().stream().anyMatch(reserve -> !reserve.renew());
    }

    /** Gives the room to a write that found none; false when it was given before. */
    synchronized boolean spend() {
        if (spent) {
            return false;
        }
        LOG.error("The disk is full: no records are taken until there is room");
        spent = true;
        file.delete();
        return true;
    }

    private synchronized boolean renew() {
        if (spent && lay()) {
            LOG.info("There is room on the disk again");
            spent = false;
        }
        return !spent;
    }

    private boolean lay() {
        if (file.exists() && file.size() == BYTES) {
            return true;
        }
        try (FileChannel to = file.open("rw")) {
            for (int written = 0; written < BYTES; written += PIECE) {
                ByteBuffer piece = ByteBuffer.allocate(PIECE);
                while (piece.hasRemaining()) {
                    to.write(piece, (long) written + piece.position());
                }
            }
            to.force(true);
            return true;
        } catch (IOException full) {
            LOG.warn("No room for a reserve on the disk: {}", full.getMessage());
            file.delete();
            return false;
        }
    }
}
