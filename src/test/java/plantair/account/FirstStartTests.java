package plantair.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plantair.testing.AppProcess;
import plantair.testing.Client;
import plantair.testing.People;

/** The first start of the real program: nobody gets in by a password that stands in the source. */
final class FirstStartTests {

    private static final Pattern DEMO = Pattern.compile("password of this start: (\\S+)");

    @TempDir
    private Path directory;

    @Test
    void printsACodeOnceAndOpensTheFirstAccountWithIt() {
        try (AppProcess app = AppProcess.onH2File(directory, AppProcess.WHOLE)) {
            assertThat(app.log()).containsOnlyOnce("one-time code");
            var stranger = Client.stranger(app.baseUrl());
            assertThat(stranger.get("/").statusCode()).isEqualTo(302);
            assertThat(stranger.get("/login").headers().firstValue("Location").orElseThrow())
                    .endsWith("/setup");

            Client ann = Client.first(app);

            assertThat(ann.get("/accounts").body()).contains("Ann");
            assertThat(stranger.get("/setup").statusCode()).isEqualTo(404);
            app.restart();
            assertThat(app.log()).doesNotContain("one-time code");
        }
    }

    @Test
    void takesTheFirstAdministratorFromSettingsForOneSignIn() {
        try (AppProcess app = AppProcess.onH2File(
                directory, "--plantair.first-admin-name=ann", "--plantair.first-admin-password=" + People.PASSWORD)) {
            assertThat(app.log()).doesNotContain("one-time code", People.PASSWORD);

            var ann = Client.signedIn(app.baseUrl(), "ann", People.PASSWORD);

            assertThat(ann.get("/").headers().firstValue("Location").orElseThrow())
                    .endsWith("/account");
            assertThat(ann.get("/account").body()).contains("Choose a password of your own");
        }
    }

    @Test
    void doesNotStartWithAPoorPasswordInTheSettings() {
        assertThatThrownBy(() -> AppProcess.onH2File(
                        directory, "--plantair.first-admin-name=ann", "--plantair.first-admin-password=changeme"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("plantair.first-admin-password: password.tooShort");
    }

    @Test
    void opensTheDemoWithAPasswordMadeAtEachStart() {
        try (AppProcess app = AppProcess.onH2File(directory, "--plantair.demo=true")) {
            String first = demoPassword(app);
            for (String role : new String[] {"administrator", "manager", "technician", "auditor"}) {
                assertThat(Client.signedIn(app.baseUrl(), "demo-" + role, first)
                                .get("/")
                                .statusCode())
                        .as(role)
                        .isEqualTo(200);
            }

            app.restart();

            assertThat(demoPassword(app)).isNotEqualTo(first);
            assertThat(Client.signedIn(app.baseUrl(), "demo-auditor", first)
                            .get("/")
                            .statusCode())
                    .isEqualTo(302);
        }
    }

    private static String demoPassword(AppProcess app) {
        var said = DEMO.matcher(app.log());
        assertThat(said.find()).isTrue();
        return said.group(1);
    }
}
