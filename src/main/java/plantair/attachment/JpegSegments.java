package plantair.attachment;

import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;

/**
 * Walks a JPEG to its end. A phone may put a second picture or a few seconds of film behind it; a program or a paper there
 * is refused. Source: ITU-T T.81, annex B.
 */
final class JpegSegments {

    private static final int START = 0xD8;
    private static final int END = 0xD9;
    private static final int SCAN = 0xDA;
    private static final int FIRST_RESTART = 0xD0;

    private JpegSegments() {}

    /** @throws RefusedFile when it breaks off before its end, or something is hidden behind it */
    static void check(InputStream file) throws IOException, RefusedFile {
        var in = new DataInputStream(file);
        try {
            in.skipNBytes(2);
            int marker = marker(in, in.readUnsignedByte());
            while (marker != END) {
                marker = marker(in, marker == SCAN ? scan(in) : segment(in, marker));
            }
        } catch (EOFException cut) {
            throw new RefusedFile(RefusedFile.Reason.BROKEN);
        }
        if (HiddenParts.BEHIND_A_PICTURE.areIn(in)) {
            throw new RefusedFile(RefusedFile.Reason.MORE_BEHIND);
        }
    }

    /** The kind of the segment that begins here; any number of fill bytes may stand before it. */
    private static int marker(DataInputStream in, int first) throws IOException, RefusedFile {
        int next = first;
        if (next != 0xFF) {
            throw new RefusedFile(RefusedFile.Reason.BROKEN);
        }
        while (next == 0xFF) {
            next = in.readUnsignedByte();
        }
        return next;
    }

    /** Passes over a segment and gives the byte behind it. */
    private static int segment(DataInputStream in, int marker) throws IOException, RefusedFile {
        boolean hasLength = marker != 1 && (marker < FIRST_RESTART || marker > START);
        if (hasLength) {
            passOver(in);
        }
        return in.readUnsignedByte();
    }

    private static void passOver(DataInputStream in) throws IOException, RefusedFile {
        int length = in.readUnsignedShort();
        if (length < 2) {
            throw new RefusedFile(RefusedFile.Reason.BROKEN);
        }
        in.skipNBytes(length - 2L);
    }

    /** Passes over the compressed points that follow the head of a scan: there a marker has neither zero nor restart. */
    private static int scan(DataInputStream in) throws IOException, RefusedFile {
        passOver(in);
        in.mark(2);
        int before = in.readUnsignedByte();
        int next = in.readUnsignedByte();
        while (before != 0xFF || next == 0 || next == 0xFF || isRestart(next)) {
            in.reset();
            in.skipNBytes(1);
            in.mark(2);
            before = in.readUnsignedByte();
            next = in.readUnsignedByte();
        }
        in.reset();
        return in.readUnsignedByte();
    }

    private static boolean isRestart(int marker) {
        return marker >= FIRST_RESTART && marker < START;
    }
}
