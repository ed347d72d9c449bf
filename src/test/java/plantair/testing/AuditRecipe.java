package plantair.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** What an outsider does with an audit file: unpack it, and run the commands that lie in it. */
public final class AuditRecipe {

    private AuditRecipe() {}

    /** Unpacks the zip into a folder. */
    public static void unpack(byte[] file, Path folder) throws IOException {
        try (var zip = new ZipInputStream(new ByteArrayInputStream(file), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Path unpacked = folder.resolve(entry.getName());
                Files.createDirectories(unpacked.getParent());
                Files.write(unpacked, zip.readAllBytes());
            }
        }
    }

    /** Runs exactly the commands of the file; the test is skipped where a tool of theirs is missing. */
    public static String follow(Path folder) throws IOException, InterruptedException {
        assumeThat(List.of("bash", "sha256sum", "awk", "diff"))
                .as("tools of the recipe; skipped where one is missing")
                .allMatch(AuditRecipe::isOnPath);
        String text = Files.readString(folder.resolve("README.txt"));
        List<String> commands = text.substring(text.indexOf("TO CHECK"))
                .lines()
                .filter(line -> line.startsWith("  "))
                .toList();
        assertThat(commands).hasSizeGreaterThan(15);
        Files.write(folder.resolve("check.sh"), commands);
        Process process = new ProcessBuilder("bash", "check.sh")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return said;
    }

    private static boolean isOnPath(String tool) {
        return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(place -> Files.isExecutable(Path.of(place, tool)));
    }
}
