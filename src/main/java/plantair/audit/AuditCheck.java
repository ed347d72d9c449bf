package plantair.audit;

import java.util.function.LongConsumer;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import plantair.register.ChangeKind;
import plantair.register.Changes;
import plantair.register.RecordTexts;

/** Follows the chain of changes from its first line to its end, then compares each record with the newest line about it, and attached files. */
@Service
public class AuditCheck {

    private final ChainCheck chain;
    private final RecordCheck records;
    private final BytesCheck bytes;
    private final Changes changes;
    private final RecordTexts texts;

    AuditCheck(ChainCheck chain, RecordCheck records, BytesCheck bytes, Changes changes, RecordTexts texts) {
        this.chain = chain;
        this.records = records;
        this.bytes = bytes;
        this.changes = changes;
        this.texts = texts;
    }

    /** How many lines and records a check has to read. */
    @Transactional(readOnly = true)
    public long size() {
        return changes.count() + texts.count();
    }

    /**
     * The whole check, on one view of the database.
     *
     * @param progress told after each batch how many lines and records were read
     */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public AuditReport check(LongConsumer progress) {
        var faults = new Faults();
        ChainCheck.Walk walk = chain.walk(faults, progress);
        long lines = walk.lines();
        long compared = 0;
        for (ChangeKind kind : ChangeKind.values()) {
            long before = lines + compared;
            compared += records.compare(kind, faults, read -> progress.accept(before + read));
        }
        bytes.compare(faults);
        return new AuditReport(lines, compared, walk.end(), faults.first(), faults.count());
    }
}
