package plantair.register;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.data.domain.Limit;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Begins the chain, once: the lines written before there was one are linked in their order, and each record without a line
 * gets one. After that a record without a line is a fault, never mended here. Done before the first request is taken and
 * before the first account is opened: a line that came earlier would stand where the old ones belong.
 */
@Component
class ChainAtStart implements SmartInitializingSingleton {

    private static final Logger LOG = LoggerFactory.getLogger(ChainAtStart.class);
    private static final int BATCH = 500;
    private static final String FOUND = "was there when the chain of changes was begun";

    private final ChangeRecords records;
    private final Changes changes;
    private final RecordTexts texts;
    private final JdbcTemplate jdbc;
    private final TransactionTemplate transaction;
    private final Clock clock;

    ChainAtStart(
            ChangeRecords records,
            Changes changes,
            RecordTexts texts,
            JdbcTemplate jdbc,
            TransactionTemplate transaction,
            Clock clock) {
        this.records = records;
        this.changes = changes;
        this.texts = texts;
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.clock = clock;
    }

    @Override
    public void afterSingletonsInstantiated() {
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
            batch.forEach(changes::linkOld);
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
            for (long id : ids) {
                if (!newest.containsKey(id)) {
                    changes.save(new ChangeRecord(
                            clock.instant(),
                            "Plant Air Records",
                            kind,
                            id,
                            kind.words() + " " + id,
                            null,
                            FOUND,
                            FOUND));
                    count++;
                }
            }
            ids = last == Long.MAX_VALUE ? List.of() : texts.idsFrom(kind, last + 1, BATCH);
        }
        return count;
    }
}
