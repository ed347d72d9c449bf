package plantair.runlog;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

/** What was withdrawn; it can be added and read, not altered. */
public interface LoggedRunWithdrawals extends Repository<LoggedRunWithdrawal, Long> {

    LoggedRunWithdrawal saveAndFlush(LoggedRunWithdrawal withdrawal);

    Optional<LoggedRunWithdrawal> findByLoggedRunId(long loggedRunId);

    List<LoggedRunWithdrawal> findByLoggedRunIdIn(Collection<Long> loggedRunIds);
}
