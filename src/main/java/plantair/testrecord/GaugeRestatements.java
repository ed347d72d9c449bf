package plantair.testrecord;

import java.util.Optional;
import org.springframework.data.repository.Repository;

/** The signed restatements; they can be added and read, not altered. */
public interface GaugeRestatements extends Repository<GaugeRestatement, Long> {

    GaugeRestatement saveAndFlush(GaugeRestatement restatement);

    Optional<GaugeRestatement> findByCalibrationId(long calibrationId);
}
