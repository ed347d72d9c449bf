package plantair.instances;

import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import net.javacrumbs.shedlock.core.LockConfiguration;
import net.javacrumbs.shedlock.core.LockProvider;
import net.javacrumbs.shedlock.core.SimpleLock;
import net.javacrumbs.shedlock.provider.jdbctemplate.JdbcTemplateLockProvider;
import net.javacrumbs.shedlock.support.KeepAliveLockProvider;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/**
 * Work that one instance does at a time. Who does it says so in the database again and again, by the clock of the database;
 * half a minute after an instance was killed another may begin. Not to be called within a transaction.
 */
@Component
public class OneAtATime implements DisposableBean {

    /** The shortest that ShedLock keeps alive; it is said anew after half of it. */
    private static final Duration HELD = Duration.ofSeconds(30);

    private static final Logger LOG = LoggerFactory.getLogger(OneAtATime.class);
    private static final long PAUSE_MS = 200;

    private final Clock clock;
    private final ScheduledExecutorService heartbeat = Executors.newSingleThreadScheduledExecutor(task -> {
        var thread = new Thread(task, "locks");
        thread.setDaemon(true);
        return thread;
    });
    private final JdbcTemplateLockProvider rows;
    private final LockProvider locks;

    OneAtATime(JdbcTemplate jdbc, Clock clock) {
        this.clock = clock;
        var configuration = JdbcTemplateLockProvider.Configuration.builder()
                .withJdbcTemplate(jdbc)
                .withLockedByValue(UUID.randomUUID().toString()) // two instances may have one host name
                .usingDbTime()
                .build();
        this.rows = new JdbcTemplateLockProvider(configuration);
        this.locks = new KeepAliveLockProvider(rows, heartbeat);
    }

    /**
     * Does some work, unless it is being done.
     *
     * @return false when it is being done, here or elsewhere
     */
    public boolean tryTo(String name, Runnable work) {
        Optional<SimpleLock> lock = locks.lock(new LockConfiguration(clock.instant(), name, HELD, Duration.ZERO));
        if (lock.isEmpty()) {
            rows.clearCache(); // the row may be gone, because somebody emptied the table
            return false;
        }
        try {
            work.run();
        } finally {
            lock.get().unlock();
        }
        return true;
    }

    /** Does some work once nobody else does it. */
    public void inTurn(String name, Runnable work) {
        if (tryTo(name, work)) {
            return;
        }
        LOG.info("Waits for “{}”: another instance does it, or was killed at it half a minute ago", name);
        do {
            pause();
        } while (!tryTo(name, work));
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE_MS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while waiting", stopped);
        }
    }

    /** A condition in SQL: whether some work is being done by an instance that lives. */
    public static String isBeingDone(String name) {
        return "exists (select 1 from shedlock where name = '" + name
                + "' and lock_until > cast(current_timestamp at time zone 'UTC' as timestamp))";
    }

    @Override
    public void destroy() {
        heartbeat.shutdownNow();
    }
}
