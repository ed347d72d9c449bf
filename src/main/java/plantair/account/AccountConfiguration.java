package plantair.account;

import java.time.Clock;
import java.util.Map;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import plantair.register.ChangeKind;
import plantair.register.Changes;
import plantair.register.Register;

/** The register of accounts and the hash of passwords as beans. */
@Configuration(proxyBeanMethods = false)
class AccountConfiguration {

    private static final String BCRYPT = "bcrypt";
    private static final String STRENGTH = "${plantair.bcrypt-strength:12}";

    @Bean
    Register<AccountFacts, Account> accountRegister(Accounts accounts, Changes changes, Clock clock) {
        return new Register<>(ChangeKind.ACCOUNT, accounts, changes, clock);
    }

    /** The hash names its kind, so that a later version can use another beside it. */
    @Bean
    PasswordEncoder passwordEncoder(@Value(STRENGTH) int strength) {
        return new DelegatingPasswordEncoder(BCRYPT, Map.of(BCRYPT, new BCryptPasswordEncoder(strength)));
    }

    @Bean
    NobodysHash nobodysHash(@Value(STRENGTH) int strength) {
        return NobodysHash.ofStrength(strength);
    }
}
