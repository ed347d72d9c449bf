package plantair.leaktest;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plantair.supply.SharedPart;

/**
 * The errors that the capacity of a machine shares with others.
 *
 * @param parts may be empty
 */
public record SharedParts(List<SharedPart> parts) {

    private static final String BETWEEN = "; ";
    private static final String IS = " = ";

    public SharedParts {
        parts = List.copyOf(parts);
    }

    /** Reads what {@link #text()} wrote. */
    public static SharedParts parse(String text) {
        return new SharedParts(Stream.of(text.split(BETWEEN))
                .filter(part -> !part.isBlank())
                .map(SharedParts::part)
                .toList());
    }

    private static SharedPart part(String text) {
        int is = text.lastIndexOf(IS);
        if (is < 0) {
            throw new IllegalArgumentException("no shared error: " + text);
        }
        return new SharedPart(text.substring(0, is), Double.parseDouble(text.substring(is + IS.length())));
    }

    /** One column of text: {@code gauge 3 = 0.01; volume RECEIVER 1 = 0.0115}. */
    public String text() {
        return parts.stream()
                .map(part -> part.source().replace(';', ',') + IS + part.relative())
                .collect(Collectors.joining(BETWEEN));
    }
}
