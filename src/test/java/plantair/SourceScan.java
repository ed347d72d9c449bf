package plantair;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Looks for a pattern in source text, comments left out. For faults that byte code does not show. */
final class SourceScan {

    private static final Pattern BLOCK_COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern LINE_COMMENT = Pattern.compile("//[^\n]*");

    private SourceScan() {}

    /** Java files below a folder. */
    static List<Path> javaFiles(Path root) {
        try (Stream<Path> files = Files.walk(root)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** File, line number and line of each find. */
    static List<String> finds(List<Path> files, Pattern pattern) {
        return files.stream().flatMap(file -> finds(file, pattern)).toList();
    }

    private static Stream<String> finds(Path file, Pattern pattern) {
        List<String> lines = withoutComments(read(file)).lines().toList();
        return IntStream.range(0, lines.size())
                .filter(i -> pattern.matcher(lines.get(i)).find())
                .mapToObj(i -> file + ":" + (i + 1) + ": " + lines.get(i).strip());
    }

    private static String withoutComments(String text) {
        String code = BLOCK_COMMENT
                .matcher(text)
                .replaceAll(comment -> "\n".repeat((int)
                        comment.group().chars().filter(c -> c == '\n').count()));
        return LINE_COMMENT.matcher(code).replaceAll("");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
