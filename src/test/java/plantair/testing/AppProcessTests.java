package plantair.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class AppProcessTests {

    @TempDir
    private Path directory;

    @Test
    void startsAgainOnTheSameFileAfterBeingKilled() throws IOException, InterruptedException {
        try (AppProcess app = AppProcess.onH2File(directory)) {
            assertThat(statusOfHome(app)).isBetween(200, 499);
            String first = app.baseUrl();

            app.killHard();
            assertThatThrownBy(() -> statusOfHome(first)).isInstanceOf(IOException.class);

            app.restart();
            assertThat(statusOfHome(app)).isBetween(200, 499);
            assertThat(directory.resolve("plant-air.mv.db")).exists();
        }
    }

    @Test
    void showsTheLogOfAnApplicationThatCannotStart() {
        assertThatThrownBy(() -> AppProcess.onH2File(directory, "--server.port=-2"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("server.port");
    }

    private static int statusOfHome(AppProcess app) throws IOException, InterruptedException {
        return statusOfHome(app.baseUrl());
    }

    private static int statusOfHome(String baseUrl) throws IOException, InterruptedException {
        HttpRequest home = HttpRequest.newBuilder(URI.create(baseUrl + "/")).build();
        return HttpClient.newHttpClient().send(home, BodyHandlers.discarding()).statusCode();
    }
}
