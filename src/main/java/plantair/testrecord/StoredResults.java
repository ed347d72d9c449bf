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

    List<StoredResult> findByKeyTestIdIn(Collection<Long> testIds);

    List<StoredResult> findByCompressorIdAndCurrentRecordTrueOrderByPerformedAtAscKeyTestIdAsc(long compressorId);

    List<StoredResult> findByCompressorIdAndCurrentRecordTrueOrderByPerformedAtDescKeyTestIdDesc(
            long compressorId, Limit limit);

    List<StoredResult> findByCompressorIdInAndCurrentRecordTrueOrderByPerformedAtAscKeyTestIdAsc(
            Collection<Long> compressorIds);

    @Modifying
    @Query("delete from StoredResult r where r.key.testId between :first and :last")
    int deleteBetween(long first, long last);

    @Query("select t.id from PumpUpTest t where not exists (select 1 from StoredResult r where r.key.testId = t.id"
            + " and r.key.methodVersion = t.methodVersion) order by t.id")
    List<Long> testsWithoutResult();

    long count();
}
