package plantair.register;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.core.annotation.Order;
import org.springframework.data.domain.Limit;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Begins the chain, once: the lines written before there was one are linked in their order, and each record without a line
 * gets one. After that a record without a line is a fault, never mended here.
 */
@Component
@Order(0)
class ChainAtStart implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(ChainAtStart.class);
    private static final int BATCH = 500;
    private static final String FOUND = "was there when the chain of changes was begun";

    private final ChangeRecords records;
    private final Changes changes;
    private final RecordTexts texts;
    private final JdbcTemplate jdbc;
    private final TransactionTemplate transaction;
    private final EntityManager entities;
    private final Clock clock;

    ChainAtStart(
            ChangeRecords records,
            Changes changes,
            RecordTexts texts,
            JdbcTemplate jdbc,
            TransactionTemplate transaction,
            EntityManager entities,
            Clock clock) {
        this.records = records;
        this.changes = changes;
        this.texts = texts;
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.entities = entities;
        this.clock = clock;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        transaction.executeWithoutResult(status -> {
            if (changes.end().filter(ChainAtStart::isNew).isPresent()) {
                begin();
            }
        });
    }

    /** A chain that has a line was begun, whatever the mark says: taking the mark off must not let a record in. */
    private static boolean isNew(ChainEnd end) {
        return !end.begun() && end.number() == 0;
    }

    /** One transaction: a chain that is half begun would be no chain. */
    private void begin() {
        long linked = linkOld();
        for (ChangeKind kind : ChangeKind.values()) {
            linked += addMissing(kind);
        }
        jdbc.update("update chain_end set begun = true where id = 1");
        if (linked > 0) {
            LOG.info("Began the chain of changes with {} lines", linked);
        }
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

    private long addMissing(ChangeKind kind) {
        long count = 0;
        List<Long> ids = texts.idsFrom(kind, Long.MIN_VALUE, BATCH);
        while (!ids.isEmpty()) {
            long last = ids.get(ids.size() - 1);
            Map<Long, ChangeRecord> newest = records.newestById(kind, ids.get(0), last);
            List<ChangeRecord> missing = ids.stream()
                    .filter(id -> !newest.containsKey(id))
                    .map(id -> found(kind, id))
                    .toList();
            changes.saveAll(missing);
            entities.clear();
            count += missing.size();
            LOG.info("Taking records into the chain of changes: {} of kind {}", count, kind.words());
            ids = last == Long.MAX_VALUE ? List.of() : texts.idsFrom(kind, last + 1, BATCH);
        }
        return count;
    }

    private ChangeRecord found(ChangeKind kind, long id) {
        return new ChangeRecord(
                clock.instant(), "Plant Air Records", kind, id, kind.words() + " " + id, null, FOUND, FOUND);
    }
}
