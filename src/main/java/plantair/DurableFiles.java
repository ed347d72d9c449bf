package plantair;

import java.io.IOException;
import java.nio.channels.FileChannel;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * Files whose every write is on the disk before it returns, for database addresses that begin with {@code
 * jdbc:h2:durable:}. H2 by itself leaves a commit with the operating system, which a killed process survives but a power
 * cut does not. Beside the file of a database lies a {@link DiskReserve}.
 */
public final class DurableFiles extends FilePathWrapper {

    private static final String DATABASE = ".mv.db";

    /** Makes the scheme known to H2; before the first connection. */
    static void register() {
        FilePath.register(new DurableFiles());
    }

    @Override
    public String getScheme() {
        return "durable";
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        if (!mode.equals("rw")) {
            return getBase().open(mode);
        }
        FileChannel file = getBase().open("rwd");
        return getName().endsWith(DATABASE) ? new ReservedFile(file, DiskReserve.beside(getBase())) : file;
    }
}
