package plantair.register;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Takes lines and records into the chain that came into an empty plant, or were there before it, without one. */
@Component
public class ChainIntake {

    private static final int BATCH = 500;

    private final ChangeRecords records;
    private final Changes changes;
    private final RecordTexts texts;
    private final Clock clock;

    ChainIntake(ChangeRecords records, Changes changes, RecordTexts texts, Clock clock) {
        this.records = records;
        this.changes = changes;
        this.texts = texts;
        this.clock = clock;
    }

    /**
     * Links the lines that have no place in the chain, in their order, then adds one for each record that has none. In the
     * transaction of what brought them in, as its last thing: the chain is held to its end.
     *
     * @param kinds records of these get a line; one of another kind without a line stays a fault
     * @param by who says so in the lines added
     * @param reason why, in the same lines
     * @return how many lines were linked and added
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public long takeIn(Set<ChangeKind> kinds, String by, String reason) {
        long linked = linkOld();
        for (ChangeKind kind : kinds) {
            linked += addMissing(kind, by, reason);
        }
        return linked;
    }

    private long linkOld() {
        long count = 0;
        List<ChangeRecord> batch = records.findByChainNumberIsNullOrderById(Limit.of(BATCH));
        while (!batch.isEmpty()) {
            batch.forEach(changes::linkOld);
            count += batch.size();
            batch = records.findByChainNumberIsNullOrderById(Limit.of(BATCH));
        }
        return count;
    }

    private long addMissing(ChangeKind kind, String by, String reason) {
        long count = 0;
        List<Long> ids = texts.idsFrom(kind, Long.MIN_VALUE, BATCH);
        while (!ids.isEmpty()) {
            long last = ids.get(ids.size() - 1);
            Map<Long, ChangeRecord> newest = records.newestById(kind, ids.get(0), last);
            for (long id : ids) {
                if (!newest.containsKey(id)) {
                    changes.save(new ChangeRecord(
                            clock.instant(), by, kind, id, kind.words() + " " + id, null, reason, reason));
                    count++;
                }
            }
            ids = last == Long.MAX_VALUE ? List.of() : texts.idsFrom(kind, last + 1, BATCH);
        }
        return count;
    }
}
