package plantair.paper;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A page to be made a PDF.
 *
 * @param template its template; it needs a title and must not link to pages of this site
 * @param variables what the template shows
 * @param styles style sheets on the class path
 * @param size of the sheets
 * @param locale language of the words
 * @param madeAt written into the file
 */
public record Printout(
        String template,
        Map<String, Object> variables,
        List<String> styles,
        PaperSize size,
        Locale locale,
        Instant madeAt) {

    public Printout {
        variables = Map.copyOf(variables);
        styles = List.copyOf(styles);
    }
}
