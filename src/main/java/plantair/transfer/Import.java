package plantair.transfer;

import java.nio.file.Path;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** An upload on its way: looked through, then taken in when somebody says so. */
public final class Import {

    /** Where it is. */
    public enum Stage {
        /** Looked through. */
        CHECKING,
        /** Looked through; waits for the word to take it in. */
        CHECKED,
        /** Taken in. */
        RECORDING,
        /** All of it is in the records. */
        DONE,
        /** Nothing of it is in the records: something went wrong here. */
        FAILED
    }

    private final UUID id;
    private final String name;
    private final Path file;
    private volatile Stage stage = Stage.CHECKING;
    private volatile long progress;
    private volatile @Nullable Findings findings;
    private volatile long recorded;

    Import(UUID id, String name, Path file) {
        this.id = id;
        this.name = name;
        this.file = file;
    }

    public UUID id() {
        return id;
    }

    /** Name of the file as it was sent. */
    public String name() {
        return name;
    }

    Path file() {
        return file;
    }

    public Stage stage() {
        return stage;
    }

    /** How many tests are done in this stage. */
    public long progress() {
        return progress;
    }

    void progress(long done) {
        progress = done;
    }

    /** What was found; null while it is looked through. */
    public @Nullable Findings findings() {
        return findings;
    }

    /** How many tests were taken in. */
    public long recorded() {
        return recorded;
    }

    void checked(Findings found) {
        findings = found;
        stage = Stage.CHECKED;
    }

    /** Whether it was waiting and nothing speaks against it; it is under way from then on. */
    synchronized boolean begin() {
        Findings found = findings;
        if (stage != Stage.CHECKED || found == null || !found.problems().isEmpty()) {
            return false;
        }
        progress = 0;
        stage = Stage.RECORDING;
        return true;
    }

    void done(long tests) {
        recorded = tests;
        stage = Stage.DONE;
    }

    void failed() {
        stage = Stage.FAILED;
    }
}
