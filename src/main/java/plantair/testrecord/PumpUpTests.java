package plantair.testrecord;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.repository.Repository;

/** The recorded tests; they can be added and read, not altered. */
public interface PumpUpTests extends Repository<PumpUpTest, Long> {

    PumpUpTest saveAndFlush(PumpUpTest test);

    @EntityGraph(attributePaths = {"compressor", "compressor.site"})
    Optional<PumpUpTest> findById(long id);

    Optional<PumpUpTest> findBySubmission(UUID submission);

    Optional<PumpUpTest> findBySupersedesId(long supersededId);

    List<PumpUpTest> findBySupersedesIdIn(Collection<Long> supersededIds);

    @EntityGraph(attributePaths = {"compressor", "compressor.site"})
    Page<PumpUpTest> findAllByOrderByPerformedAtDescIdDesc(Pageable page);

    @EntityGraph(attributePaths = {"compressor", "compressor.site"})
    Page<PumpUpTest> findByCompressorIdOrderByPerformedAtDescIdDesc(long compressorId, Pageable page);

    @EntityGraph(attributePaths = {"compressor", "compressor.site"})
    List<PumpUpTest> findByIdGreaterThanOrderById(long id, Limit limit);

    Optional<PumpUpTest> findFirstByCompressorIdOrderByPerformedAtDescIdDesc(long compressorId);

    long count();
}
