package plantair.testrecord;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The gauge marks passed in a run.
 *
 * @param marks in the order they were passed, one or more
 */
public record Laps(List<Lap> marks) {

    private static final String BETWEEN = "; ";

    public Laps {
        marks = List.copyOf(marks);
    }

    /** Reads what {@link #text()} wrote. */
    public static Laps parse(String text) {
        return new Laps(Stream.of(text.split(BETWEEN)).map(Lap::parse).toList());
    }

    /** One column of text. */
    public String text() {
        return marks.stream().map(Lap::text).collect(Collectors.joining(BETWEEN));
    }

    /** For people. */
    @Override
    public String toString() {
        return marks.stream().map(Lap::toString).collect(Collectors.joining(BETWEEN));
    }
}
