package plantair.attachment;

import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.CRC32;

/** Walks a PNG from chunk to chunk: each is whole, and nothing comes after the last. Source: PNG specification, section 5. */
final class PngChunks {

    private static final int SIGNATURE = 8;
    private static final int END = 0x49454E44;

    private PngChunks() {}

    /** @throws RefusedFile when it breaks off, a chunk is damaged, or something follows the end */
    static void check(InputStream file) throws IOException, RefusedFile {
        var in = new DataInputStream(file);
        try {
            in.readFully(new byte[SIGNATURE]);
            int type = 0;
            while (type != END) {
                type = chunk(in);
            }
        } catch (EOFException cut) {
            throw new RefusedFile(RefusedFile.Reason.BROKEN);
        }
        if (in.read() >= 0) {
            throw new RefusedFile(RefusedFile.Reason.MORE_BEHIND);
        }
    }

    private static int chunk(DataInputStream in) throws IOException, RefusedFile {
        int left = in.readInt();
        int type = in.readInt();
        var sum = new CRC32();
        for (int shift = 24; shift >= 0; shift -= 8) {
            sum.update(type >>> shift);
        }
        byte[] buffer = new byte[8192];
        while (left > 0) {
            int length = Math.min(left, buffer.length);
            in.readFully(buffer, 0, length);
            sum.update(buffer, 0, length);
            left -= length;
        }
        if (left < 0 || (int) sum.getValue() != in.readInt()) {
            throw new RefusedFile(RefusedFile.Reason.BROKEN);
        }
        return type;
    }
}
