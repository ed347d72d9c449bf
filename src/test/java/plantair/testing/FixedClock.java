package plantair.testing;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;

/** Noon UTC on 15 June 2026 for every test of the whole application. */
@TestConfiguration(proxyBeanMethods = false)
public class FixedClock {

    public static final Instant NOW = Instant.parse("2026-06-15T12:00:00Z");

    @Bean
    @Primary
    Clock fixedClock() {
        return Clock.fixed(NOW, ZoneOffset.UTC);
    }
}
