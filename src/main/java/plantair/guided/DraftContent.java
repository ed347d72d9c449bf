package plantair.guided;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The fields of a form as one text, the same for the same fields, whatever their order. */
public final class DraftContent {

    /** Longest text that is kept. */
    public static final int LONGEST = 60_000;

    /** What belongs to one sending and not to what was typed. */
    private static final Set<String> OF_SENDING = Set.of(
            "_csrf", "action", "confirmed", "draftVersion", "device", "writer", "deviceRecordedAt", "deviceOffsetMs");

    private DraftContent() {}

    /** The text of what was sent. */
    public static String of(Map<String, String[]> sent) {
        return new TreeMap<>(sent)
                .entrySet().stream()
                        .filter(field -> !OF_SENDING.contains(field.getKey()))
                        .flatMap(field -> Stream.of(field.getValue())
                                .filter(value -> !value.isEmpty())
                                .map(value -> encoded(field.getKey()) + "=" + encoded(value)))
                        .collect(Collectors.joining("&"));
    }

    /** The fields again, in alphabetical order. */
    public static Map<String, List<String>> fields(String content) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        for (String pair : content.split("&")) {
            int equals = pair.indexOf('=');
            if (equals > 0) {
                fields.computeIfAbsent(decoded(pair.substring(0, equals)), name -> new ArrayList<>())
                        .add(decoded(pair.substring(equals + 1)));
            }
        }
        return fields;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }
}
