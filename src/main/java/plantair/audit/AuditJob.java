package plantair.audit;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.core.task.AsyncTaskExecutor;
import org.springframework.stereotype.Service;
import plantair.instances.OneAtATime;
import plantair.web.Unworded;

/** The check beside the pages: one at a time, whoever asks on whichever instance; the last one is remembered. */
@Service
public class AuditJob {

    private static final Logger LOG = LoggerFactory.getLogger(AuditJob.class);
    private static final State NEVER = new State(null, null, 0, 0, false, null);

    private final AuditCheck check;
    private final AuditRuns runs;
    private final OneAtATime locks;
    private final AsyncTaskExecutor executor;
    private final Clock clock;
    private CompletableFuture<Void> work = CompletableFuture.completedFuture(null);

    AuditJob(
            AuditCheck check,
            AuditRuns runs,
            OneAtATime locks,
            @Qualifier("applicationTaskExecutor") AsyncTaskExecutor executor,
            Clock clock) {
        this.check = check;
        this.runs = runs;
        this.locks = locks;
        this.executor = executor;
        this.clock = clock;
    }

    /**
     * The last check.
     *
     * @param startedAt when it began; null when there was none
     * @param endedAt when it ended; null while it is under way, and when its instance ended before it
     * @param size how many lines and records it has to read
     * @param read how many it has read
     * @param isRunning whether it is under way
     * @param report what it found; null while it is under way, and when it broke off
     */
    public record State(
            @Nullable Instant startedAt,
            @Nullable Instant endedAt,
            long size,
            long read,
            boolean isRunning,
            @Nullable AuditReport report) {

        public boolean brokeOff() {
            return startedAt != null && !isRunning && report == null;
        }
    }

    /** Begins a check, if none is under way, and waits for its end on this instance, but no longer than told. */
    public void start(Duration patience) {
        CompletableFuture<Void> under = begin();
        under.completeOnTimeout(null, patience.toMillis(), TimeUnit.MILLISECONDS)
                .join();
    }

    private synchronized CompletableFuture<Void> begin() {
        if (work.isDone()) {
            work = executor.submitCompletable(() -> {
                locks.tryTo(AuditRuns.LOCK, this::run);
            });
        }
        return work.copy();
    }

    private void run() {
        UUID id = runs.begin(clock.instant(), check.size());
        AuditReport report = null;
        try {
            report = check.check(read -> runs.progress(id, read));
        } catch (RuntimeException broken) {
            LOG.error("The check of the records broke off", Unworded.of(broken));
        } finally {
            runs.end(id, clock.instant(), report);
        }
    }

    public State state() {
        return runs.last().orElse(NEVER);
    }
}
