package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plantair.testing.AppProcess;
import plantair.testing.Http;
import plantair.testing.OwnPostgres;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/**
 * Killed (SIGKILL) at random moments while people write: every save that was acknowledged is there, whole, with its result,
 * and the program starts again. Real processes, fixed seed; {@code -Dfaults=50} for more moments than the usual few.
 */
final class KilledProcessTests {

    private static final int MOMENTS = Integer.getInteger("faults", 4);
    private static final long SEED = 20261125;
    private static final int LONGEST_WAIT_MS = 1_500;

    private final Http http = new Http();
    private final Random random = new Random(SEED);

    @TempDir
    private Path folder;

    @Test
    void losesNothingOnH2() throws Exception {
        try (AppProcess app = AppProcess.onH2File(folder)) {
            killAgainAndAgain(app);
        }
    }

    @Test
    void losesNothingOnPostgres() throws Exception {
        try (var server = OwnPostgres.start(folder.resolve("server"));
                AppProcess app = AppProcess.onDatabase(folder, server.jdbcUrl(), server.user())) {
            killAgainAndAgain(app);
        }
    }

    private void killAgainAndAgain(AppProcess app) throws Exception {
        register(app);
        var writers = new Writers(http);
        for (int moment = 1; moment <= MOMENTS; moment++) {
            int before = writers.acknowledged();
            writers.start(app);
            Thread.sleep(random.nextInt(LONGEST_WAIT_MS));
            if (moment == 1) {
                writers.awaitOne();
            }
            app.killHard();
            writers.stop();
            app.restart();
            writers.check(app, "kill " + moment + " after " + (writers.acknowledged() - before) + " more");
        }
    }

    /** The application stays; only the server is killed, and it finds its way back by itself. */
    @Test
    void losesNothingWhenTheDatabaseServerIsKilled() throws Exception {
        try (var server = OwnPostgres.start(folder.resolve("server"));
                AppProcess app = AppProcess.onDatabase(folder, server.jdbcUrl(), server.user())) {
            register(app);
            var writers = new Writers(http);
            writers.start(app);
            writers.awaitOne();
            Thread.sleep(random.nextInt(LONGEST_WAIT_MS));

            server.killHard();
            writers.stop();

            HttpResponse<String> refused = http.post(app, Writers.test("while it is away"));
            assertThat(refused.statusCode()).isEqualTo(503);
            assertThat(refused.body()).contains("The records cannot be reached just now", "while it is away");
            server.startAgain();
            writers.check(app, "server killed");
            http.saved(app, Writers.test("after it came back"));
        }
    }

    private void register(AppProcess app) throws IOException, InterruptedException {
        for (SentForm form : List.of(PlantForms.SITE, PlantForms.COMPRESSOR, PlantForms.RECEIVER)) {
            http.saved(app, form);
        }
    }
}
