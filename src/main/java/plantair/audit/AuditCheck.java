package plantair.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.LongConsumer;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import plantair.audit.Fault.Code;
import plantair.register.ChainEnd;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.ChangeRecords;
import plantair.register.Changes;
import plantair.register.RecordTexts;
import plantair.register.Sha256;

/** Follows the chain of changes from its first line to its end, then compares each record with the newest line about it. */
@Service
public class AuditCheck {

    private static final int BATCH = 500;
    private static final int MOST_FAULTS = 100;

    private final ChangeRecords records;
    private final Changes changes;
    private final RecordTexts texts;

    AuditCheck(ChangeRecords records, Changes changes, RecordTexts texts) {
        this.records = records;
        this.changes = changes;
        this.texts = texts;
    }

    /**
     * The whole check, on one view of the database.
     *
     * @param progress told after each batch how many lines and records were read
     */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public AuditReport check(LongConsumer progress) {
        Run run = new Run(progress);
        run.chain();
        for (ChangeKind kind : ChangeKind.values()) {
            run.records(kind);
        }
        return run.report();
    }

    /** One check under way. */
    private final class Run {

        private final LongConsumer progress;
        private final List<Fault> faults = new ArrayList<>();
        private long faultCount;
        private long lines;
        private long compared;
        private String end = Changes.BEGINNING;

        Run(LongConsumer progress) {
            this.progress = progress;
        }

        private void fault(Code code, long line, String record) {
            faultCount++;
            if (faults.size() < MOST_FAULTS) {
                faults.add(new Fault(code, line, record));
            }
        }

        void chain() {
            List<ChangeRecord> batch = next(0);
            while (!batch.isEmpty()) {
                batch.forEach(this::line);
                progress.accept(lines + compared);
                batch = next(batch.get(batch.size() - 1).chainNumber());
            }
            ChainEnd kept = changes.end();
            if (kept.number() != lines || !kept.digest().equals(end)) {
                fault(Code.END_MOVED, lines, "");
            }
        }

        private List<ChangeRecord> next(long number) {
            return records.findByChainNumberGreaterThanOrderByChainNumber(number, Limit.of(BATCH));
        }

        private void line(ChangeRecord line) {
            lines++;
            if (line.chainNumber() != lines || !end.equals(line.previousDigest())) {
                fault(Code.CHAIN_BROKEN, line.chainNumber(), "");
                lines = line.chainNumber();
            }
            if (!Sha256.of(line.previousDigest() + " " + line.line()).equals(line.digest())) {
                fault(Code.LINE_ALTERED, line.chainNumber(), line.kind() + " " + line.objectId());
            }
            end = line.digest();
        }

        void records(ChangeKind kind) {
            long last = 0;
            List<Long> ids = ids(kind, last);
            while (!ids.isEmpty()) {
                long first = last + 1;
                last = ids.get(ids.size() - 1);
                compare(kind, texts.between(kind, first, last), records.newestById(kind, first, last));
                progress.accept(lines + compared);
                ids = ids(kind, last);
            }
        }

        /** The next ids that a record or a line has; both have them in order. */
        private List<Long> ids(ChangeKind kind, long after) {
            var ids = new TreeSet<>(texts.idsAfter(kind, after, BATCH));
            ids.addAll(records.objectIdsAfter(kind, after, Limit.of(BATCH)));
            return ids.stream().limit(BATCH).toList();
        }

        private void compare(ChangeKind kind, Map<Long, String> found, Map<Long, ChangeRecord> newest) {
            compared += found.size();
            found.forEach((id, text) -> {
                ChangeRecord line = newest.get(id);
                if (line == null) {
                    fault(Code.RECORD_WITHOUT_LINE, 0, kind + " " + id);
                } else if (!Sha256.of(text).equals(line.contentDigest())) {
                    fault(Code.RECORD_ALTERED, line.chainNumber(), kind + " " + id);
                }
            });
            newest.forEach((id, line) -> {
                if (!found.containsKey(id)) {
                    fault(Code.RECORD_MISSING, line.chainNumber(), kind + " " + id);
                }
            });
        }

        AuditReport report() {
            return new AuditReport(lines, compared, end, faults, faultCount);
        }
    }
}
