package plantair.runlog;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Component;
import plantair.attachment.ReceivedFile;

/** Files of loggers that came in and wait until it is said how they are read; the last fifty of this run of the application. */
@Component
public class WaitingLogs implements DisposableBean {

    private static final int KEPT = 50;

    private final Map<UUID, Waiting> logs = new LinkedHashMap<>();

    /**
     * A file that waits.
     *
     * @param id its key
     * @param testId the test it was sent to
     * @param by who sent it, and alone sees it until it is recorded
     * @param fileName fit to be shown
     * @param file where it lies
     */
    public record Waiting(UUID id, long testId, String by, String fileName, ReceivedFile file) {}

    /** Keeps a file for a while. */
    public Waiting keep(long testId, String by, String fileName, ReceivedFile file) throws IOException {
        var added = new Waiting(UUID.randomUUID(), testId, by, fileName, file);
        synchronized (logs) {
            logs.put(added.id(), added);
            Iterator<Waiting> oldest = logs.values().iterator();
            while (logs.size() > KEPT) {
                ReceivedFile old = oldest.next().file();
                oldest.remove();
                old.close();
            }
        }
        return added;
    }

    /** The file that somebody sent to a test; empty when it is here no more. */
    public Optional<Waiting> find(UUID id, long testId, String by) {
        synchronized (logs) {
            return Optional.ofNullable(logs.get(id))
                    .filter(log -> log.testId() == testId && log.by().equals(by))
                    .filter(log -> Files.exists(log.file().path()));
        }
    }

    @Override
    public void destroy() throws IOException {
        synchronized (logs) {
            for (Waiting log : logs.values()) {
                log.file().close();
            }
        }
    }
}
