package plantair.vessel;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import plantair.register.ChangeKind;
import plantair.register.Changes;
import plantair.register.Register;

/** The registers of valves and certificates as beans. */
@Configuration(proxyBeanMethods = false)
class VesselConfiguration {

    @Bean
    Register<ValveFacts, ReliefValve> valveRegister(ReliefValves valves, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.VALVE, valves, changes, clock);
    }

    @Bean
    Register<CertificateFacts, VesselCertificate> certificateRegister(
            VesselCertificates certificates, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.CERTIFICATE, certificates, changes, clock);
    }
}
