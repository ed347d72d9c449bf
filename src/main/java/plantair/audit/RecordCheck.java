package plantair.audit;

import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.LongConsumer;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import plantair.audit.Fault.Code;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.ChangeRecords;
import plantair.register.RecordTexts;
import plantair.register.Sha256;

/** Compares each record with the newest line about it. */
@Component
class RecordCheck {

    private static final int BATCH = 500;

    private final ChangeRecords records;
    private final RecordTexts texts;
    private final EntityManager entities;

    RecordCheck(ChangeRecords records, RecordTexts texts, EntityManager entities) {
        this.records = records;
        this.texts = texts;
        this.entities = entities;
    }

    /** Compares the records of a kind and gives how many there were. */
    long compare(ChangeKind kind, Faults faults, LongConsumer progress) {
        long compared = 0;
        List<Long> ids = ids(kind, Long.MIN_VALUE);
        while (!ids.isEmpty()) {
            long last = ids.get(ids.size() - 1);
            Map<Long, String> found = texts.between(kind, ids.get(0), last);
            compare(kind, found, records.newestById(kind, ids.get(0), last), faults);
            entities.clear();
            compared += found.size();
            progress.accept(compared);
            ids = last == Long.MAX_VALUE ? List.of() : ids(kind, last + 1);
        }
        return compared;
    }

    /** The next ids that a record or a line has; both have them in order. */
    private List<Long> ids(ChangeKind kind, long from) {
        var ids = new TreeSet<>(texts.idsFrom(kind, from, BATCH));
        ids.addAll(records.objectIdsFrom(kind, from, Limit.of(BATCH)));
        return ids.stream().limit(BATCH).toList();
    }

    private static void compare(
            ChangeKind kind, Map<Long, String> found, Map<Long, ChangeRecord> newest, Faults faults) {
        found.forEach((id, text) -> {
            ChangeRecord line = newest.get(id);
            if (line == null) {
                faults.add(Code.RECORD_WITHOUT_LINE, 0, kind + " " + id);
            } else if (!Sha256.of(text).equals(line.contentDigest())) {
                faults.add(Code.RECORD_ALTERED, line.chainNumber(), kind + " " + id);
            }
        });
        newest.forEach((id, line) -> {
            if (!found.containsKey(id)) {
                faults.add(Code.RECORD_MISSING, line.chainNumber(), kind + " " + id);
            }
        });
    }
}
