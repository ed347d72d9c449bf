package plantair.attachment;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HexFormat;

/**
 * A file that came in, kept beside the database until it is checked.
 *
 * @param path where it lies; deleted on closing
 * @param sha256 of its bytes
 * @param size number of bytes
 */
public record ReceivedFile(Path path, String sha256, long size) implements AutoCloseable {

    private static final int BUFFER = 65_536;

    /**
     * Takes in a stream to its end.
     *
     * @param most so many bytes are taken
     * @throws RefusedFile when there are more
     */
    public static ReceivedFile of(InputStream in, long most) throws IOException, RefusedFile {
        Path path = Files.createTempFile("plant-air-attachment", ".received");
        MessageDigest digest = Pieces.sha256();
        long size = 0;
        try (OutputStream out = new DigestOutputStream(Files.newOutputStream(path), digest)) {
            byte[] buffer = new byte[BUFFER];
            for (int length = in.read(buffer); length >= 0 && size <= most; length = in.read(buffer)) {
                out.write(buffer, 0, length);
                size += length;
            }
        } catch (IOException broken) {
            Files.delete(path);
            throw broken;
        }
        var received = new ReceivedFile(path, HexFormat.of().formatHex(digest.digest()), size);
        if (size > most) {
            received.close();
            throw new RefusedFile(RefusedFile.Reason.TOO_LARGE, String.valueOf(most / 1_000_000));
        }
        return received;
    }

    @Override
    public void close() throws IOException {
        Files.deleteIfExists(path);
    }
}
