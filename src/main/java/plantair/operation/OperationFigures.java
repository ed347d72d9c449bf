package plantair.operation;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.function.DoubleSupplier;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.dao.DataAccessException;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionException;
import plantair.backup.Backups;
import plantair.history.MachineStates;
import plantair.register.ChainEnd;
import plantair.register.Changes;

/**
 * Figures of this program beside those of the framework, read once a minute and not when they are asked for: a database that
 * is away must not hold up the other figures, which tell of it. What is not known is NaN.
 */
@Component
@ConditionalOnProperty("plantair.metrics.token")
final class OperationFigures implements MeterBinder {

    private final Changes changes;
    private final MachineStates machines;
    private final Backups backups;
    private final Clock clock;

    private volatile double changeCount = Double.NaN;
    private volatile double waitingMachines = Double.NaN;

    OperationFigures(Changes changes, MachineStates machines, Backups backups, Clock clock) {
        this.changes = changes;
        this.machines = machines;
        this.backups = backups;
        this.clock = clock;
    }

    @Scheduled(fixedDelayString = "PT1M")
    void read() {
        try {
            changeCount = changes.end().map(ChainEnd::number).orElse(0L);
            waitingMachines = machines.waiting();
        } catch (DataAccessException | TransactionException away) {
            changeCount = Double.NaN; // readiness and the pages say why
            waitingMachines = Double.NaN;
        }
    }

    @Override
    public void bindTo(MeterRegistry registry) {
        gauge(registry, "plantair.changes", "lines of the chain of changes", null, () -> changeCount);
        gauge(registry, "plantair.machines.waiting", "tested machines not judged yet", null, () -> waitingMachines);
        if (backups.areOurs()) {
            gauge(registry, "plantair.disk.free", "free on the disk of the H2 file", "bytes", this::freeBytes);
            gauge(registry, "plantair.backup.age", "since the last backup was begun", "seconds", this::backupAge);
        }
    }

    private static void gauge(
            MeterRegistry registry, String name, String meaning, @Nullable String unit, DoubleSupplier figure) {
        Gauge.builder(name, figure::getAsDouble)
                .description(meaning)
                .baseUnit(unit)
                .register(registry);
    }

    private double freeBytes() {
        var free = backups.freeBytes();
        return free.isPresent() ? free.getAsLong() : Double.NaN;
    }

    private double backupAge() {
        try {
            return backups.list().stream()
                    .findFirst()
                    .map(last -> (double)
                            Duration.between(last.takenAt(), clock.instant()).toSeconds())
                    .orElse(Double.NaN);
        } catch (IOException unreadable) {
            return Double.NaN;
        }
    }
}
