package plantair.upgrade;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever adds a migration decides about its archive. */
final class ArchiveOfEachStepTests {

    private static final String WITH_A_LATER_ONE = "no program ended with it: it came with a later one";
    private static final String ON_A_BRANCH = "no program had it with the migrations before it as they are today";

    /** Its program is that of today. */
    private static final String NEWEST = "its archive is made when a later one comes";

    /** The migrations of which there is no archive, and why. */
    private static final Map<Integer, String> WITHOUT = Map.ofEntries(
            Map.entry(1, WITH_A_LATER_ONE),
            Map.entry(2, WITH_A_LATER_ONE),
            Map.entry(9, ON_A_BRANCH),
            Map.entry(11, WITH_A_LATER_ONE),
            Map.entry(13, WITH_A_LATER_ONE),
            Map.entry(14, ON_A_BRANCH),
            Map.entry(18, WITH_A_LATER_ONE),
            Map.entry(20, ON_A_BRANCH),
            Map.entry(22, WITH_A_LATER_ONE),
            Map.entry(23, ON_A_BRANCH),
            Map.entry(25, WITH_A_LATER_ONE),
            Map.entry(26, WITH_A_LATER_ONE),
            Map.entry(30, NEWEST));

    @Test
    void isThereOrItIsSaidWhyNot() throws IOException {
        Set<Integer> decided = new TreeSet<>(WITHOUT.keySet());
        Archive.all().forEach(archive -> decided.add(archive.step()));

        assertThat(decided)
                .as("a new migration: make its archive as src/test/resources/archives/README.md says, or say in WITHOUT"
                        + " why there is none")
                .isEqualTo(migrations());
        assertThat(Archive.all()).noneMatch(archive -> WITHOUT.containsKey(archive.step()));
    }

    @Test
    void isDescribed() throws IOException {
        String described = Files.readString(Archive.FOLDER.resolve("README.md"));

        assertThat(Archive.all()).allSatisfy(archive -> assertThat(described).contains("| " + archive + " |"));
    }

    private static Set<Integer> migrations() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("db/migration"))) {
            return files.map(file -> file.getFileName().toString())
                    .map(name -> name.substring(1, name.indexOf("__")))
                    .map(Integer::valueOf)
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
