package plantair.account;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.data.jpa.repository.Lock;
import plantair.register.Records;

/** All accounts, also those switched off. */
public interface Accounts extends Records<Account> {

    Optional<Account> findByFactsUsername(String username);

    boolean existsByFactsUsername(String username);

    Page<Account> findAllByOrderByFactsUsername(Pageable page);

    /** Held until the end of the transaction, so that two people cannot switch off each other. */
    @Lock(LockModeType.PESSIMISTIC_WRITE)
    List<Account> findByFactsRoleAndFactsEnabledTrueOrderById(Role role);
}
