package plantair.leaktest;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The recorded leak tests; they can be added and read, not altered. */
public interface LeakTests extends Repository<LeakTest, Long> {

    LeakTest saveAndFlush(LeakTest test);

    Optional<LeakTest> findById(long id);

    Optional<LeakTest> findBySubmission(UUID submission);

    Optional<LeakTest> findByEntrySupersedesId(long supersededId);

    List<LeakTest> findByIdGreaterThanOrderById(long id, Limit limit);

    /** Those of a site that took the place of none or were not taken the place of, newest first; what was withdrawn too. */
    @Query("select t from LeakTest t where t.siteId = :siteId"
            + " and not exists (select 1 from LeakTest later where later.entry.supersedesId = t.id)"
            + " order by t.performedAt desc, t.id desc")
    Page<LeakTest> findLast(long siteId, Pageable page);

    /** Those of the whole system of a site that count, newest first. */
    @Query("select t from LeakTest t where t.siteId = :siteId and not t.entry.withdrawn"
            + " and t.place = plantair.leaktest.LeakPlace.WHOLE_SYSTEM"
            + " and not exists (select 1 from LeakTest later where later.entry.supersedesId = t.id)"
            + " order by t.performedAt desc, t.id desc")
    List<LeakTest> findWholeSystem(long siteId, Limit limit);

    /** The last few of those of each of some sites, newest first. */
    @Query("select t from LeakTest t where t.siteId in :siteIds and t.id in (select n.id from LeakTest n"
            + " where n.siteId = t.siteId and not n.entry.withdrawn"
            + " and n.place = plantair.leaktest.LeakPlace.WHOLE_SYSTEM"
            + " and not exists (select 1 from LeakTest later where later.entry.supersedesId = n.id)"
            + " order by n.performedAt desc, n.id desc limit :each) order by t.performedAt desc, t.id desc")
    List<LeakTest> findWholeSystem(Collection<Long> siteIds, int each);
}
