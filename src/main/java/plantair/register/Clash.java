package plantair.register;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What somebody else changed while a person was typing.
 *
 * @param others the changes meanwhile, newest first
 * @param differences where the register and what was typed differ
 * @param isRead whether what was typed could be read; when not, the differences are all that the register says
 */
public record Clash(List<Other> others, List<Difference> differences, boolean isRead) {

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss 'UTC'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    /** A change of somebody else. */
    public record Other(String by, String when, String reason) {}

    /**
     * A fact on which both differ.
     *
     * @param name of the fact
     * @param now what the register says; empty when nothing
     * @param yours what was typed; empty when nothing
     */
    public record Difference(String name, String now, String yours) {}

    static Clash of(List<ChangeRecord> changes, Facts now, Optional<? extends Facts> yours) {
        Map<String, String> register = byName(now);
        Map<String, String> typed = yours.map(Clash::byName).orElse(Map.of());
        Set<String> names = new LinkedHashSet<>(register.keySet());
        names.addAll(typed.keySet());
        List<Difference> differences = names.stream()
                .map(name -> new Difference(name, register.getOrDefault(name, ""), typed.getOrDefault(name, "")))
                .filter(fact -> !fact.now().equals(fact.yours()))
                .toList();
        return new Clash(changes.stream().map(Clash::other).toList(), differences, yours.isPresent());
    }

    private static Other other(ChangeRecord change) {
        return new Other(change.changedBy(), WHEN.format(change.changedAt()), change.reason());
    }

    /** Facts of one name, as the points of a rating, are one entry. */
    private static Map<String, String> byName(Facts facts) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String line : FactLines.split(facts.lines())) {
            String[] parts = line.split(": ", 2);
            values.merge(parts[0], parts.length > 1 ? parts[1] : "", (first, next) -> first + "\n" + next);
        }
        return values;
    }
}
