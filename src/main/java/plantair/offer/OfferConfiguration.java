package plantair.offer;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import plantair.register.ChangeKind;
import plantair.register.Changes;
import plantair.register.Register;

/** The register of offers as a bean. */
@Configuration(proxyBeanMethods = false)
class OfferConfiguration {

    @Bean
    Register<OfferFacts, RegisteredOffer> offerRegister(Offers offers, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.OFFER, offers, changes, clock);
    }
}
