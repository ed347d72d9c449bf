package plantair.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import plantair.testing.FixedClock;

class SetUpCodeTests {

    private final AtomicReference<Clock> time = new AtomicReference<>(Clock.fixed(FixedClock.NOW, ZoneOffset.UTC));
    private final SetUpCode code = new SetUpCode(new Clock() {
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
    });

    private void pass(Duration length) {
        time.set(Clock.offset(time.get(), length));
    }

    @Test
    void has128BitsAndForgivesHyphensAndCapitals() {
        String made = code.make();

        assertThat(made.replace("-", "")).matches("[0-9a-f]{32}");
        assertThat(code.matches(made.replace("-", " ").toUpperCase(Locale.ROOT)))
                .isTrue();
        assertThat(code.make()).isNotEqualTo(made);
        assertThat(code.matches(made)).as("only the last one counts").isFalse();
    }

    @Test
    void looksAtNoneForAWhileAfterAWrongOne() {
        String made = code.make();

        assertThat(code.matches("0".repeat(32))).isFalse();
        assertThat(code.matches(made)).as("too soon").isFalse();
        pass(Duration.ofMillis(1_999));
        assertThat(code.matches(made)).isFalse();
        pass(Duration.ofMillis(1));
        assertThat(code.matches(made)).isTrue();

        assertThat(code.matches("")).isFalse();
        pass(Duration.ofMillis(3_999));
        assertThat(code.matches(made)).as("twice as long").isFalse();
        pass(Duration.ofMillis(1));
        assertThat(code.matches(made)).isTrue();
    }

    @Test
    void matchesNothingBeforeItIsMadeAndAfterItWasUsed() {
        assertThat(code.matches("")).isFalse();
        String made = code.make();

        code.forget();

        assertThat(code.matches(made)).isFalse();
    }
}
