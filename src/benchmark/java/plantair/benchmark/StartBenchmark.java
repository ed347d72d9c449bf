package plantair.benchmark;

import java.io.IOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** How long the packaged program takes until it is ready, and what memory it holds then and after some pages (Linux). */
public final class StartBenchmark {

    private static final Logger LOG = System.getLogger("benchmark");
    private static final int TIMES = 5;
    private static final int PAGES = 300;
    private static final HttpClient HTTP = HttpClient.newHttpClient();

    private StartBenchmark() {}

    /** Takes the jar and the database from the settings; the program must have no other port than 8099. */
    public static void main(String[] arguments) throws Exception {
        double[] seconds = new double[TIMES];
        double[] ready = new double[TIMES];
        double[] used = new double[TIMES];
        for (int i = 0; i < TIMES; i++) {
            Path folder = Files.createTempDirectory("start");
            long start = System.nanoTime();
            Process process = start(folder);
            try {
                await(process);
                seconds[i] = (System.nanoTime() - start) / 1e9;
                ready[i] = megabytes(process);
                Visitor visitor =
                        Visitor.signedIn("http://localhost:8099", Settings.of("user"), Settings.of("password"));
                for (int page = 0; page < PAGES; page++) {
                    visitor.millis(page % 2 == 0 ? "/" : "/compressors/7");
                }
                used[i] = megabytes(process);
            } finally {
                process.destroy();
                process.waitFor(1, TimeUnit.MINUTES);
            }
        }
        Arrays.sort(seconds);
        Arrays.sort(ready);
        Arrays.sort(used);
        LOG.log(Level.INFO, String.format(
                "median of %d starts: ready after %.1f s, resident memory %.0f MB, after %d pages %.0f MB",
                TIMES, seconds[TIMES / 2], ready[TIMES / 2], PAGES, used[TIMES / 2]));
    }

    private static Process start(Path folder) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                "java",
                Settings.or("heap", "-Xmx256m"),
                "-jar",
                Path.of(Settings.of("jar")).toAbsolutePath().toString(),
                "--server.port=8099",
                "--spring.datasource.url=" + Settings.of("database"),
                "--spring.datasource.username=" + Settings.of("database-user"),
                "--spring.datasource.password=" + System.getProperty("benchmark.database-password", ""),
                "--plantair.demo=true",
                "--plantair.demo-password=" + Settings.of("password")));
        return new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile())
                .start();
    }

    private static void await(Process process) throws InterruptedException {
        var request = HttpRequest.newBuilder(URI.create("http://localhost:8099/actuator/health/readiness"))
                .build();
        while (process.isAlive()) {
            try {
                if (HTTP.send(request, BodyHandlers.discarding()).statusCode() == 200) {
                    return;
                }
            } catch (IOException notYet) {
                Thread.sleep(20);
            }
        }
        throw new IllegalStateException("the program ended");
    }

    private static double megabytes(Process process) throws IOException {
        return Files.readAllLines(Path.of("/proc/" + process.pid() + "/status")).stream()
                        .filter(line -> line.startsWith("VmRSS:"))
                        .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                        .findFirst()
                        .orElseThrow()
                / 1024.0;
    }
}
