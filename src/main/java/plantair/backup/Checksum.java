package plantair.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The SHA-256 of a file and the file beside it that says so, as {@code sha256sum -c} reads it. */
final class Checksum {

    private static final int DIGITS = 64;

    private Checksum() {}

    static Path besides(Path file) {
        return file.resolveSibling(file.getFileName() + ".sha256");
    }

    static String line(String digits, String name) {
        return digits + "  " + name + "\n";
    }

    /** The digits that the file beside says; empty text when it says none. */
    static String said(Path file) throws IOException {
        String line = Files.exists(besides(file)) ? Files.readString(besides(file)) : "";
        return line.length() < DIGITS ? "" : line.substring(0, DIGITS);
    }

    /** The digits of the content. */
    static String of(Path file) throws IOException {
        MessageDigest digest = sha256();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyJvmHasIt) {
            throw new IllegalStateException(everyJvmHasIt);
        }
    }
}
