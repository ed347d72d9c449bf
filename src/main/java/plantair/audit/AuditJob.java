package plantair.audit;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.core.task.AsyncTaskExecutor;
import org.springframework.stereotype.Service;
import plantair.web.Unworded;

/** The check beside the pages: one at a time, whoever asks; the last one is remembered until the program ends. */
@Service
public class AuditJob {

    private static final Logger LOG = LoggerFactory.getLogger(AuditJob.class);

    private final AuditCheck check;
    private final AsyncTaskExecutor executor;
    private final Clock clock;
    private final AtomicLong read = new AtomicLong();
    private State state = new State(null, null, 0, null);
    private CompletableFuture<Void> work = CompletableFuture.completedFuture(null);

    AuditJob(AuditCheck check, @Qualifier("applicationTaskExecutor") AsyncTaskExecutor executor, Clock clock) {
        this.check = check;
        this.executor = executor;
        this.clock = clock;
    }

    /**
     * The last check.
     *
     * @param startedAt when it began; null when there was none
     * @param endedAt when it ended; null while it is under way
     * @param size how many lines and records it has to read
     * @param report what it found; null while it is under way, and when it broke off
     */
    public record State(
            @Nullable Instant startedAt,
            @Nullable Instant endedAt,
            long size,
            @Nullable AuditReport report) {

        public boolean isRunning() {
            return startedAt != null && endedAt == null;
        }

        public boolean brokeOff() {
            return endedAt != null && report == null;
        }
    }

    /** Begins a check, if none is under way, and waits for its end, but no longer than told. */
    public void start(Duration patience) {
        CompletableFuture<Void> under = begin();
        under.completeOnTimeout(null, patience.toMillis(), TimeUnit.MILLISECONDS)
                .join();
    }

    private synchronized CompletableFuture<Void> begin() {
        if (!state.isRunning()) {
            read.set(0);
            state = new State(clock.instant(), null, check.size(), null);
            work = executor.submitCompletable(this::run);
        }
        return work.copy();
    }

    private void run() {
        AuditReport report = null;
        try {
            report = check.check(read::set);
        } catch (RuntimeException broken) {
            LOG.error("The check of the records broke off", Unworded.of(broken));
        } finally {
            end(report);
        }
    }

    private synchronized void end(@Nullable AuditReport report) {
        state = new State(state.startedAt(), clock.instant(), state.size(), report);
    }

    public synchronized State state() {
        return state;
    }

    /** How many lines and records the check under way has read. */
    public long read() {
        return read.get();
    }
}
