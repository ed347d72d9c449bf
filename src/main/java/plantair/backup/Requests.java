package plantair.backup;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Requests for a backup, left as files in the folder of the backups: while the program runs, no other may open the H2 file,
 * so the command asks the running program. A request {@code x.request} is taken by renaming it {@code x.taken} and answered
 * by {@code x.answer}, which holds the name of the backup or is empty when there is none.
 */
final class Requests {

    private static final String REQUEST = ".request";
    private static final String TAKEN = ".taken";
    private static final String ANSWER = ".answer";

    private final Path folder;

    Requests(Path folder) {
        this.folder = folder;
    }

    void leave(String id) throws IOException {
        Files.createDirectories(folder);
        Files.createFile(folder.resolve(id + REQUEST));
    }

    /** Takes the requests that wait. */
    List<String> take() throws IOException {
        List<String> ids = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> waiting = Files.newDirectoryStream(folder, "*" + REQUEST)) {
                for (Path file : waiting) {
                    String id = file.getFileName().toString().replace(REQUEST, "");
                    Files.move(file, folder.resolve(id + TAKEN), StandardCopyOption.ATOMIC_MOVE);
                    ids.add(id);
                }
            }
        }
        return ids;
    }

    void answer(String id, String name) throws IOException {
        Path taken = folder.resolve(id + TAKEN);
        Files.writeString(taken, name);
        Files.move(taken, folder.resolve(id + ANSWER), StandardCopyOption.ATOMIC_MOVE);
    }

    boolean isWaiting(String id) {
        return Files.exists(folder.resolve(id + REQUEST));
    }

    boolean isAnswered(String id) {
        return Files.exists(folder.resolve(id + ANSWER));
    }

    /** What was answered; the answer is gone then. */
    String answered(String id) throws IOException {
        String name = Files.readString(folder.resolve(id + ANSWER));
        Files.delete(folder.resolve(id + ANSWER));
        return name;
    }

    void withdraw(String id) throws IOException {
        Files.deleteIfExists(folder.resolve(id + REQUEST));
    }
}
