package plantair.vessel;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The tests of relief valves; they can be added and read, not altered. */
public interface ValveTests extends Repository<ValveTest, Long> {

    ValveTest saveAndFlush(ValveTest test);

    Optional<ValveTest> findById(long id);

    Optional<ValveTest> findBySubmission(UUID submission);

    Optional<ValveTest> findByEntrySupersedesId(long supersededId);

    /** All of some valves, newest first, those that were corrected too. */
    @Query("select t from ValveTest t where t.valveId in :valveIds order by t.doneOn desc, t.id desc")
    List<ValveTest> findHistory(Collection<Long> valveIds);
}
