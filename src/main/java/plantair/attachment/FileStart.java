package plantair.attachment;

import java.nio.charset.StandardCharsets;
import java.util.Set;

/** Tells a format from the first bytes of a file. */
final class FileStart {

    /** Bytes that are enough to tell. */
    static final int LENGTH = 16;

    private static final Set<String> HEIC = Set.of("heic", "heix", "hevc", "heim", "heis", "mif1", "msf1", "avif");

    private FileStart() {}

    static FileFormat format(byte[] start) throws RefusedFile {
        String text = new String(start, StandardCharsets.ISO_8859_1);
        if (text.isEmpty()) {
            throw new RefusedFile(RefusedFile.Reason.EMPTY);
        }
        if (text.startsWith("\u00FF\u00D8\u00FF")) {
            return FileFormat.JPEG;
        }
        if (text.startsWith("\u0089PNG\r\n\u001A\n")) {
            return FileFormat.PNG;
        }
        if (text.startsWith("%PDF-1.") || text.startsWith("%PDF-2.")) {
            return FileFormat.PDF;
        }
        throw new RefusedFile(other(text));
    }

    private static RefusedFile.Reason other(String text) {
        boolean hasBox = text.length() >= 12;
        if (hasBox && text.startsWith("ftyp", 4) && HEIC.contains(text.substring(8, 12))) {
            return RefusedFile.Reason.HEIC;
        }
        boolean webp = hasBox && text.startsWith("RIFF") && text.startsWith("WEBP", 8);
        return webp ? RefusedFile.Reason.WEBP : RefusedFile.Reason.UNKNOWN;
    }
}
