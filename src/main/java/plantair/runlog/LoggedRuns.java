package plantair.runlog;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The logged runs; they can be added and read, not altered. */
public interface LoggedRuns extends Repository<LoggedRun, Long> {

    LoggedRun saveAndFlush(LoggedRun run);

    Optional<LoggedRun> findById(long id);

    Optional<LoggedRun> findBySubmission(UUID submission);

    /** All of some tests, oldest first, those withdrawn too. */
    List<LoggedRun> findByTestIdInOrderById(Collection<Long> testIds);

    /** Those of some tests that stand, oldest first. */
    @Query("select r from LoggedRun r where r.testId in :testIds"
            + " and not exists (select 1 from LoggedRunWithdrawal w where w.loggedRunId = r.id) order by r.id")
    List<LoggedRun> findStanding(Collection<Long> testIds);

    /** Numbers of those that hold the same bytes; the records themselves may have been altered so that nobody can read them. */
    @Query("select r.id from LoggedRun r where r.sha256 = :sha256 order by r.id")
    List<Long> idsWith(String sha256);

    /** Those after an id, for reading all in batches. */
    List<LoggedRun> findByIdGreaterThanOrderById(long id, Limit limit);
}
