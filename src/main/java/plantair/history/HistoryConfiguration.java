package plantair.history;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import plantair.register.ChangeKind;
import plantair.register.Changes;
import plantair.register.Register;

/** The register of limits as a bean. */
@Configuration(proxyBeanMethods = false)
class HistoryConfiguration {

    @Bean
    Register<LimitFacts, PlantLimits> limitRegister(PlantLimitRecords records, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.LIMITS, records, changes, clock);
    }
}
