package plantair.attachment;

import java.io.IOException;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.springframework.stereotype.Component;

/** Puts attached files into a zip, each once, under its digest: {@code files/<SHA-256>.<ending>}. */
@Component
public class ContentFiles {

    /** Where they lie in a zip. */
    public static final String FOLDER = "files/";

    private static final int BATCH = 500;

    /** A day on which none of them was made, so that the same files give the same zip. */
    private static final long NO_TIME = 315_619_200_000L;

    private final Pieces pieces;
    private final List<FileHolder> holders;

    ContentFiles(Pieces pieces, List<FileHolder> holders) {
        this.pieces = pieces;
        this.holders = holders;
    }

    /** Adds all that is stored. */
    public void addAll(ZipOutputStream zip) throws IOException {
        List<String> digests = pieces.digestsAfter("", BATCH);
        while (!digests.isEmpty()) {
            add(digests, zip);
            digests = pieces.digestsAfter(digests.get(digests.size() - 1), BATCH);
        }
    }

    /** Adds those of some digests. */
    public void add(List<String> digests, ZipOutputStream zip) throws IOException {
        for (String sha256 : digests) {
            var entry = new ZipEntry(name(sha256));
            entry.setTime(NO_TIME);
            zip.putNextEntry(entry);
            pieces.write(sha256, zip);
            zip.closeEntry();
        }
    }

    private String name(String sha256) {
        String ending = holders.stream()
                .filter(holder -> !holder.recordsWith(sha256).isEmpty())
                .map(holder -> holder.ending(sha256))
                .findFirst()
                .orElse("bin");
        return FOLDER + sha256 + "." + ending;
    }
}
