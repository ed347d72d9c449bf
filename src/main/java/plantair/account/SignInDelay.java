package plantair.account;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.springframework.stereotype.Component;

/**
 * How long a name and an address must wait after wrong tries: twice as long each time, up to a quarter of an hour. Kept
 * in the table of sign-ins, so that it holds for all instances and over a restart. A name waits whether or not there is
 * such an account; a try while waiting is refused unseen and does not count.
 */
@Component
class SignInDelay {

    private static final int FREE_FOR_NAME = 4;
    private static final int FREE_FOR_ADDRESS = 20;
    private static final Duration FORGOTTEN_AFTER = Duration.ofDays(1);
    private static final Duration LONGEST = Duration.ofMinutes(15);
    private static final int DOUBLINGS = 10;

    private final AccountEvents events;
    private final Clock clock;

    SignInDelay(AccountEvents events, Clock clock) {
        this.events = events;
        this.clock = clock;
    }

    /** Whether a try must be refused now. */
    boolean holds(String username, String address) {
        Instant now = clock.instant();
        Instant since = now.minus(FORGOTTEN_AFTER);
        return holds(now, events.failuresOf(username, since) - FREE_FOR_NAME, events.lastFailureOf(username))
                || holds(now, events.failuresFrom(address, since) - FREE_FOR_ADDRESS, events.lastFailureFrom(address));
    }

    private static boolean holds(Instant now, long tooMany, Optional<Instant> last) {
        return tooMany > 0 && last.isPresent() && now.isBefore(last.get().plus(length(tooMany)));
    }

    /** 2 s, 4 s, 8 s … */
    static Duration length(long tooMany) {
        Duration delay = Duration.ofSeconds(1L << Math.min(tooMany, DOUBLINGS));
        return delay.compareTo(LONGEST) < 0 ? delay : LONGEST;
    }
}
