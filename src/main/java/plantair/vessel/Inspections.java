package plantair.vessel;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The inspections of receivers; they can be added and read, not altered. */
public interface Inspections extends Repository<Inspection, Long> {

    Inspection saveAndFlush(Inspection inspection);

    Optional<Inspection> findById(long id);

    Optional<Inspection> findBySubmission(UUID submission);

    Optional<Inspection> findByEntrySupersedesId(long supersededId);

    /** All of some receivers, newest first, those that were corrected too. */
    @Query("select i from Inspection i left join fetch i.readings where i.receiverId in :receiverIds"
            + " order by i.doneOn desc, i.id desc")
    List<Inspection> findHistory(Collection<Long> receiverIds);
}
