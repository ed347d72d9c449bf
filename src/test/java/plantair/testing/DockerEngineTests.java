package plantair.testing;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

final class DockerEngineTests {

    @Test
    void hearsAnEngineThatAnswers() throws IOException {
        HttpServer engine = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        engine.createContext("/_ping", exchange -> exchange.sendResponseHeaders(200, -1));
        engine.start();

        boolean answers =
                DockerEngine.answers("tcp://127.0.0.1:" + engine.getAddress().getPort());
        engine.stop(0);

        assertThat(answers).isTrue();
    }

    @Test
    void givesUpOnASilentEngineInSeconds() throws IOException {
        try (ServerSocket silent = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            Instant start = Instant.now();

            boolean answers = DockerEngine.answers("tcp://127.0.0.1:" + silent.getLocalPort());

            assertThat(answers).isFalse();
            assertThat(Duration.between(start, Instant.now())).isLessThan(Duration.ofSeconds(4));
        }
    }

    @Test
    void findsNoEngineBehindAMissingSocketFile() {
        assertThat(DockerEngine.answers("unix:///nowhere/docker.sock")).isFalse();
    }
}
