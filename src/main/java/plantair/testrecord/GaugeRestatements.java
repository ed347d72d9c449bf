package plantair.testrecord;

import java.util.Collection;
import java.util.List;
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

    /** The restatements of these tests, in the order of signing: the last of a test is the one that counts. */
    @Query("select new plantair.testrecord.RestatedTest(t, r.calibrationId) from GaugeRestatement r join r.tests t"
            + " where t in :testIds order by r.id")
    List<RestatedTest> findOf(Collection<Long> testIds);
}
