package plantair.due;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import plantair.register.ChangeKind;
import plantair.register.Changes;
import plantair.register.Register;

/** The register of intervals as a bean. */
@Configuration(proxyBeanMethods = false)
class DueConfiguration {

    @Bean
    Register<IntervalFacts, DueInterval> intervalRegister(DueIntervals records, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.INTERVAL, records, changes, clock);
    }
}
