package plantair.audit;

import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.LongConsumer;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import plantair.audit.Fault.Code;
import plantair.register.ChainEnd;
import plantair.register.ChangeRecord;
import plantair.register.ChangeRecords;
import plantair.register.Changes;
import plantair.register.Sha256;

/** Follows the chain of changes: is each line as it was written, and does it hold the digest of the one before? */
@Component
class ChainCheck {

    private static final int BATCH = 500;

    private final ChangeRecords records;
    private final Changes changes;
    private final EntityManager entities;

    ChainCheck(ChangeRecords records, Changes changes, EntityManager entities) {
        this.records = records;
        this.changes = changes;
        this.entities = entities;
    }

    /**
     * Where a walk came to.
     *
     * @param lines how many lines were read
     * @param number number of the last one
     * @param end its digest
     */
    record Walk(long lines, long number, String end) {}

    Walk walk(Faults faults, LongConsumer progress) {
        var walk = new Walk(0, 0, Changes.BEGINNING);
        List<ChangeRecord> batch = next(walk);
        while (!batch.isEmpty()) {
            for (ChangeRecord line : batch) {
                walk = step(walk, line, faults);
            }
            entities.clear(); // what was read need not be kept: memory stays flat
            progress.accept(walk.lines());
            batch = next(walk);
        }
        end(walk, faults);
        records.findOutsideChain(Limit.of(BATCH)).forEach(line -> faults.add(Code.LINE_NOT_LINKED, 0, record(line)));
        return walk;
    }

    private List<ChangeRecord> next(Walk walk) {
        return records.findByChainNumberGreaterThanOrderByChainNumber(walk.number(), Limit.of(BATCH));
    }

    private static Walk step(Walk before, ChangeRecord line, Faults faults) {
        long number = Objects.requireNonNull(line.chainNumber());
        if (number != before.number() + 1 || !before.end().equals(line.previousDigest())) {
            faults.add(Code.CHAIN_BROKEN, number, "");
        }
        if (!Sha256.of(line.previousDigest() + " " + line.line()).equals(line.digest())) {
            faults.add(Code.LINE_ALTERED, number, record(line));
        }
        return new Walk(before.lines() + 1, number, Objects.requireNonNullElse(line.digest(), ""));
    }

    private void end(Walk walk, Faults faults) {
        Optional<ChainEnd> kept = changes.end();
        if (kept.isEmpty() || !kept.get().equals(new ChainEnd(walk.number(), walk.end(), true))) {
            faults.add(Code.END_MOVED, walk.number(), "");
        }
    }

    private static String record(ChangeRecord line) {
        return line.kind() + " " + line.objectId();
    }
}
