package plantair.vessel;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** Damage seen on receivers; findings can be added and read, not altered. */
public interface VesselFindings extends Repository<VesselFinding, Long> {

    VesselFinding saveAndFlush(VesselFinding finding);

    Optional<VesselFinding> findById(long id);

    Optional<VesselFinding> findBySubmission(UUID submission);

    Optional<VesselFinding> findByClearsId(long clearedId);

    /** All of some receivers, newest first, those that were cleared and what cleared them too. */
    @Query("select f from VesselFinding f where f.receiverId in :receiverIds order by f.foundOn desc, f.id desc")
    List<VesselFinding> findHistory(Collection<Long> receiverIds);
}
