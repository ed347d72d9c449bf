package plantair.maintenance;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The maintenance events; they can be added and read, not altered. */
public interface MaintenanceEvents extends Repository<MaintenanceEvent, Long> {

    MaintenanceEvent saveAndFlush(MaintenanceEvent event);

    Optional<MaintenanceEvent> findById(long id);

    Optional<MaintenanceEvent> findBySubmission(UUID submission);

    Optional<MaintenanceEvent> findBySupersedesId(long supersededId);

    List<MaintenanceEvent> findBySupersedesIdIn(Collection<Long> supersededIds);

    /** All of a compressor, newest first, those that were corrected or withdrawn too. */
    Page<MaintenanceEvent> findByCompressorIdOrderByHappenedOnDescIdDesc(long compressorId, Pageable page);

    /** Those of a compressor that count, oldest first: the last of each chain of corrections, unless it withdraws. */
    default List<MaintenanceEvent> findCurrent(long compressorId) {
        return findCurrentOfAll(List.of(compressorId));
    }

    /** Those of some compressors that count, by compressor, oldest first. */
    @Query("select e from MaintenanceEvent e where e.compressorId in :compressorIds and not e.withdrawn"
            + " and not exists (select 1 from MaintenanceEvent later where later.supersedesId = e.id)"
            + " order by e.compressorId, e.happenedOn, e.id")
    List<MaintenanceEvent> findCurrentOfAll(Collection<Long> compressorIds);
}
