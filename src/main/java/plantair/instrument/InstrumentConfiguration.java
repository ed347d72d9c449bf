package plantair.instrument;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import plantair.register.ChangeKind;
import plantair.register.Changes;
import plantair.register.Register;

/** The register of instruments as a bean. */
@Configuration(proxyBeanMethods = false)
class InstrumentConfiguration {

    @Bean
    Register<InstrumentFacts, Instrument> instrumentRegister(Instruments instruments, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.INSTRUMENT, instruments, changes, clock);
    }
}
