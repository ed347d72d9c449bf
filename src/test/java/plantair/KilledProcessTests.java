package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plantair.testing.AppProcess;
import plantair.testing.Client;
import plantair.testing.OwnPostgres;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/**
 * Killed (SIGKILL) at random moments while people write: every save that was acknowledged is there, whole, with its result,
 * and the program starts again; the session is there too, nobody signs in again. Real processes, fixed seed; {@code -Dfaults=50} for more moments than the usual few.
 */
final class KilledProcessTests {

    private static final int MOMENTS = Integer.getInteger("faults", 2);
    private static final long SEED = 20261125;
    private static final int LONGEST_WAIT_MS = 1_500;

    private final Random random = new Random(SEED);

    @TempDir
    private Path folder;

    @Test
    void losesNothingOnH2() throws Exception {
        try (AppProcess app = AppProcess.onH2File(folder)) {
            Client ann = registered(app);
            killAgainAndAgain(app, ann, new Writers(ann), MOMENTS);
        }
    }

    /** At the first moment only the server is killed: the application stays, and finds its way back by itself. */
    @Test
    void losesNothingOnPostgres() throws Exception {
        try (var server = OwnPostgres.start(folder.resolve("server"));
                AppProcess app = AppProcess.onDatabase(folder, server.jdbcUrl(), server.user())) {
            Client ann = registered(app);
            var writers = new Writers(ann);
            killTheServer(server, app, ann, writers);
            killAgainAndAgain(app, ann, writers, MOMENTS - 1);
        }
    }

    private void killAgainAndAgain(AppProcess app, Client ann, Writers writers, int moments) throws Exception {
        for (int moment = 1; moment <= moments; moment++) {
            int before = writers.acknowledged();
            writers.start();
            Thread.sleep(random.nextInt(LONGEST_WAIT_MS));
            if (moment == 1) {
                writers.awaitMoreThan(before);
            }
            app.killHard();
            writers.stop();
            app.restart();
            ann.moveTo(app.baseUrl());
            writers.check(app, "kill " + moment + " after " + (writers.acknowledged() - before) + " more");
        }
    }

    private void killTheServer(OwnPostgres server, AppProcess app, Client ann, Writers writers) throws Exception {
        writers.start();
        writers.awaitMoreThan(0);
        Thread.sleep(random.nextInt(LONGEST_WAIT_MS));

        SentForm form = Writers.test("while it is away").with("_csrf", ann.token());
        server.killHard();
        writers.stop();

        HttpResponse<String> refused = ann.postAsIs(form.address(), form.fields());
        assertThat(refused.statusCode()).isEqualTo(503);
        assertThat(refused.body()).contains("The records cannot be reached just now");
        server.startAgain();
        writers.check(app, "server killed");
        ann.saved(Writers.test("after it came back"));
    }

    private static Client registered(AppProcess app) {
        Client ann = Client.first(app);
        for (SentForm form : List.of(PlantForms.SITE, PlantForms.COMPRESSOR, PlantForms.RECEIVER)) {
            ann.saved(form);
        }
        return ann;
    }
}
