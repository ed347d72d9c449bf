package plantair.testrecord;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** The chosen baselines; they can be added and read, not altered. */
public interface BaselineChoices extends Repository<BaselineChoice, Long> {

    BaselineChoice saveAndFlush(BaselineChoice choice);

    Optional<BaselineChoice> findBySubmission(UUID submission);

    /** Those of a compressor, oldest first. */
    List<BaselineChoice> findByCompressorIdOrderById(long compressorId);

    List<BaselineChoice> findByCompressorIdInOrderById(Collection<Long> compressorIds);
}
