package plantair.due;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.register.Sha256;
import plantair.site.Site;

/** Makes and takes back the private addresses of calendars. The secret is shown once; only its digest is kept. */
@Service
public class Calendars {

    /** More than anybody needs; keeps a script from filling the table. */
    static final int MOST = 20;

    private static final int BYTES = 32;

    private final CalendarFeeds feeds;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    Calendars(CalendarFeeds feeds, Clock clock) {
        this.feeds = feeds;
        this.clock = clock;
    }

    /**
     * Makes an address.
     *
     * @param site the one site that it tells of; null for all
     * @return its secret; empty when the account has too many already
     */
    @Transactional
    public Optional<String> make(long accountId, @Nullable Site site) {
        if (feeds.countByAccountId(accountId) >= MOST) {
            return Optional.empty();
        }
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        feeds.save(new CalendarFeed(accountId, Sha256.of(token), site, clock.instant()));
        return Optional.of(token);
    }

    /** Those of an account, oldest first. */
    @Transactional(readOnly = true)
    public List<CalendarFeed> of(long accountId) {
        return feeds.findByAccountIdOrderById(accountId);
    }

    /** Takes back an address of this account; that of another account stays. */
    @Transactional
    public boolean revoke(long id, long accountId) {
        return feeds.delete(id, accountId) > 0;
    }

    /** The address with this secret; empty when there is none, or its account is switched off. */
    @Transactional(readOnly = true)
    public Optional<CalendarFeed> find(String token) {
        return feeds.findOpen(Sha256.of(token));
    }
}
