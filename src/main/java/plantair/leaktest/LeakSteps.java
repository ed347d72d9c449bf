package plantair.leaktest;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** The steps of found leaks; they can be added and read, not altered. */
public interface LeakSteps extends Repository<LeakStep, Long> {

    LeakStep saveAndFlush(LeakStep step);

    Optional<LeakStep> findBySubmission(UUID submission);

    /** Those of a leak in their order. */
    List<LeakStep> findByLeakIdOrderByPosition(long leakId);
}
