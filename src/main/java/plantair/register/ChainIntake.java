package plantair.register;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Takes lines and records into the chain that came into an empty plant, or were there before it, without one. */
@Component
public class ChainIntake {

    private static final Logger LOG = LoggerFactory.getLogger(ChainIntake.class);
    private static final int BATCH = 500;

    private final ChangeRecords records;
    private final Changes changes;
    private final RecordTexts texts;
    private final EntityManager entities;
    private final Clock clock;

    ChainIntake(ChangeRecords records, Changes changes, RecordTexts texts, EntityManager entities, Clock clock) {
        this.records = records;
        this.changes = changes;
        this.texts = texts;
        this.entities = entities;
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
        entities.flush();
        changes.hold(); // before it is looked what has no place, or somebody else might link the same
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
            changes.linkOld(batch);
            entities.clear(); // else what was read before would be looked at again and again
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
            List<ChangeRecord> missing = ids.stream()
                    .filter(id -> !newest.containsKey(id))
                    .map(id -> new ChangeRecord(
                            clock.instant(), by, kind, id, kind.words() + " " + id, null, reason, reason))
                    .toList();
            changes.addAll(missing);
            entities.clear();
            count += missing.size();
            LOG.info("Taking records into the chain of changes: {} of kind {}", count, kind.words());
            ids = last == Long.MAX_VALUE ? List.of() : texts.idsFrom(kind, last + 1, BATCH);
        }
        return count;
    }
}
