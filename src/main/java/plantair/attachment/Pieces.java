package plantair.attachment;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The bytes of attached files, in pieces in the database; one is in memory at a time. */
@Component
public class Pieces {

    /** Half of what H2 takes in a column. */
    static final int SIZE = 512 * 1024;

    private static final String NEXT = "select position, bytes from attachment_piece where sha256 = ? and position >= ?"
            + " order by position fetch first 1 rows only";

    private final JdbcTemplate jdbc;

    Pieces(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Stores the bytes of a file, unless they are there. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void store(String sha256, Path file) throws IOException {
        if (exists(sha256)) {
            return;
        }
        jdbc.update("insert into attachment_content (sha256) values (?)", sha256);
        try (InputStream in = Files.newInputStream(file)) {
            int position = 0;
            for (byte[] piece = in.readNBytes(SIZE); piece.length > 0; piece = in.readNBytes(SIZE)) {
                jdbc.update("insert into attachment_piece values (?, ?, ?)", sha256, position, piece);
                position++;
            }
        }
    }

    /** Whether there is anything of that digest. */
    public boolean exists(String sha256) {
        return !jdbc.queryForList("select 1 from attachment_content where sha256 = ?", sha256)
                .isEmpty();
    }

    /** Writes the bytes out, up to the first piece that is missing. */
    public void write(String sha256, OutputStream out) throws IOException {
        int from = 0;
        Piece piece = next(sha256, from);
        while (piece.position == from) {
            out.write(piece.bytes);
            from++;
            piece = next(sha256, from);
        }
    }

    private record Piece(int position, byte[] bytes) {}

    private Piece next(String sha256, int from) {
        List<Piece> found = jdbc.query(NEXT, (row, number) -> new Piece(row.getInt(1), row.getBytes(2)), sha256, from);
        return found.isEmpty() ? new Piece(-1, new byte[0]) : found.get(0);
    }

    /** Whether the pieces give the digest under which they were stored, each in its place. */
    public boolean areUnaltered(String sha256) {
        MessageDigest digest = sha256();
        try (OutputStream out = new DigestOutputStream(OutputStream.nullOutputStream(), digest)) {
            write(sha256, out);
        } catch (IOException impossible) {
            throw new IllegalStateException("nothing is written anywhere", impossible);
        }
        return HexFormat.of().formatHex(digest.digest()).equals(sha256) && hasNoGap(sha256);
    }

    private boolean hasNoGap(String sha256) {
        Long[] found = jdbc.queryForObject(
                "select count(*), max(position) from attachment_piece where sha256 = ?",
                (row, number) -> new Long[] {row.getLong(1), row.getLong(2)},
                sha256);
        return found != null && found[0] == found[1] + 1;
    }

    /** The digests of all attached and all stored files after one, in order. */
    public List<String> digestsAfter(String sha256, int most) {
        return jdbc.queryForList(
                "select sha256 from attachment where sha256 > ? union"
                        + " select sha256 from attachment_content where sha256 > ? order by 1 fetch first " + most
                        + " rows only",
                String.class,
                sha256,
                sha256);
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
