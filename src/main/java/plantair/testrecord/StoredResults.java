package plantair.testrecord;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The projection of results. */
public interface StoredResults extends Repository<StoredResult, ResultKey> {

    StoredResult save(StoredResult result);

    Optional<StoredResult> findByKeyTestIdAndKeyMethodVersion(long testId, String methodVersion);

    /** The results of these tests, each by the method of its test. */
    @Query("select r from StoredResult r join PumpUpTest t on t.id = r.key.testId"
            + " and t.methodVersion = r.key.methodVersion where t.id in :testIds")
    List<StoredResult> ofTests(Collection<Long> testIds);

    /** The certificates that restate these tests; none for a test that is as recorded. */
    @Query(
            "select new plantair.testrecord.RestatingCertificate(t.id, c.certificate.certificateNumber) from StoredResult r"
                    + " join PumpUpTest t on t.id = r.key.testId and t.methodVersion = r.key.methodVersion"
                    + " join Calibration c on c.id = r.restatedBy where t.id in :testIds")
    List<RestatingCertificate> certificatesOf(Collection<Long> testIds);

    /** The current results of one machine, oldest first. */
    @Query("select new plantair.testrecord.ResultLine(t.id, r.compressorId, r.performedAt, t.zone, r.comparableM3PerS,"
            + " r.relativeRandom, r.relativeCombined, r.severity, r.joinsTrend, r.restatedBy, r.freeAirM3PerS, r.asRecordedM3PerS, r.marks)"
            + " from StoredResult r join PumpUpTest t on t.id = r.key.testId and t.methodVersion = r.key.methodVersion where r.currentRecord = true"
            + " and r.compressorId = :compressorId order by r.performedAt, t.id")
    List<ResultLine> currentLinesOf(long compressorId);

    /** The newest current results of one machine that join the trend, newest first. */
    @Query("select new plantair.testrecord.ResultLine(t.id, r.compressorId, r.performedAt, t.zone, r.comparableM3PerS,"
            + " r.relativeRandom, r.relativeCombined, r.severity, r.joinsTrend, r.restatedBy, r.freeAirM3PerS, r.asRecordedM3PerS, r.marks)"
            + " from StoredResult r join PumpUpTest t on t.id = r.key.testId and t.methodVersion = r.key.methodVersion"
            + " where r.currentRecord = true and r.joinsTrend = true and r.freeAirM3PerS is not null"
            + " and r.compressorId = :compressorId order by r.performedAt desc, t.id desc")
    List<ResultLine> newestLinesOf(long compressorId, Limit limit);

    /**
     * The newest of those of each of some machines, in one query that reads one row of each: sorted by all columns of the index,
     * or H2 would read every result of a machine to find its newest.
     */
    @Query("select new plantair.testrecord.ResultLine(t.id, r.compressorId, r.performedAt, t.zone, r.comparableM3PerS,"
            + " r.relativeRandom, r.relativeCombined, r.severity, r.joinsTrend, r.restatedBy, r.freeAirM3PerS, r.asRecordedM3PerS, r.marks)"
            + " from Compressor c join StoredResult r on r.key.testId = (select n.key.testId from StoredResult n"
            + " where n.compressorId = c.id and n.currentRecord = true and n.joinsTrend = true"
            + " and n.freeAirM3PerS is not null"
            + " order by n.compressorId desc, n.currentRecord desc, n.performedAt desc, n.key.testId desc limit 1)"
            + " join PumpUpTest t on t.id = r.key.testId and t.methodVersion = r.key.methodVersion"
            + " where c.id in :compressorIds")
    List<ResultLine> newestLineOfEach(Collection<Long> compressorIds);

    /** The current results of some machines, oldest first. */
    @Query("select new plantair.testrecord.ResultLine(t.id, r.compressorId, r.performedAt, t.zone, r.comparableM3PerS,"
            + " r.relativeRandom, r.relativeCombined, r.severity, r.joinsTrend, r.restatedBy, r.freeAirM3PerS, r.asRecordedM3PerS, r.marks)"
            + " from StoredResult r join PumpUpTest t on t.id = r.key.testId and t.methodVersion = r.key.methodVersion where r.currentRecord = true"
            + " and r.compressorId in :compressorIds order by r.compressorId, r.performedAt, t.id")
    List<ResultLine> currentLinesOfAll(Collection<Long> compressorIds);

    List<StoredResult> findByCompressorIdAndCurrentRecordTrueOrderByPerformedAtDescKeyTestIdDesc(
            long compressorId, Limit limit);

    @Modifying
    @Query("delete from StoredResult r where r.key.testId between :first and :last")
    int deleteBetween(long first, long last);

    @Query("select t.id from PumpUpTest t where not exists (select 1 from StoredResult r where r.key.testId = t.id"
            + " and r.key.methodVersion = t.methodVersion) order by t.id")
    List<Long> testsWithoutResult();

    long count();
}
