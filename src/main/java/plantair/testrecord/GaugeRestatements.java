package plantair.testrecord;

import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The signed restatements; they can be added and read, not altered. */
public interface GaugeRestatements extends Repository<GaugeRestatement, Long> {

    GaugeRestatement saveAndFlush(GaugeRestatement restatement);

    Optional<GaugeRestatement> findByCalibrationId(long calibrationId);

    /** The last one signed that names a test: it is the one that counts. */
    @Query("select r from GaugeRestatement r where :testId member of r.tests order by r.id desc limit 1")
    Optional<GaugeRestatement> findLatestOf(long testId);
}
