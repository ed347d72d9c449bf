package plantair.due;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The addresses that calendars read. */
interface CalendarFeeds extends Repository<CalendarFeed, Long> {

    CalendarFeed save(CalendarFeed feed);

    List<CalendarFeed> findByAccountIdOrderById(long accountId);

    long countByAccountId(long accountId);

    /** The feed of this digest, as long as its account may sign in. */
    @Query("select f from CalendarFeed f left join fetch f.site join Account a on a.id = f.accountId"
            + " where f.tokenDigest = :digest and a.facts.enabled = true")
    Optional<CalendarFeed> findOpen(String digest);

    @Modifying
    @Query("delete from CalendarFeed f where f.id = :id and f.accountId = :accountId")
    int delete(long id, long accountId);
}
