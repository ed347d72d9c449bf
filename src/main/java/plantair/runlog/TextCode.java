package plantair.runlog;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** How the bytes of a logger's file stand for letters. */
public enum TextCode {
    /** What most programs write today. */
    UTF_8(StandardCharsets.UTF_8),
    /** Two bytes a letter, the low one first, as some Windows programs write. */
    UTF_16LE(StandardCharsets.UTF_16LE),
    /** Two bytes a letter, the high one first. */
    UTF_16BE(StandardCharsets.UTF_16BE),
    /** One byte a letter; whatever is not one of the others can be read so. */
    ISO_8859_1(StandardCharsets.ISO_8859_1);

    private static final int LOOKED_AT = 1000;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final Charset charset;

    TextCode(Charset charset) {
        this.charset = charset;
    }

    /** By its byte order mark, else by where zero bytes lie, else UTF-8 if all of it is. */
    static TextCode of(byte[] bytes) {
        if (bytes.length >= 2 && bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE) {
            return UTF_16LE;
        }
        if (bytes.length >= 2 && bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF) {
            return UTF_16BE;
        }
        int[] zeros = new int[2];
        int looked = Math.min(bytes.length, LOOKED_AT);
        for (int i = 0; i < looked; i++) {
            zeros[i % 2] += bytes[i] == 0 ? 1 : 0;
        }
        int many = looked / 4;
        if (looked > 1 && zeros[0] + zeros[1] > many && Math.min(zeros[0], zeros[1]) == 0) {
            return zeros[1] > 0 ? UTF_16LE : UTF_16BE;
        }
        return isUtf8(bytes) ? UTF_8 : ISO_8859_1;
    }

    private static boolean isUtf8(byte[] bytes) {
        try {
            StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException other) {
            return false;
        }
    }

    /** The text, without byte order mark. */
    String read(byte[] bytes) {
        String text = new String(bytes, charset);
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }
}
