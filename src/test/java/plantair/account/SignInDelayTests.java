package plantair.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.crypto.bcrypt.BCrypt;
import org.springframework.security.crypto.password.PasswordEncoder;
import plantair.account.AccountEvent.Kind;
import plantair.testing.Database;
import plantair.testing.FixedClock;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;

/** The delay after wrong passwords, with a clock that the test moves. */
abstract class SignInDelayTests {

    private static final String HERE = "192.0.2.7";

    @Autowired
    private Accounts accounts;

    @Autowired
    private AccountEvents events;

    @Autowired
    private PasswordEncoder passwords;

    @Autowired
    private NobodysHash nobodysHash;

    @Autowired
    private Database database;

    private final MovedClock clock = new MovedClock();
    private SignIn signIn;

    /** A clock that stands until it is moved. */
    private static final class MovedClock extends Clock {

        private Instant now = FixedClock.NOW;

        void pass(Duration time) {
            now = now.plus(time);
        }

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
            return now;
        }
    }

    @AfterEach
    void letInPeople() {
        database.letInPeople();
    }

    @BeforeEach
    void startEmpty() {
        database.wipe();
        signIn = new SignIn(accounts, events, new SignInDelay(events, clock), passwords, nobodysHash, clock);
    }

    private boolean opens(String name, String password, String address) {
        return signIn.check(name, password, address).isPresent();
    }

    private void fail(String name, int times, String address) {
        for (int i = 0; i < times; i++) {
            clock.pass(Duration.ofMinutes(16));
            assertThat(opens(name, "wrong", address)).isFalse();
        }
    }

    @Test
    void doesNotHoldUpWhoMistypesAFewTimes() {
        fail("ann", 4, HERE);

        assertThat(opens("ann", People.PASSWORD, HERE)).isTrue();
    }

    @Test
    void makesANameWaitLongerEachTime() {
        fail("ann", 5, HERE);
        assertThat(opens("ann", People.PASSWORD, "198.51.100.1"))
                .as("from elsewhere too")
                .isFalse();
        clock.pass(Duration.ofMillis(1_999));
        assertThat(opens("ann", People.PASSWORD, HERE)).isFalse();
        clock.pass(Duration.ofMillis(1));
        assertThat(opens("ann", People.PASSWORD, HERE)).isTrue();

        fail("ann", 1, HERE);
        clock.pass(Duration.ofMillis(3_999));
        assertThat(opens("ann", People.PASSWORD, HERE)).isFalse();
        clock.pass(Duration.ofMillis(1));
        assertThat(opens("ann", People.PASSWORD, HERE)).isTrue();
    }

    @Test
    void forgetsWrongTriesOnceAPersonSignedIn() {
        fail("ann", 4, HERE);
        signIn.write(Kind.SIGNED_IN, "ann", HERE);

        fail("ann", 4, HERE);

        assertThat(opens("ann", People.PASSWORD, HERE)).isTrue();
    }

    /** As the hash of somebody's password: the same kind and strength, and so the same time. */
    @Test
    void comparesANameWithoutAnAccountWithAHashLikeTheOthers() {
        String somebodys = passwords.encode(People.PASSWORD);
        int kindAndStrength = somebodys.lastIndexOf('$') + 1;

        assertThat(nobodysHash.value()).hasSameSizeAs(somebodys).startsWith(somebodys.substring(0, kindAndStrength));
        assertThat(passwords.upgradeEncoding(nobodysHash.value())).isFalse();
        assertThat(passwords.matches(People.PASSWORD, nobodysHash.value())).isFalse();
        assertThat(BCrypt.hashpw(People.PASSWORD, nobodysHash.value().substring("{bcrypt}".length())))
                .as("it is hashed to the end, not refused at sight")
                .startsWith(nobodysHash.value().substring("{bcrypt}".length(), "{bcrypt}".length() + 29));
    }

    @Test
    void makesANameWaitThatNoAccountHas() {
        fail("nobody", 5, HERE);
        long before = events.count();

        opens("nobody", "wrong", HERE);

        assertThat(events.count()).as("refused unseen").isEqualTo(before);
    }

    @Test
    void makesAnAddressWaitThatTriesManyNames() {
        for (int i = 0; i < 21; i++) {
            opens("name" + i, "wrong", HERE);
        }

        assertThat(opens("ann", People.PASSWORD, HERE)).isFalse();
        assertThat(opens("ann", People.PASSWORD, "198.51.100.1")).isTrue();
        clock.pass(Duration.ofSeconds(2));
        assertThat(opens("ann", People.PASSWORD, HERE)).isTrue();
    }

    @Test
    void refusesAPasswordThatBcryptWouldCut() {
        String long72 = "x".repeat(72);
        Account bo = accounts.findByFactsUsername("bo").orElseThrow();
        bo.renewPassword(passwords.encode(long72), false);
        accounts.saveAndFlush(bo);

        assertThat(opens("bo", long72 + "y", HERE)).isFalse();
        assertThat(opens("bo", long72, HERE)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"1, 2", "2, 4", "8, 256", "9, 512", "10, 900", "1000000, 900"})
    void doublesUpToAQuarterOfAnHour(long tooMany, long seconds) {
        assertThat(SignInDelay.length(tooMany)).hasSeconds(seconds);
    }
}

@OnH2
final class SignInDelayOnH2Tests extends SignInDelayTests {}

@OnPostgres
final class SignInDelayOnPostgresTests extends SignInDelayTests {}
