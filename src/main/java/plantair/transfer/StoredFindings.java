package plantair.transfer;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.support.DefaultMessageSourceResolvable;
import tools.jackson.databind.json.JsonMapper;

/** What was found in an upload, as it is kept in the database: messages by their codes, not by their words. */
record StoredFindings(
        List<Line> problems,
        long problemCount,
        List<Line> notes,
        long noteCount,
        Set<String> machines,
        long tests,
        long known) {

    private static final JsonMapper JSON = JsonMapper.builder().build();

    record Line(
            String file,
            long line,
            String column,
            List<String> codes,
            List<Object> arguments,
            @Nullable String text) {

        static Line of(Remark remark) {
            Object[] arguments = Objects.requireNonNullElse(remark.words().getArguments(), new Object[0]);
            return new Line(
                    remark.file(),
                    remark.line(),
                    remark.column(),
                    List.of(Objects.requireNonNullElse(remark.words().getCodes(), new String[0])),
                    Stream.of(arguments)
                            .map(one -> one instanceof Number ? one : String.valueOf(one))
                            .toList(),
                    remark.words().getDefaultMessage());
        }

        Remark remark() {
            var words = new DefaultMessageSourceResolvable(codes.toArray(String[]::new), arguments.toArray(), text);
            return new Remark(file, line, column, words);
        }
    }

    static String write(Findings found) {
        return JSON.writeValueAsString(new StoredFindings(
                lines(found.problems()),
                found.problems().count(),
                lines(found.notes()),
                found.notes().count(),
                found.machines(),
                found.tests(),
                found.known()));
    }

    private static List<Line> lines(Remarks remarks) {
        return remarks.first().stream().map(Line::of).toList();
    }

    static Findings read(String text) {
        StoredFindings stored = JSON.readValue(text, StoredFindings.class);
        return new Findings(
                new Remarks(stored.problems.stream().map(Line::remark).toList(), stored.problemCount),
                new Remarks(stored.notes.stream().map(Line::remark).toList(), stored.noteCount),
                stored.machines,
                stored.tests,
                stored.known);
    }
}
