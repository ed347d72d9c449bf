package plantair.transfer;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import plantair.export.DataFile;
import plantair.export.DataFiles;

/** The files of an exported zip, unpacked for a while; only files of an export, and only so much. */
final class UnpackedZip implements AutoCloseable {

    private static final Set<String> NAMES =
            DataFiles.TABLES.stream().map(DataFile::name).map(UnpackedZip::csv).collect(Collectors.toUnmodifiableSet());
    private static final int MOST_ENTRIES = 100;
    private static final int MOST_ATTACHED = 100_000;
    private static final Pattern ATTACHED = Pattern.compile("files/([0-9a-f]{64})\\.[a-z]{3}");

    private final Path folder;
    private final Map<String, Path> attached = new HashMap<>();
    private final Map<String, Path> files = new HashMap<>();

    private UnpackedZip(Path folder) {
        this.folder = folder;
    }

    static String csv(String name) {
        return name + ".csv";
    }

    /** Whether a file begins as a zip does. */
    static boolean isZip(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] start = in.readNBytes(2);
            return start.length == 2 && start[0] == 'P' && start[1] == 'K';
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    /**
     * Unpacks a zip; what is wrong with it becomes a problem.
     *
     * @param mostBytes of all files together
     */
    static UnpackedZip of(Path zip, String name, long mostBytes, Remarks problems) {
        try {
            var unpacked = new UnpackedZip(Files.createTempDirectory("plant-air-import"));
            unpacked.read(zip, name, mostBytes, problems);
            return unpacked;
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    private void read(Path zip, String name, long mostBytes, Remarks problems) throws IOException {
        long room = mostBytes;
        int entries = 0;
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
            ZipEntry entry = in.getNextEntry();
            while (entry != null && room >= 0 && entries < MOST_ENTRIES && attached.size() < MOST_ATTACHED) {
                Matcher digest = ATTACHED.matcher(entry.getName());
                if (digest.matches()) {
                    room -= copy(in, digest.group(1), attached, room);
                } else {
                    entries++;
                    boolean isNew = NAMES.contains(entry.getName()) && !files.containsKey(entry.getName());
                    room -= isNew ? copy(in, entry.getName(), files, room) : 0;
                }
                entry = in.getNextEntry();
            }
            if (room < 0 || entry != null) {
                problems.add(name, 0, "", "import.zip.tooLarge");
            }
        } catch (IOException | IllegalArgumentException broken) {
            problems.add(name, 0, "", "import.zip.broken");
        }
        NAMES.stream()
                .filter(wanted -> !files.containsKey(wanted))
                .sorted()
                .forEach(missing -> problems.add(name, 0, "", "import.zip.missing", missing));
    }

    /** Copies a file, at most one byte more than there is room for. */
    private long copy(InputStream in, String name, Map<String, Path> into, long room) throws IOException {
        Path file = folder.resolve(name);
        into.put(name, file);
        byte[] buffer = new byte[8192];
        long copied = 0;
        try (OutputStream out = Files.newOutputStream(file)) {
            int length = in.read(buffer);
            while (length >= 0 && copied <= room) {
                out.write(buffer, 0, length);
                copied += length;
                length = in.read(buffer);
            }
        }
        return copied;
    }

    Optional<Path> file(String name) {
        return Optional.ofNullable(files.get(csv(name)));
    }

    /** A photo or paper by its digest; whether its bytes have that digest is for the caller to see. */
    Optional<Path> attached(String sha256) {
        return Optional.ofNullable(attached.get(sha256));
    }

    @Override
    public void close() {
        try {
            for (Path file : files.values()) {
                Files.deleteIfExists(file);
            }
            for (Path file : attached.values()) {
                Files.deleteIfExists(file);
            }
            Files.deleteIfExists(folder);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
