package plantair.runlog;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.util.Objects;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.attachment.Pieces;
import plantair.attachment.ReceivedFile;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.web.NoSuchRecord;

/** Records what a logger saw, and withdraws it; each with its line in the list of changes. */
@Service
public class RecordLog {

    private final LoggedRuns runs;
    private final LoggedRunWithdrawals withdrawals;
    private final Pieces pieces;
    private final Changes changes;
    private final TransactionTemplate transaction;
    private final Clock clock;

    RecordLog(
            LoggedRuns runs,
            LoggedRunWithdrawals withdrawals,
            Pieces pieces,
            Changes changes,
            TransactionTemplate transaction,
            Clock clock) {
        this.runs = runs;
        this.withdrawals = withdrawals;
        this.pieces = pieces;
        this.changes = changes;
        this.transaction = transaction;
        this.clock = clock;
    }

    /** Records a run with its file; the same submission a second time gives that of the first. */
    public LoggedRun record(LoggedRunDraft draft, ReceivedFile file, String by) {
        try {
            return tryTo(draft, file, by);
        } catch (DataIntegrityViolationException overtaken) {
            // somebody else stored the same bytes, or sent the same form, at the same moment: now they are there
            return tryTo(draft, file, by);
        }
    }

    private LoggedRun tryTo(LoggedRunDraft draft, ReceivedFile file, String by) {
        return Objects.requireNonNull(transaction.execute(
                status -> runs.findBySubmission(draft.submission()).orElseGet(() -> save(draft, file, by))));
    }

    private LoggedRun save(LoggedRunDraft draft, ReceivedFile file, String by) {
        try {
            pieces.store(file.sha256(), file.path());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        LoggedRun run = runs.saveAndFlush(new LoggedRun(draft, file, clock.instant(), by));
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.LOGGED_RUN,
                run.id(),
                name(run),
                null,
                run.lines().toString(),
                "logged run recorded"));
        return run;
    }

    /**
     * Withdraws a run; one that is withdrawn stays so.
     *
     * @throws NoSuchRecord when there is none of that id
     */
    public LoggedRunWithdrawal withdraw(long id, UUID submission, String reason, String by) {
        return Objects.requireNonNull(transaction.execute(status -> {
            LoggedRun run = runs.findById(id).orElseThrow(() -> new NoSuchRecord("logged run " + id));
            return withdrawals.findByLoggedRunId(id).orElseGet(() -> save(run, submission, reason, by));
        }));
    }

    private LoggedRunWithdrawal save(LoggedRun run, UUID submission, String reason, String by) {
        LoggedRunWithdrawal withdrawal =
                withdrawals.saveAndFlush(new LoggedRunWithdrawal(run.id(), submission, clock.instant(), by, reason));
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.LOGGED_RUN,
                run.id(),
                name(run),
                run.lines().toString(),
                run.lines().add("withdrawn", true).toString(),
                reason));
        return withdrawal;
    }

    private static String name(LoggedRun run) {
        return "logged run " + run.id() + " of test " + run.testId();
    }
}
