package plantair.transfer;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.LongConsumer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.instances.OneAtATime;
import plantair.instances.SharedFiles;
import plantair.web.Unworded;

/** The uploads, worked off one after the other by whichever instance is free; the last twenty are kept for a week. */
@Service
public class Imports implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(Imports.class);
    private static final Duration KEPT = Duration.ofDays(7);
    private static final long LAST_WORDS_S = 5;

    private final TestLog log;
    private final WholePlant plant;
    private final ImportJobs jobs;
    private final SharedFiles files;
    private final OneAtATime locks;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        var thread = new Thread(task, "import");
        thread.setDaemon(true);
        return thread;
    });

    Imports(
            TestLog log,
            WholePlant plant,
            ImportJobs jobs,
            SharedFiles files,
            OneAtATime locks,
            TransactionTemplate transaction,
            Clock clock) {
        this.log = log;
        this.plant = plant;
        this.jobs = jobs;
        this.files = files;
        this.locks = locks;
        this.transaction = transaction;
        this.clock = clock;
    }

    /**
     * Takes an upload and begins to look through it.
     *
     * @return its key
     */
    public UUID check(String name, InputStream content) throws IOException {
        UUID id = UUID.randomUUID();
        Path file = Files.createTempFile("plant-air-import", ".upload");
        try {
            Files.copy(content, file, StandardCopyOption.REPLACE_EXISTING);
            transaction.executeWithoutResult(status -> keep(id, name, file));
        } finally {
            Files.delete(file);
        }
        begin();
        return id;
    }

    private void keep(UUID id, String name, Path file) {
        try {
            jobs.add(id, name, clock.instant());
            files.keep(id, file, KEPT);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    /**
     * Begins to take in what was looked through; what broke off is begun again.
     *
     * @param by who does
     * @return false when it is not waiting for that
     */
    public boolean record(UUID id, String by) {
        boolean ordered = jobs.order(id, by);
        begin();
        return ordered;
    }

    /** An upload, of this instance or another. */
    public Optional<Import> find(UUID id) {
        return jobs.find(id);
    }

    /** Others may have left some work, or ended at it. */
    @Scheduled(fixedDelayString = "PT5S", initialDelayString = "PT5S")
    void look() {
        if (!worker.isShutdown() && jobs.next().isPresent()) {
            begin();
        }
    }

    private void begin() {
        worker.execute(() -> {
            try {
                locks.tryTo(ImportJobs.LOCK, this::workOff);
            } catch (RuntimeException failure) {
                LOG.error("imports wait", Unworded.of(failure));
            }
        });
    }

    private void workOff() {
        jobs.breakOff();
        jobs.removeOld().forEach(files::forget);
        for (Optional<Import> next = jobs.next(); next.isPresent() && !worker.isShutdown(); next = jobs.next()) {
            work(next.get());
        }
    }

    private void work(Import one) {
        jobs.begin(one.id());
        try {
            Path file = files.fetch(one.id()).orElseThrow(() -> new IllegalStateException("its file is kept no more"));
            try {
                work(one, file);
            } finally {
                Files.delete(file);
            }
        } catch (RuntimeException | IOException failure) {
            LOG.error("import {} failed; nothing of it was recorded", one.id(), Unworded.of(failure));
            jobs.failed(one.id());
        }
    }

    private void work(Import one, Path file) {
        LongConsumer progress = done -> jobs.progress(one.id(), done);
        boolean zip = UnpackedZip.isZip(file);
        if (one.stage() == Import.Stage.WAITING) {
            jobs.checked(
                    one.id(), zip ? plant.check(file, one.name(), progress) : log.check(file, one.name(), progress));
        } else {
            String by = Objects.requireNonNull(one.orderedBy());
            LongConsumer end = tests -> end(one.id(), tests);
            if (zip) {
                plant.record(file, one.name(), by, progress, end);
            } else {
                log.record(file, one.name(), by, progress, end);
            }
        }
    }

    private void end(UUID id, long tests) {
        jobs.done(id, tests);
        files.forget(id);
    }

    /** What is under way is given a few seconds, then breaks off and is taken back. Never interrupted: H2 would lose its file. */
    @Override
    public void destroy() throws InterruptedException {
        worker.shutdown();
        if (!worker.awaitTermination(LAST_WORDS_S, TimeUnit.SECONDS)) {
            LOG.warn("An import is under way still; it breaks off, and nothing of it is recorded");
        }
    }
}
