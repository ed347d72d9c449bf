package plantair.demand;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import plantair.register.ChangeKind;
import plantair.register.Changes;
import plantair.register.Register;

/** The registers of what takes air, and of the choices of the sites, as beans. */
@Configuration(proxyBeanMethods = false)
class DemandConfiguration {

    @Bean
    Register<DemandFacts, SiteDemand> demandRegister(DemandItems items, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.DEMAND_ITEM, items, changes, clock);
    }

    @Bean
    Register<SupplyFacts, SupplyChoice> supplyChoiceRegister(
            SupplyChoiceRecords records, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.SUPPLY_CHOICE, records, changes, clock);
    }
}
