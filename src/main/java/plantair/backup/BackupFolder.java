package plantair.backup;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The folder of the backups. A file has its name only once it is whole and on the disk. */
final class BackupFolder {

    /** Writes a backup to a file. */
    @FunctionalInterface
    interface Source {
        void writeTo(Path file) throws IOException;
    }

    private static final String UNFINISHED = ".part";

    private final Path folder;

    BackupFolder(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    Path path() {
        return folder;
    }

    Path path(BackupFile file) {
        return folder.resolve(file.name());
    }

    /** The finished backups, newest first. */
    List<BackupFile> list() throws IOException {
        List<BackupFile> found = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "plant-air-*.sql.gz")) {
                for (Path file : files) {
                    read(file.getFileName().toString()).ifPresent(found::add);
                }
            }
        }
        found.sort(Comparator.comparing(BackupFile::takenAt)
                .thenComparing(BackupFile::name)
                .reversed());
        return found;
    }

    /** A finished backup; empty when there is none of that name. */
    Optional<BackupFile> find(String name) throws IOException {
        return BackupFile.isName(name) && Files.isRegularFile(folder.resolve(name)) ? read(name) : Optional.empty();
    }

    private Optional<BackupFile> read(String name) throws IOException {
        Path file = folder.resolve(name);
        String sha256 = Checksum.said(file);
        return sha256.isEmpty() ? Optional.empty() : BackupFile.named(name, Files.size(file), sha256);
    }

    /** Adds a backup; when it fails, nothing of it stays. */
    BackupFile add(BackupKind kind, Instant takenAt, Source source) throws IOException {
        Files.createDirectories(folder);
        String name = freeName(kind, takenAt);
        Path part = folder.resolve(name + UNFINISHED);
        try {
            source.writeTo(part);
            force(part);
            String sha256 = Checksum.of(part);
            Files.writeString(Checksum.besides(folder.resolve(name)), Checksum.line(sha256, name));
            force(Checksum.besides(folder.resolve(name)));
            Files.move(part, folder.resolve(name), StandardCopyOption.ATOMIC_MOVE);
            forceFolder();
            return read(name).orElseThrow();
        } catch (IOException | RuntimeException failure) {
            Files.deleteIfExists(part);
            if (!Files.exists(folder.resolve(name))) {
                Files.deleteIfExists(Checksum.besides(folder.resolve(name)));
            }
            throw failure;
        }
    }

    private String freeName(BackupKind kind, Instant takenAt) {
        int number = 1;
        while (Files.exists(folder.resolve(BackupFile.name(takenAt, kind, number)))) {
            number++;
        }
        return BackupFile.name(takenAt, kind, number);
    }

    void remove(BackupFile file) throws IOException {
        Files.deleteIfExists(path(file));
        Files.deleteIfExists(Checksum.besides(path(file)));
    }

    /** Copies a backup with its sum to another folder; nothing there is overwritten. */
    static Path copy(Path backup, Path to) throws IOException {
        BackupFolder other = new BackupFolder(to);
        Files.createDirectories(other.folder);
        Path copy = other.folder.resolve(backup.getFileName().toString());
        Files.copy(backup, copy);
        Files.copy(Checksum.besides(backup), Checksum.besides(copy));
        force(copy);
        force(Checksum.besides(copy));
        other.forceFolder();
        return copy;
    }

    private static void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Makes the new name last; Windows opens no folder and needs none of this. */
    private void forceFolder() {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notOnThisSystem) {
            return;
        }
    }
}
