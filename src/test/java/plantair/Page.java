package plantair;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * A page that is asked for in tests, as {@code queries/pages.txt} lists them.
 *
 * @param pattern as it is mapped
 * @param most statements that it may send
 * @param grows whether it may send more where there is more, as an export that reads in batches
 * @param example which record of a table it shows, or an address with questions to the database in braces
 */
record Page(String pattern, int most, boolean grows, String example) {

    private static final Pattern QUESTION = Pattern.compile("\\{(select[^}]*)}");

    static List<Page> all() throws IOException {
        return new ClassPathResource("queries/pages.txt")
                .getContentAsString(StandardCharsets.UTF_8)
                .lines()
                .filter(line -> line.startsWith("/"))
                .map(line -> line.split("; "))
                .map(part -> new Page(
                        part[0],
                        Integer.parseInt(part[1].replace("+", "")),
                        part[1].endsWith("+"),
                        part.length < 3 ? "= " + part[0] : part[2]))
                .toList();
    }

    /** An address of it. */
    String address(JdbcTemplate jdbc) {
        String asked = example.startsWith("= ")
                ? example.substring(2)
                : pattern.replaceFirst("\\{[a-z]+(:[^/]*)?}", "{select min(id) from " + example + "}");
        Matcher question = QUESTION.matcher(asked);
        return question.replaceAll(found -> String.valueOf(jdbc.queryForObject(found.group(1), Long.class)));
    }
}
