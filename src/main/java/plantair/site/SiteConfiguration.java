package plantair.site;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import plantair.register.ChangeKind;
import plantair.register.Changes;
import plantair.register.Register;

/** The register of sites as a bean. */
@Configuration(proxyBeanMethods = false)
class SiteConfiguration {

    @Bean
    Register<SiteFacts, Site> siteRegister(Sites sites, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.SITE, sites, changes, clock);
    }
}
