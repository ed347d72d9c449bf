package plantair.account;

import java.time.Instant;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

/** The sign-ins; they can be added and read, not altered. */
public interface AccountEvents extends Repository<AccountEvent, Long> {

    AccountEvent save(AccountEvent event);

    long count();

    Page<AccountEvent> findAllByOrderByIdDesc(Pageable page);

    /** Wrong tries at one name since it last signed in. */
    @Query("""
            select count(e) from AccountEvent e
            where e.username = :username and e.kind = 'FAILED' and e.happenedAt > :since
            and e.id > (select coalesce(max(s.id), 0) from AccountEvent s
                        where s.username = :username and s.kind = 'SIGNED_IN')""")
    long failuresOf(String username, Instant since);

    /** Wrong tries from one address. */
    @Query(
            "select count(e) from AccountEvent e where e.address = :address and e.kind = 'FAILED' and e.happenedAt > :since")
    long failuresFrom(String address, Instant since);

    @Query("select max(e.happenedAt) from AccountEvent e where e.username = :username and e.kind = 'FAILED'")
    Optional<Instant> lastFailureOf(String username);

    @Query("select max(e.happenedAt) from AccountEvent e where e.address = :address and e.kind = 'FAILED'")
    Optional<Instant> lastFailureFrom(String address);
}
