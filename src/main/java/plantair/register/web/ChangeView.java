package plantair.register.web;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.FactLines;

/**
 * One line of the change log.
 *
 * @param instant when, for machines
 * @param when when, for people, UTC
 * @param siteWhen when, by the clock of the site; null when it has none
 * @param number place in the chain, from 1; null when it has none
 * @param by who
 * @param kind code of what was changed
 * @param name how people call it
 * @param href its page; null when it has none
 * @param isAccount whether its page is for administrators
 * @param isNew whether it was added by this
 * @param before facts that no longer hold
 * @param after facts that hold since
 * @param reason why
 */
record ChangeView(
        String instant,
        String when,
        @Nullable String siteWhen,
        @Nullable Long number,
        String by,
        String kind,
        String name,
        @Nullable String href,
        boolean isAccount,
        boolean isNew,
        List<String> before,
        List<String> after,
        String reason) {

    private static final Pattern RATING = Pattern.compile("^(rating: .*, )([A-Z0-9_]+)$");
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss 'UTC'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);
    private static final DateTimeFormatter SITE_WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

    /**
     * The line of one change.
     *
     * @param zone of its site; null when it has none
     * @param basisWords gives the words for the code of a flow basis
     */
    static ChangeView of(ChangeRecord change, @Nullable ZoneId zone, UnaryOperator<String> basisWords) {
        List<String> before = facts(change.beforeText(), basisWords);
        List<String> after = facts(change.afterText(), basisWords);
        return new ChangeView(
                change.changedAt().toString(),
                WHEN.format(change.changedAt()),
                zone == null ? null : SITE_WHEN.format(change.changedAt().atZone(zone)) + " " + zone.getId(),
                change.chainNumber(),
                change.changedBy(),
                change.kind().name(),
                change.objectName(),
                address(change.kind(), change.objectId()),
                change.kind() == ChangeKind.ACCOUNT,
                change.beforeText() == null,
                less(before, after),
                less(after, before),
                change.reason());
    }

    private static List<String> facts(@Nullable String text, UnaryOperator<String> basisWords) {
        List<String> facts = text == null ? List.of() : FactLines.split(text);
        return facts.stream()
                .map(fact ->
                        RATING.matcher(fact).replaceFirst(match -> match.group(1) + basisWords.apply(match.group(2))))
                .toList();
    }

    /** What stands in the first list only, each as often as it does so. */
    private static List<String> less(List<String> facts, List<String> others) {
        List<String> left = new ArrayList<>(facts);
        others.forEach(left::remove);
        return left;
    }

    private static @Nullable String address(ChangeKind kind, long id) {
        return switch (kind) {
            case SITE -> "/sites/" + id;
            case COMPRESSOR -> "/compressors/" + id;
            case RECEIVER -> "/receivers/" + id;
            case PIPE -> "/pipes";
            case INSTRUMENT -> "/instruments/" + id;
            case TEST -> "/tests/" + id;
            case EVENT -> "/events/" + id;
            case READINGS -> "/guided/readings/" + id;
            case LIMITS -> "/sites/" + id + "/limits";
            case VALVE -> "/valves/" + id;
            case OFFER -> "/offers/" + id;
            case CERTIFICATE -> "/certificates/" + id;
            case CALIBRATION, RESTATEMENT, BASELINE, REVIEW, VALVE_TEST, INSPECTION, FINDING, INTERVAL -> null;
            case DEMAND_ITEM -> "/demand/" + id;
            case SUPPLY_CHOICE -> null;
            case LEAK_TEST -> "/leak-tests/" + id;
            case FOUND_LEAK -> "/leaks/" + id;
            case ATTACHMENT -> "/attachments/" + id;
            case LOGGED_RUN -> "/logs/" + id;
            case ACCOUNT -> "/accounts/" + id + "/edit";
        };
    }
}
