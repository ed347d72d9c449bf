package plantair.testrecord;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;
import plantair.web.Paging;

/** The recorded tests; they can be added and read, not altered. */
public interface PumpUpTests extends Repository<PumpUpTest, Long> {

    String UNREVIEWED = " from PumpUpTest t where (:compressorId = 0L or t.compressor.id = :compressorId)"
            + " and not exists (select 1 from TestReview r where r.testId = t.id)"
            + " and not exists (select 1 from PumpUpTest later where later.supersedesId = t.id)";

    PumpUpTest saveAndFlush(PumpUpTest test);

    @EntityGraph(attributePaths = {"compressor", "compressor.site"})
    Optional<PumpUpTest> findById(long id);

    Optional<PumpUpTest> findBySubmission(UUID submission);

    Optional<PumpUpTest> findBySupersedesId(long supersededId);

    List<PumpUpTest> findBySupersedesIdIn(Collection<Long> supersededIds);

    /** All, newest first; counted no further than they have pages. */
    default Page<PumpUpTest> findAllByOrderByPerformedAtDescIdDesc(Pageable page) {
        Page<Long> ids = findIds(page);
        List<PumpUpTest> tests = findByIdInOrderByPerformedAtDescIdDesc(ids.getContent());
        return new PageImpl<>(tests, page, ids.getTotalElements());
    }

    /** Their numbers alone: what stands before a page is passed over in the index and not read. */
    @Query(
            value = "select t.id from PumpUpTest t order by t.performedAt desc, t.id desc",
            countQuery =
                    "select count(*) from (select t.id as id from PumpUpTest t order by t.performedAt desc, t.id desc limit "
                            + Paging.AND_ONE_MORE + ") some")
    Page<Long> findIds(Pageable page);

    @EntityGraph(attributePaths = {"compressor", "compressor.site"})
    List<PumpUpTest> findByIdInOrderByPerformedAtDescIdDesc(Collection<Long> ids);

    @EntityGraph(attributePaths = {"compressor", "compressor.site"})
    Page<PumpUpTest> findByCompressorIdOrderByPerformedAtDescIdDesc(long compressorId, Pageable page);

    @EntityGraph(attributePaths = {"compressor", "compressor.site"})
    List<PumpUpTest> findByIdInOrderById(Collection<Long> ids);

    @EntityGraph(attributePaths = {"compressor", "compressor.site"})
    List<PumpUpTest> findByIdGreaterThanOrderById(long id, Limit limit);

    /** Current tests that nobody has reviewed, newest first; compressor 0 stands for all. */
    @EntityGraph(attributePaths = {"compressor", "compressor.site"})
    @Query(
            value = "select t" + UNREVIEWED + " order by t.performedAt desc, t.id desc",
            countQuery = "select count(*) from (select t.id as id" + UNREVIEWED
                    + " order by t.performedAt desc, t.id desc limit " + Paging.AND_ONE_MORE + ") some")
    Page<PumpUpTest> findUnreviewed(long compressorId, Pageable page);

    Optional<PumpUpTest> findFirstByCompressorIdOrderByPerformedAtDescIdDesc(long compressorId);

    /** Current tests of a machine with a settled reading, made before a time, newest first. */
    @Query("select t from PumpUpTest t where t.compressor.id = :compressorId and t.performedAt < :before"
            + " and t.conditions.airTemperature = plantair.pumpup.AirTemperature.SETTLED"
            + " and not exists (select 1 from PumpUpTest later where later.supersedesId = t.id)"
            + " order by t.performedAt desc, t.id desc")
    List<PumpUpTest> findSettled(long compressorId, Instant before, Limit limit);

    /** Every test that names an instrument, oldest first. */
    @EntityGraph(attributePaths = {"compressor", "compressor.site"})
    @Query(
            "select t from PumpUpTest t where exists (select 1 from t.instruments i where i.instrumentId = :instrumentId)"
                    + " order by t.performedAt, t.id")
    List<PumpUpTest> findWithInstrument(long instrumentId);

    /**
     * The tests after an id, for reading all in batches; site or compressor 0 stands for all.
     *
     * @param from earliest time of the test
     * @param to latest time of the test
     */
    @EntityGraph(attributePaths = {"compressor", "compressor.site"})
    @Query("select t from PumpUpTest t where t.id > :id and (:siteId = 0L or t.compressor.site.id = :siteId)"
            + " and (:compressorId = 0L or t.compressor.id = :compressorId)"
            + " and t.performedAt between :from and :to order by t.id")
    List<PumpUpTest> findNext(long id, long siteId, long compressorId, Instant from, Instant to, Limit limit);

    long count();
}
