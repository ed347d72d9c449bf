package plantair.operation;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.core.env.Environment;

/**
 * The command {@code health}: asks the running program whether it is ready, for a container that has no other program to ask
 * with. It reads the same settings.
 */
public final class HealthCommand {

    private static final String NAME = "health";
    private static final String READINESS = "/actuator/health/readiness";

    /** A database that is away is noticed after ten seconds. */
    private static final Duration PATIENCE = Duration.ofSeconds(15);

    private static final int OK = 200;

    private HealthCommand() {}

    /** Whether the program was started for it. */
    public static boolean isOne(String... args) {
        return args.length > 0 && args[0].equals(NAME);
    }

    /**
     * Asks.
     *
     * @return the exit code, 0 when the program is ready
     */
    public static int run(String... args) {
        var settings = new SpringApplication(HealthCommand.class);
        settings.setWebApplicationType(WebApplicationType.NONE);
        settings.setLogStartupInfo(false);
        try (var context = settings.run(args)) {
            return isReady(address(context.getEnvironment())) ? 0 : 1;
        }
    }

    private static URI address(Environment settings) {
        String host = settings.getProperty("server.address", "127.0.0.1");
        return URI.create("http://" + (host.equals("0.0.0.0") ? "127.0.0.1" : host) + ":"
                + settings.getProperty("server.port", "8080")
                + settings.getProperty("server.servlet.context-path", "") + READINESS);
    }

    private static boolean isReady(URI address) {
        var request = HttpRequest.newBuilder(address).timeout(PATIENCE).build();
        try {
            return HttpClient.newHttpClient()
                            .send(request, BodyHandlers.discarding())
                            .statusCode()
                    == OK;
        } catch (IOException noAnswer) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
