package plantair.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** The warnings of one form. Put it in the model as {@code warnings}; one tick confirms them all. */
public final class Warnings {

    private final List<Warning> list = new ArrayList<>();

    /** Adds a warning beside a field. */
    public void add(String path, String code, Object... args) {
        list.add(new Warning(path, code, List.of(args)));
    }

    /** All, in the order they came. */
    public List<Warning> list() {
        return Collections.unmodifiableList(list);
    }

    /** Those beside one field. */
    public List<Warning> forPath(String path) {
        return list.stream().filter(warning -> warning.path().equals(path)).toList();
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return list.isEmpty();
    }

    /** The value of the tick box: names every warning, so that a new one needs a new tick. */
    public String token() {
        return list.stream()
                .map(warning -> warning.code() + "@" + warning.path())
                .sorted()
                .collect(Collectors.joining(" "));
    }

    /** Whether nothing is left to confirm, given what field {@code confirmed} sent. */
    public boolean confirmedBy(String confirmed) {
        return isEmpty() || token().equals(confirmed);
    }
}
