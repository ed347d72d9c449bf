package plantair.leaktest;

import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.leaktest.Entry.Correction;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.site.Site;
import plantair.site.Sites;
import plantair.web.NoSuchRecord;
import plantair.web.StaleRecord;

/** Records leak tests, and corrections of them. */
@Service
public class RecordLeakTest {

    private final LeakTests tests;
    private final Sites sites;
    private final Changes changes;
    private final Clock clock;

    RecordLeakTest(LeakTests tests, Sites sites, Changes changes, Clock clock) {
        this.tests = tests;
        this.sites = sites;
        this.changes = changes;
        this.clock = clock;
    }

    /**
     * Records a test; the same submission a second time gives that of the first.
     *
     * @param correction null unless it takes the place of another, which stays as it is
     * @throws StaleRecord when another correction came first
     */
    @Transactional
    public LeakTest record(LeakTestDraft draft, @Nullable Correction correction, String by) {
        Optional<LeakTest> again = tests.findBySubmission(draft.submission());
        if (again.isPresent()) {
            return again.get();
        }
        LeakTest old = correction == null ? null : find(correction.oldId());
        if (old != null) {
            tests.findByEntrySupersedesId(old.id()).ifPresent(RecordLeakTest::refuse);
        }
        Site site = sites.findById(draft.siteId()).orElseThrow(() -> new NoSuchRecord("site " + draft.siteId()));
        LeakTest saved = tests.saveAndFlush(new LeakTest(draft, Entry.of(clock.instant(), by, correction)));
        changes.save(new ChangeRecord(
                saved.entry().recordedAt(),
                by,
                ChangeKind.LEAK_TEST,
                saved.id(),
                site.name(),
                old == null ? null : old.line(),
                saved.line(),
                correction == null ? "recorded" : correction.reason()));
        return saved;
    }

    private LeakTest find(long id) {
        return tests.findById(id).orElseThrow(() -> new NoSuchRecord("leak test " + id));
    }

    private static void refuse(LeakTest later) {
        Entry entry = later.entry();
        throw new StaleRecord(
                "leak test",
                new StaleRecord.Later(
                        "/leak-tests/" + later.id(),
                        entry.recordedBy(),
                        entry.recordedAt(),
                        String.valueOf(entry.reason())));
    }
}
