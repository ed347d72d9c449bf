package plantair.testing;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plantair.PlantAirApplication;

/**
 * The compiled program as one jar with an archive of the classes that a start loads, so that each start of a test takes a
 * third less. Made once a build, by the JVM that comes first; a JVM that cannot make the archive starts without it.
 */
final class QuickStart {

    private static final Path CLASSES = folderOf(PlantAirApplication.class);
    private static final Path TESTS = folderOf(QuickStart.class);
    private static final Path FOLDER = CLASSES.resolveSibling("quick-start");
    private static final long PATIENCE_MINUTES = 3;
    private static final QuickStart OF_THIS_BUILD = make();

    private final Path jar;
    private final Path archive;

    private QuickStart(String build) {
        jar = FOLDER.resolve(build + ".jar");
        archive = FOLDER.resolve(build + ".jsa");
    }

    /** The command that starts the program, up to its main class. */
    static List<String> command() {
        return Files.exists(OF_THIS_BUILD.archive)
                ? OF_THIS_BUILD.java("-XX:SharedArchiveFile=" + OF_THIS_BUILD.archive)
                : OF_THIS_BUILD.java("-Xshare:auto");
    }

    private static QuickStart make() {
        try {
            Files.createDirectories(FOLDER);
            var made = new QuickStart(build());
            try (var oneAtATime =
                    FileChannel.open(FOLDER.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
                oneAtATime.lock();
                if (!Files.exists(made.jar)) {
                    removeEarlier();
                    made.pack();
                    made.rehearse();
                }
            }
            return made;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void removeEarlier() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            files.filter(file -> !file.endsWith("lock")).map(Path::toFile).forEach(File::delete);
        }
    }

    /** Changes with every compilation that wrote something. */
    private static String build() throws IOException {
        try (Stream<Path> files = Files.walk(CLASSES)) {
            List<Long> times = files.filter(Files::isRegularFile)
                    .map(file -> file.toFile().lastModified())
                    .sorted()
                    .toList();
            return Integer.toHexString(times.hashCode());
        }
    }

    private void pack() throws IOException {
        Path part = FOLDER.resolve("part");
        try (OutputStream out = Files.newOutputStream(part);
                var packed = new JarOutputStream(out);
                Stream<Path> files = Files.walk(CLASSES)) {
            for (Path file : files.filter(path -> !path.equals(CLASSES)).toList()) {
                String name = CLASSES.relativize(file).toString().replace(File.separatorChar, '/');
                packed.putNextEntry(new JarEntry(Files.isDirectory(file) ? name + "/" : name));
                if (Files.isRegularFile(file)) {
                    Files.copy(file, packed);
                }
                packed.closeEntry();
            }
        }
        Files.move(part, jar, StandardCopyOption.ATOMIC_MOVE);
    }

    /** One start that ends as soon as everything is loaded. */
    private void rehearse() throws IOException {
        Process start = new ProcessBuilder(Stream.concat(
                                java("-XX:ArchiveClassesAtExit=" + archive, "-Dspring.context.exit=onRefresh").stream(),
                                Stream.of(
                                        "--server.port=0",
                                        "--spring.datasource.url=jdbc:h2:mem:rehearsal;MODE=PostgreSQL"
                                                + ";DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"))
                        .toList())
                .directory(FOLDER.toFile())
                .redirectErrorStream(true)
                .redirectOutput(FOLDER.resolve("rehearsal.log").toFile())
                .start();
        try {
            if (!start.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES)) {
                start.destroyForcibly();
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private List<String> java(String... options) {
        return Stream.of(
                        Stream.of(Path.of(System.getProperty("java.home"), "bin", "java")
                                .toString()),
                        Stream.of(options),
                        Stream.of(
                                "-XX:TieredStopAtLevel=1",
                                "-XX:+UseSerialGC",
                                "-Xmx512m",
                                "-cp",
                                classPath(),
                                PlantAirApplication.class.getName()))
                .flatMap(part -> part)
                .toList();
    }

    /** The test classes stay out: component scanning would find some of them. */
    private String classPath() {
        String all = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return Arrays.stream(all.split(File.pathSeparator))
                .map(entry -> Path.of(entry).toAbsolutePath())
                .filter(entry -> !entry.equals(TESTS))
                .map(entry -> entry.equals(CLASSES) ? jar : entry)
                .map(Path::toString)
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static Path folderOf(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toAbsolutePath();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
