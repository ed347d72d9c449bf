package plantair.leaktest;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The found leaks; they can be added and read, not altered. */
public interface FoundLeaks extends Repository<FoundLeak, Long> {

    String LINES = " from FoundLeak l left join LeakStep s on s.leakId = l.id and s.position ="
            + " (select max(t.position) from LeakStep t where t.leakId = l.id) where l.siteId = :siteId";
    String IS_OPEN = " and (s.id is null or s.kind = plantair.leaktest.StepKind.STILL_LEAKS)";

    FoundLeak saveAndFlush(FoundLeak leak);

    Optional<FoundLeak> findById(long id);

    /** Waits until nobody else records a step of this leak; until the end of the transaction nobody can. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    Optional<FoundLeak> findLockedById(long id);

    Optional<FoundLeak> findBySubmission(UUID submission);

    /** All of a site, newest first. */
    @Query(
            value = "select new plantair.leaktest.FoundLeakLine(l, s)" + LINES + " order by l.foundOn desc, l.id desc",
            countQuery = "select count(l) from FoundLeak l where l.siteId = :siteId")
    Page<FoundLeakLine> findLines(long siteId, Pageable page);

    /** Those whose last step is of a kind, newest first. */
    @Query(
            value = "select new plantair.leaktest.FoundLeakLine(l, s)" + LINES + " and s.kind = :last"
                    + " order by l.foundOn desc, l.id desc",
            countQuery = "select count(l)" + LINES + " and s.kind = :last")
    Page<FoundLeakLine> findLines(long siteId, StepKind last, Pageable page);

    /** Those that are open, the most urgent and oldest first. */
    @Query(
            value = "select new plantair.leaktest.FoundLeakLine(l, s)" + LINES + IS_OPEN
                    + " order by case l.priority when plantair.leaktest.LeakPriority.HIGH then 0"
                    + " when plantair.leaktest.LeakPriority.MEDIUM then 1 else 2 end, l.foundOn, l.id",
            countQuery = "select count(l)" + LINES + IS_OPEN)
    Page<FoundLeakLine> findOpenLines(long siteId, Pageable page);

    /** All that are open. */
    @Query("select l" + LINES + IS_OPEN)
    List<FoundLeak> findOpen(long siteId);
}
