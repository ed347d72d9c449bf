package plantair.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import plantair.quantity.Entered;
import plantair.site.Site;
import plantair.site.SiteFacts;
import plantair.testing.Database;
import plantair.testing.OnH2;

@OnH2
final class KeptUntilChangeTests {

    private static final SiteFacts SITE =
            new SiteFacts("North works", "America/Chicago", Entered.parse("600 [ft_i]"), null, "");

    @Autowired
    private Changes changes;

    @Autowired
    private Database database;

    @Autowired
    private Register<SiteFacts, Site> sites;

    @Autowired
    private JdbcTemplate jdbc;

    private final AtomicReference<Instant> now = new AtomicReference<>(Instant.parse("2026-06-15T12:01:00Z"));
    private final AtomicInteger made = new AtomicInteger();
    private KeptUntilChange<Integer> kept;

    @BeforeEach
    void startEmpty() {
        database.wipe();
        InstantSource clock = now::get;
        kept = new KeptUntilChange<>(changes, clock.withZone(ZoneOffset.UTC), made::incrementAndGet);
    }

    private void change() {
        sites.add(new Site(SITE), "registered", "Ann");
    }

    @Test
    void isMadeOnceWhileNobodyChangesAnything() {
        assertThat(kept.get()).isEqualTo(1);
        now.updateAndGet(time -> time.plus(Duration.ofMinutes(13)));

        assertThat(kept.get()).isEqualTo(1);
    }

    @Test
    void isMadeAnewAfterAChange() {
        kept.get();
        change();

        assertThat(kept.get()).isEqualTo(2);
        assertThat(kept.get()).isEqualTo(2);
    }

    @Test
    void isMadeAnewWhenADayMayHaveBegun() {
        kept.get();
        now.set(Instant.parse("2026-06-15T12:15:00Z"));

        assertThat(kept.get()).isEqualTo(2);
    }

    /** While it is read somebody changes something: what was read may be of the time before. */
    @Test
    void isMadeAnewAfterAChangeThatCameWhileItWasRead() {
        var slow = new KeptUntilChange<>(changes, InstantSource.system().withZone(ZoneOffset.UTC), () -> {
            int number = made.incrementAndGet();
            if (number == 1) {
                change();
            }
            return number;
        });

        assertThat(slow.get()).isEqualTo(1);
        assertThat(slow.get()).isEqualTo(2);
    }

    @Test
    void isMadeAnewWhenItIsToBeForgotten() {
        kept.get();
        kept.forget();

        assertThat(kept.get()).isEqualTo(2);
    }

    @Test
    void keepsNothingWhereTheEndOfTheChainIsNotKnown() {
        jdbc.update("delete from chain_end");

        assertThat(kept.get()).isEqualTo(1);
        assertThat(kept.get()).isEqualTo(2);
    }
}
