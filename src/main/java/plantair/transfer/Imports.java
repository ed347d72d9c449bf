package plantair.transfer;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Service;
import plantair.web.Unworded;

/** The uploads of this run of the application, worked off one after the other; the last twenty are kept. */
@Service
public class Imports implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(Imports.class);
    private static final int KEPT = 20;

    private final TestLog log;
    private final WholePlant plant;
    private final Map<UUID, Import> imports = new LinkedHashMap<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        var thread = new Thread(task, "import");
        thread.setDaemon(true);
        return thread;
    });

    Imports(TestLog log, WholePlant plant) {
        this.log = log;
        this.plant = plant;
    }

    /** Takes an upload and begins to look through it. */
    public Import check(String name, InputStream content) throws IOException {
        Path file = Files.createTempFile("plant-air-import", ".upload");
        Files.copy(content, file, StandardCopyOption.REPLACE_EXISTING);
        var added = new Import(UUID.randomUUID(), name, file);
        keep(added);
        worker.execute(() -> tryTo(
                added,
                () -> added.checked(
                        UnpackedZip.isZip(file)
                                ? plant.check(file, name, added::progress)
                                : log.check(file, name, added::progress))));
        return added;
    }

    /**
     * Begins to take in what was looked through.
     *
     * @param by who does
     * @return false when it is not waiting for that
     */
    public boolean record(Import checked, String by) {
        boolean begun = checked.begin();
        if (begun) {
            Path file = checked.file();
            worker.execute(() -> tryTo(
                    checked,
                    () -> checked.done(
                            UnpackedZip.isZip(file)
                                    ? plant.record(file, checked.name(), by, checked::progress)
                                    : log.record(file, checked.name(), by, checked::progress))));
        }
        return begun;
    }

    /** An upload of this run of the application. */
    public Optional<Import> find(UUID id) {
        synchronized (imports) {
            return Optional.ofNullable(imports.get(id));
        }
    }

    private void keep(Import added) throws IOException {
        synchronized (imports) {
            imports.put(added.id(), added);
            Iterator<Import> oldest = imports.values().iterator();
            while (imports.size() > KEPT && oldest.hasNext()) {
                Import old = oldest.next();
                if (old.stage() != Import.Stage.RECORDING) {
                    oldest.remove();
                    Files.deleteIfExists(old.file());
                }
            }
        }
    }

    private static void tryTo(Import one, Runnable work) {
        try {
            work.run();
        } catch (RuntimeException failure) {
            LOG.error("import {} failed; nothing of it was recorded", one.id(), Unworded.of(failure));
            one.failed();
        }
    }

    @Override
    public void destroy() {
        worker.shutdownNow();
        synchronized (imports) {
            imports.values().forEach(one -> one.file().toFile().delete());
        }
    }
}
