package plantair.transfer;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The SHA-256 of a file, so that a change log names it without doubt. */
final class Digest {

    private Digest() {}

    static String of(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            new DigestInputStream(in, sha).transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(sha.digest());
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        } catch (NoSuchAlgorithmException everyJvmHasIt) {
            throw new IllegalStateException(everyJvmHasIt);
        }
    }
}
