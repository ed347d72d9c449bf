package plantair.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import plantair.testing.FixedClock;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;

abstract class SetUpCodeTests {

    @Autowired
    private JdbcTemplate jdbc;

    private final AtomicReference<Clock> time = new AtomicReference<>(Clock.fixed(FixedClock.NOW, ZoneOffset.UTC));
    private SetUpCode code;
    private SetUpCode ofAnotherInstance;

    @BeforeEach
    void start() {
        code = new SetUpCode(jdbc, clock());
        ofAnotherInstance = new SetUpCode(jdbc, clock());
    }

    private Clock clock() {
        return new Clock() {
            @Override
            public ZoneId getZone() {
                return ZoneOffset.UTC;
            }

            @Override
            public Clock withZone(ZoneId zone) {
                return this;
            }

            @Override
            public Instant instant() {
                return time.get().instant();
            }
        };
    }

    @AfterEach
    void forget() {
        code.forget();
    }

    private void pass(Duration length) {
        time.set(Clock.offset(time.get(), length));
    }

    @Test
    void has128BitsAndForgivesHyphensAndCapitals() {
        String made = code.make();

        assertThat(made.replace("-", "")).matches("[0-9a-f]{32}");
        assertThat(code.matches(made.replace("-", " ").toUpperCase(Locale.ROOT)))
                .isTrue();
        assertThat(jdbc.queryForList("select hash from set_up_code", String.class))
                .hasSize(1)
                .doesNotContain(made.replace("-", ""));
    }

    @Test
    void isTakenByEveryInstanceForAWeek() {
        String one = code.make();
        String two = ofAnotherInstance.make();

        assertThat(two).isNotEqualTo(one);
        assertThat(ofAnotherInstance.matches(one)).isTrue();
        assertThat(code.matches(two)).isTrue();
        pass(Duration.ofDays(7));
        assertThat(code.matches(one)).isTrue();
        pass(Duration.ofMillis(1));
        assertThat(code.matches(one)).isFalse();
    }

    @Test
    void looksAtNoneForAWhileAfterAWrongOneWhicheverInstanceIsAsked() {
        String made = code.make();

        assertThat(code.matches("0".repeat(32))).isFalse();
        assertThat(ofAnotherInstance.matches(made)).as("too soon").isFalse();
        pass(Duration.ofMillis(1_999));
        assertThat(code.matches(made)).isFalse();
        pass(Duration.ofMillis(1));
        assertThat(code.matches(made)).isTrue();

        assertThat(ofAnotherInstance.matches("")).isFalse();
        pass(Duration.ofMillis(3_999));
        assertThat(code.matches(made)).as("twice as long").isFalse();
        pass(Duration.ofMillis(1));
        assertThat(code.matches(made)).isTrue();
    }

    @Test
    void matchesNothingBeforeItIsMadeAndAfterItWasUsed() {
        assertThat(code.matches("")).isFalse();
        String made = code.make();

        ofAnotherInstance.forget();

        assertThat(code.matches(made)).isFalse();
    }
}

@OnH2
final class SetUpCodeOnH2Tests extends SetUpCodeTests {}

@OnPostgres
final class SetUpCodeOnPostgresTests extends SetUpCodeTests {}
