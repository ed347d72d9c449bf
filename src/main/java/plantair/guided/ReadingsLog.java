package plantair.guided;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.repository.Repository;

/** The readings of machines; they can be added and read, not altered. */
public interface ReadingsLog extends Repository<MachineReadings, Long> {

    MachineReadings saveAndFlush(MachineReadings readings);

    Optional<MachineReadings> findById(long id);

    Optional<MachineReadings> findBySubmission(UUID submission);

    Optional<MachineReadings> findBySupersedesId(long supersededId);

    /** Those of a test, the newest last; superseded ones too. */
    List<MachineReadings> findByTestIdOrderById(long testId);

    /** The last of a machine. */
    List<MachineReadings> findByCompressorIdOrderByReadAtDescIdDesc(long compressorId, Limit limit);
}
